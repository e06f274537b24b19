/** What typing came to: a whole number; nothing; or what is wrong with it. */
export type Typed =
	| { readonly is: 'number'; readonly value: number }
	| { readonly is: 'nothing' }
	| { readonly is: 'wrong'; readonly why: 'none' | 'range' };

/**
 * A number as people type it. Base 10 takes digits alone; base 16 takes `a0`, `A0`, `0xA0` and `A0h`. Spaces around it do not count.
 * @param least, most the range, both ends included
 */
export function readTyped(text: string, base: 10 | 16, least: number, most: number): Typed {
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
