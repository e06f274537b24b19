/**
 * The crew's own fixtures: a chart as pasted from a manual, read into slots and bands with every doubt marked at its place, and from
 * the chart and the label the profile of a fixture. What neither says is assumed, and each figure says whether it was given or assumed.
 * One read from an open fixture file (`shared/gdtf`) is kept beside those, with what was lost and assumed on the way. Of either the panel
 * may be written down too (`panel/`): how it works, its keys, its menu as an indented list. Of a manual's page that was opened as it
 * is, `page/` makes the text that would have been pasted, from runs of text and their places.
 */
export {
	blankEntry,
	type ChartEntry,
	ENTRY_LIMITS,
	entryFromFile,
	FEEDS,
	type FileEntry,
	MOST_ENTRY,
	readEntry,
	SHAPES,
	type StockEntry,
} from './entry.ts';
export type { Figure, FigureCode, FigureFacts } from './figures.ts';
export { type FileFixture, fileFixture } from './file.ts';
export { NO_OPEN_ROWS, type OpenRows, openRows } from './open-rows.ts';
export {
	type PageDoubt,
	type PageDoubtCode,
	type PageText,
	readPage,
	stillOpen,
	type TextItem,
} from './page/index.ts';
export {
	ANSWERS,
	type Asked,
	blankPanel,
	type ItemSense,
	inList,
	KEYS_OF,
	type OwnPanel,
	PANEL_NOTES,
	PANEL_WAYS,
	type PanelEntry,
	type PanelMark,
	type PanelMarkCode,
	type PanelWay,
	type Question,
	USUAL_KEYS,
	withWords,
} from './panel/index.ts';
export { type PrintedMode, type PrintedSlot, printedModes, printMode } from './print.ts';
export { type StockFixture, type StockNames, stockFixture } from './profile.ts';
export { readChart } from './read.ts';
export { linesOf, type TextLine } from './rows.ts';
export type { ChartBand, ChartMode, ChartSlot, Mark, MarkCode, MarkFacts, Place, ReadChart } from './types.ts';
export { MOST_CHARACTERS, NOTES } from './types.ts';
export { UNCHECKED, withUnchecked } from './unchecked.ts';
