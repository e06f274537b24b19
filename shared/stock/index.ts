/**
 * The crew's own fixtures: a chart as pasted from a manual, read into slots and bands with every doubt marked at its place, and from
 * a chart the profile of a fixture. What a manual does not say is assumed, and listed as assumed.
 */
export { type PrintedMode, type PrintedSlot, printMode } from './print.ts';
export { readChart } from './read.ts';
export type { ChartBand, ChartMode, ChartSlot, Mark, MarkCode, MarkFacts, Place, ReadChart } from './types.ts';
export { MOST_CHARACTERS, MOST_LINES, NOTES } from './types.ts';
