/*
 * The panel of a crew's own fixture, as they wrote it: how it works, its keys, its menu as an indented list, and what they answered. What
 * each item sets is recognised by words from `content/`; what is in doubt is marked at its line and does nothing until somebody says.
 */
export {
	ANSWERS,
	type Answers,
	blankPanel,
	KEYS_OF,
	type PanelEntry,
	type Question,
	USUAL_KEYS,
} from './entry.ts';
export { inList, withWords } from './lines.ts';
export { makePanel, type OwnPanel } from './make.ts';
export { withOwnPanel } from './onto.ts';
export type { Asked } from './questions.ts';
export {
	type ItemSense,
	PANEL_NOTES,
	PANEL_WAYS,
	type PanelMark,
	type PanelMarkCode,
	type PanelWay,
	type PanelWords,
} from './types.ts';
