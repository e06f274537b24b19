import { readFileSync } from 'node:fs';

/** Words for people, which may be put better at any time. */
const WORDS = ['name', 'title', 'about'];

/**
 * A thing of plain data as text to be read by eye, its words left out: a line for each part that has no parts of its own worth a line,
 * and what is in it indented.
 */
export function written(value: object): string {
	const bare = JSON.parse(JSON.stringify(value, (key, part) => (WORDS.includes(key) ? undefined : part))) as object;
	return linesOf(bare, '').join('\n');
}

/** The text that stands beside a test under `written/`. */
export const textAt = (folder: string, id: string): string =>
	readFileSync(new URL(`./${folder}/written/${id}.txt`, import.meta.url), 'utf8').trimEnd();

const isList = (value: unknown): value is unknown[] => Array.isArray(value);
const isThing = (value: unknown): value is object => typeof value === 'object' && value !== null;
/** Lists of things get a line each, and so does whatever holds such a list. */
const hasParts = (value: unknown): boolean =>
	isThing(value) && (isList(value) ? value.some(isThing) : Object.values(value).some(hasParts));

function linesOf(value: object, indent: string): string[] {
	return Object.entries(value).flatMap(([name, part]) => {
		const at = `${indent}${isList(value) ? '-' : `${name}:`}`;
		return hasParts(part) ? [`${at}${flat(part)}`, ...linesOf(nested(part), `${indent}\t`)] : [`${at} ${inline(part)}`];
	});
}

/** What of a thing goes on its own line, before its parts. */
const flat = (part: object): string => {
	const plain = isList(part) ? [] : Object.entries(part).filter(([, each]) => !hasParts(each));
	return plain.length > 0 ? ` ${inline(Object.fromEntries(plain))}` : '';
};
const nested = (part: object): object =>
	isList(part) ? part : Object.fromEntries(Object.entries(part).filter(([, each]) => hasParts(each)));

function inline(value: unknown): string {
	if (isList(value)) return `[${value.map(inline).join(' ')}]`;
	if (isThing(value))
		return Object.entries(value)
			.map(([name, part]) => `${name} ${isThing(part) && !isList(part) ? `(${inline(part)})` : inline(part)}`)
			.join(', ');
	return typeof value === 'string' && (value === '' || value !== value.trim()) ? JSON.stringify(value) : String(value);
}
