import { expect } from 'vitest';

/** A sentence or more with nothing left unfilled, no name of code, no double space: what any reader may be shown. */
export function readsWell(text: string): void {
	expect(text).toMatch(/^[A-Z0-9“].*[.]$/);
	hasNoSeams(text);
}

/** The same of a line that is no sentence. */
export function hasNoSeams(text: string): void {
	expect(text).not.toMatch(/[{}[\]]|undefined|null|NaN|\[object|true|false| {2}| [,.;:]|, ?[.,]|\(\)|“”/);
	expect(text).not.toMatch(/\b(desk:[a-z]|[a-z]+-\d+:(in|out)|wash-1|bar-1|old-1|[fq]-[1234]|c[123])\b/);
	// a list with nothing in it leaves its colon or comma in the air
	expect(text).not.toMatch(/[:;,](?= ?[.,;:]|$)|\b(by|through)[.,;:]|^[.,;:]/);
	expect(text.trim()).toBe(text);
	expect(text).not.toBe('');
}

/** So many sentences at most, none of more than thirty words. */
export function isShort(text: string, most: number): void {
	const sentences = text.split(/(?<=[.?]) (?=[A-Z“])/);
	expect(sentences.length).toBeLessThanOrEqual(most);
	for (const each of sentences) expect(each.split(' ').length, each).toBeLessThanOrEqual(30);
}
