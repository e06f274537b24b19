/**
 * What a paper shows once people have sat it: how hard each question was and how well it tells those who can from those who
 * cannot, which wrong answers drew whom, how each topic and person stands, and how far the whole can be relied on. Everything comes
 * from marks, which come from answers.
 */
export { analyse } from './analyse.ts';
export type { Given, GroupFigures, ItemAnalysis, ItemFigures, ItemFinding, PersonFigures } from './types.ts';
