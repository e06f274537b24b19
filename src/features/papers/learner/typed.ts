/** What typing came to: a whole number; nothing; or what is wrong with it. */
export type TypedNumber =
	| { readonly is: 'number'; readonly value: number }
	| { readonly is: 'nothing' }
	| { readonly is: 'wrong'; readonly why: 'none' | 'range' };

/**
 * A number as people type it. Base 10 takes digits alone; base 16 takes `a0`, `A0`, `0xA0` and `A0h`. Spaces around it do not count.
 * @param least, most the range, both ends included
 */
export function readTyped(text: string, base: 10 | 16, least: number, most: number): TypedNumber {
	const trimmed = text.trim();
	if (trimmed === '') return { is: 'nothing' };
	const [, digits] = (base === 10 ? /^(\d{1,9})$/ : /^(?:0x)?([0-9a-f]{1,8})h?$/i).exec(trimmed) ?? [];
	if (digits === undefined) return { is: 'wrong', why: 'none' };
	const value = Number.parseInt(digits, base);
	return value < least || value > most ? { is: 'wrong', why: 'range' } : { is: 'number', value };
}

/** A number as it stands in its box: hex in capitals, two digits at least. */
export const typedText = (value: number, base: 10 | 16): string =>
	base === 10 ? String(value) : value.toString(16).toUpperCase().padStart(2, '0');

/** A list with one item moved by a step up (-1) or down (+1); as it was where there is no room. */
export function moved<T>(list: readonly T[], at: number, by: -1 | 1): readonly T[] {
	const to = at + by;
	const [one, other] = [list[at], list[to]];
	if (one === undefined || other === undefined) return list;
	const next = [...list];
	next[at] = other;
	next[to] = one;
	return next;
}

/** Options in the order answered; those that an answer leaves out, and an answer's own strangers, do no harm. */
export function inOrder<T extends { readonly id: string }>(options: readonly T[], order: readonly string[]): T[] {
	const known = order.flatMap((id) => options.find((option) => option.id === id) ?? []);
	return [...new Set([...known, ...options])];
}

/** A list with something put in or taken out, in the order of `all`. */
export const toggled = (all: readonly string[], chosen: readonly string[], one: string): string[] =>
	all.filter((id) => (id === one ? !chosen.includes(id) : chosen.includes(id)));
