import { murmur3Text } from '../random/index.ts';

const LONGEST_ID = 40;
const LONGEST_TITLE = 40;

/** A text cut to what a title can hold (40 characters, or `longest`), with no half of a letter left at the end. */
export const titleOf = (text: string, otherwise: string, longest = LONGEST_TITLE): string =>
	text
		.replaceAll(/\s+/g, ' ')
		.trim()
		.slice(0, longest)
		.replace(/[\uD800-\uDBFF]$/, '')
		.trim() || otherwise;

/** Words that speak of ultraviolet, in a name or a chart: whatever has them carries its caution. */
export const ULTRAVIOLET = /ultra[ -]?violet|(?<![a-z])uv|uv(?![a-z])|black[ -]?light/i;

/** Hands out ids made of names: small letters, digits and hyphens, at most 40, each once. */
export function idMaker(): (name: string, otherwise: string) => string {
	const taken = new Set<string>();
	const next = new Map<string, number>();
	return (name, otherwise) => {
		const plain = name
			.normalize('NFKD')
			.toLowerCase()
			.replaceAll(/[^a-z0-9]+/g, '-')
			.replaceAll(/^[^a-z]+|-+$/g, '');
		const first = (plain || otherwise).slice(0, LONGEST_ID).replace(/-+$/, '');
		let id = first;
		// goes on where the last one alike left off: a file may have thousands
		let n = next.get(first) ?? 2;
		for (; taken.has(id); n++) id = `${first.slice(0, LONGEST_ID - `-${n}`.length)}-${n}`;
		next.set(first, n);
		taken.add(id);
		return id;
	};
}

/** Characters of the name that an id with a digest keeps: the digest has at most 7 more. */
const LONGEST_STEM = 24;

/**
 * An id of a profile that came from outside: its name, and a digest of all that is in it. It meets no bundled fixture's id, and two
 * fixtures of one name have two ids.
 * @param content the profile, whatever its id
 */
export function idByContent(name: string, otherwise: string, content: unknown): string {
	const stem = idMaker()(name, otherwise).slice(0, LONGEST_STEM).replace(/-+$/, '');
	return `${stem}-${murmur3Text(JSON.stringify(content), 0).toString(36)}`;
}
