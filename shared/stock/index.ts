/**
 * The crew's own fixtures: a chart as pasted from a manual, read into slots and bands with every doubt marked at its place, and from
 * the chart and the label the profile of a fixture. What neither says is assumed, and each figure says whether it was given or assumed.
 */
export { blankEntry, ENTRY_LIMITS, FEEDS, readEntry, SHAPES, type StockEntry } from './entry.ts';
export type { Figure, FigureCode, FigureFacts } from './figures.ts';
export { type PrintedMode, type PrintedSlot, printMode } from './print.ts';
export { type StockFixture, type StockNames, stockFixture } from './profile.ts';
export { readChart } from './read.ts';
export { linesOf, type TextLine } from './rows.ts';
export type { ChartBand, ChartMode, ChartSlot, Mark, MarkCode, MarkFacts, Place, ReadChart } from './types.ts';
export { NOTES } from './types.ts';
