/**
 * The glossary as its page shows it: terms under their first letter, each with its source in words and the names of what to read
 * next. Words come from `content/en/glossary`; the page carries no script but what unfolds a term.
 */

import { type Term, termSeen, termSources } from '#words/glossary/index.ts';
import { locale } from '#words/locale/index.ts';

/** A term as it is shown. */
export interface ShownTerm {
	readonly id: string;
	readonly term: string;
	readonly says: string;
	readonly forms: readonly string[];
	/** Where it comes from, in words. */
	readonly from: string;
	readonly see: readonly { readonly id: string; readonly term: string }[];
}

/** Terms under their first letters, both in order. A term whose letter is small stands under its capital. */
export function byLetter(terms: readonly Term[]): { readonly letter: string; readonly terms: readonly ShownTerm[] }[] {
	const names = new Map(terms.map(({ id, term }) => [id, term]));
	const letters = new Map<string, ShownTerm[]>();
	for (const { id, term, says, forms = [], from, seen, see = [] } of terms) {
		const letter = term.charAt(0).toUpperCase();
		const shown: ShownTerm = {
			id,
			term,
			says,
			forms,
			from: sourceText(from, seen),
			see: see.map((next) => ({ id: next, term: names.get(next) ?? next })),
		};
		letters.set(letter, [...(letters.get(letter) ?? []), shown]);
	}
	return [...letters]
		.map(([letter, list]) => ({ letter, terms: list }))
		.sort((a, b) => locale.compare(a.letter, b.letter));
}

/** Where a term comes from, and how that was come by where the standard itself was not read. */
function sourceText(from: Term['from'], seen: Term['seen']): string {
	const source = termSources[from];
	if (from === 'trade' || from === 'house' || seen === 'read') return source;
	return `${source} (${termSeen[seen ?? 'memory']})`;
}
