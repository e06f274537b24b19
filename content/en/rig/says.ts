/** One wording among several: the first whose `when` holds for the facts is said; one with no `when` holds always and comes last. */
export interface WordingCase {
	readonly when?: Readonly<Record<string, string | number | boolean | null>>;
	readonly says: string;
}

/** A template, or several of them by the facts. */
export type Says = string | readonly WordingCase[];
