import type { Sense } from './types.ts';

/** How sure it is what words mean. `exact`: they are known as they stand. `part`: some of them are. */
export interface Match<Id extends string> {
	readonly how: 'exact' | 'part' | 'none';
	/** What they may mean; more than one where that is not told. */
	readonly ids: readonly Id[];
}

/** Letters and figures alone, small. */
export const plain = (text: string): string =>
	text
		.normalize('NFKD')
		.replaceAll(/\p{M}/gu, '')
		.toLowerCase()
		.replaceAll(/[^a-z0-9]+/g, ' ')
		.trim();

/** Words of at least so many letters are looked for within others: shorter ones turn up by chance. */
const LEAST_WITHIN = 4;

/** What words mean, of some senses: as a whole, or else by the longest known words within them. */
export function match<Id extends string>(text: string, senses: Readonly<Record<Id, Sense>>): Match<Id> {
	const said = plain(text);
	const all = Object.entries(senses) as [Id, Sense][];
	const exact = all.filter(([, { say, known }]) => [say, ...known].some((word) => plain(word) === said));
	if (said === '') return { how: 'none', ids: [] };
	if (exact.length > 0) return { how: 'exact', ids: exact.map(([id]) => id) };
	let longest = LEAST_WITHIN - 1;
	let ids: Id[] = [];
	for (const [id, { say, known }] of all)
		for (const word of [say, ...known]) {
			const inside = plain(word);
			if (inside.length < longest || !` ${said} `.includes(` ${inside} `)) continue;
			if (inside.length > longest) ids = [];
			longest = inside.length;
			if (!ids.includes(id)) ids.push(id);
		}
	return { how: ids.length > 0 ? 'part' : 'none', ids };
}
