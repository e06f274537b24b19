/**
 * Words for the rig's parts, its settings, its log and what is seen of it. Templates are filled in `src/wording`, which holds
 * their facts; this is all their grammar:
 *
 * - a fact in braces stands as it is: {slot}
 * - `as` says what kind of thing it is, and so how it is worded: {value as level}, {cables as cables}
 * - a question mark picks a word by count, one for each plural the language has (a list counts its length): {cables?cable|cables}
 * - square brackets hold a part that is left out while any fact in it is empty: false, null, 0, no text, no list
 *
 * A fact at the start of a sentence gets its capital by itself.
 */
export { colourNames, colourWith } from './colours.ts';
export { cableChanges, events, settingChange } from './events.ts';
export {
	amounts,
	cableWords,
	conditions,
	curveBends,
	curves,
	deskName,
	feeds,
	keyNames,
	listWords,
	programmeKinds,
	remoteButtons,
	sockets,
	startCodes,
	wires,
} from './parts.ts';
export type { Says, WordingCase } from './says.ts';
export { settingTitles, settingValues } from './settings.ts';
export { changes, displays, fixtureLine, howBright, lamps, light, warnings } from './sight.ts';
