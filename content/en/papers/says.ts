import type { Says } from '../rig/index.ts';

/** The words of one kind of question, filled from its item's facts. */
export interface QuestionSays {
	/** What the kind is called in a list: a few words. */
	readonly name: string;
	/** What is asked. */
	readonly ask: Says;
	/** Said over the chart that a question prints, where it prints one. */
	readonly chart?: Says;
	/** How the right answer is come by: one step each. A step that comes out empty is left out. */
	readonly working: readonly Says[];
	/** Why it is so; besides the item's facts it may ask for `right`, `answered` and `looksLike` of the answer. */
	readonly why: Says;
	/** Options only this kind has, by the id of their wording; others are in `labels`. */
	readonly labels?: Readonly<Record<string, Says>>;
}
