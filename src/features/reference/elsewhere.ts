import { terms } from '#words/glossary/index.ts';
import { elsewhere, elsewhereWords } from '#words/reference/index.ts';
import type { ReferenceSection } from './types.ts';

/** What is met on real panels, labels and sheets, each with the word for it here, which leads to the glossary. */
export function elsewhereSections(): ReferenceSection[] {
	const names = new Map(terms.map(({ id, term }) => [id, term]));
	return elsewhere.map(({ id, heading, caption, rows }) => ({
		id,
		heading,
		says: [elsewhereWords.says],
		tables: [
			{
				caption,
				head: elsewhereWords.head,
				rows: rows.map(({ met, means, term }) => [met.join(elsewhereWords.comma), means, names.get(term) ?? term]),
				links: rows.map(({ term }) => `/glossary/#${term}`),
				look: 'cards',
			},
		],
	}));
}
