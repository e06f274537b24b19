/** What a result is. */
export type DocKind = 'lesson' | 'term' | 'reference' | 'fault' | 'caution';

/** One place that can be found. */
export interface SearchDoc {
	/** Where it stands, from the root of the site, which also tells it from every other. */
	readonly id: string;
	readonly kind: DocKind;
	readonly title: string;
	/** Other words for it, which count nearly as much as its title. */
	readonly also: string;
	/** Its text, of which the first words are shown. */
	readonly text: string;
}
