import { inflected, type Term, terms } from '#words/glossary/index.ts';

/** A term used in a text: which, and from where to where. */
export interface Found {
	readonly id: string;
	readonly from: number;
	readonly to: number;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/**
 * Finds terms by their names and forms, whole words, whatever their capitals, in the plural or not: the longest first, so
 * that "start address" is not an "address". Each is found once over all the texts it is asked about.
 */
export function finderOf(all: readonly Term[] = terms): (text: string) => Found[] {
	const forms = all
		.filter(({ everyday = false }) => !everyday)
		.flatMap(({ id, term, forms = [] }) => [term, ...forms].map((form) => ({ id, form: form.toLowerCase() })))
		.toSorted((a, b) => b.form.length - a.form.length);
	const ids = new Map(forms.flatMap(({ id, form }) => inflected(form).map((each) => [each, id] as const)));
	const pattern = new RegExp(
		`(?<![\\p{L}\\p{N}-])(?:${forms
			.flatMap(({ form }) => inflected(form).toReversed())
			.map((form) => escaped(form).replaceAll(' ', '\\s+'))
			.join('|')})(?![\\p{L}\\p{N}-])`,
		'giu',
	);
	const used = new Set<string>();
	return (text) =>
		[...text.matchAll(pattern)].flatMap(({ 0: word, index }) => {
			const id = ids.get(word.toLowerCase().replace(/\s+/g, ' '));
			if (id === undefined || used.has(id)) return [];
			used.add(id);
			return { id, from: index, to: index + word.length };
		});
}
