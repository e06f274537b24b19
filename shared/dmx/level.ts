import { requireNumber, requireWhole } from '../error/index.ts';

/** The highest value an 8-bit slot can hold. Source: ANSI E1.11, slots carry 0 to 255. */
export const TOP_LEVEL = 255;

/**
 * How a level and a percent are turned into each other.
 * - `half-up`: to the nearest whole, a half upwards: 50 % is 127.5, so 128. The rule of this house: every whole
 *   percent comes back as itself.
 * - `truncate`: what is behind the point is dropped: 50 % is 127, and 127 reads 49 %. Some desks do this and printed
 *   charts mix the two; it is here to explain why a desk and a display disagree by one.
 */
export type Rounding = 'half-up' | 'truncate';

/** Hands a level back if it is one: a whole number from 0 to 255. Throws `level.range`. */
export function requireLevel(level: number, path = 'level'): number {
	return requireWhole(level, { lo: 0, hi: TOP_LEVEL, code: 'level.range', path, of: 'level' });
}

/** Hands a percent back if it is one: a number from 0 to 100, fractions allowed. Throws `percent.range`. */
function requirePercent(percent: number, path = 'percent'): number {
	return requireNumber(percent, { lo: 0, hi: 100, code: 'percent.range', path, of: 'percent' });
}

/** Hands a fraction back if it is one: a number from 0 to 1. Throws `fraction.range`. */
export function requireFraction(fraction: number, path = 'fraction'): number {
	return requireNumber(fraction, { lo: 0, hi: 1, code: 'fraction.range', path, of: 'fraction' });
}

/**
 * The whole percent (0 to 100) of a level (0 to 255), half up unless told to truncate.
 * Many levels share a percent (127 and 128 are both 50 %); `levelsShownAs` lists them.
 * @throws InputError `level.range`.
 */
export function percentOf(level: number, rounding: Rounding = 'half-up'): number {
	requireLevel(level);
	// whole-number arithmetic: level × 100 / 255, plus a half where rounding asks for it
	return Math.floor((level * 200 + (rounding === 'half-up' ? TOP_LEVEL : 0)) / (2 * TOP_LEVEL));
}

/**
 * The level (0 to 255) of a percent (0 to 100, fractions allowed), half up unless told to truncate.
 * Halves arise at 10, 30, 50, 70 and 90 % alone.
 * @throws InputError `percent.range`.
 */
export function levelOfPercent(percent: number, rounding: Rounding = 'half-up'): number {
	requirePercent(percent);
	return Math.floor((percent * TOP_LEVEL) / 100 + (rounding === 'half-up' ? 0.5 : 0));
}

/**
 * Every level (0 to 255, rising) that is shown as this whole percent: two or three of them, one or two at the ends.
 * @throws InputError `percent.range` when the percent is not a whole number from 0 to 100.
 */
export function levelsShownAs(percent: number, rounding: Rounding = 'half-up'): number[] {
	requireWhole(percent, { lo: 0, hi: 100, code: 'percent.range', path: 'percent', of: 'shown-percent' });
	const near = Math.floor((percent * TOP_LEVEL) / 100);
	const shown: number[] = [];
	for (let level = Math.max(0, near - 3); level <= Math.min(TOP_LEVEL, near + 4); level++) {
		if (percentOf(level, rounding) === percent) shown.push(level);
	}
	return shown;
}

/** The share of full (0 to 1, exact: level / 255) of a level. Throws `level.range`. */
export function fractionOf(level: number): number {
	return requireLevel(level) / TOP_LEVEL;
}

/** The level (0 to 255) nearest a share of full (0 to 1), half up. Throws `fraction.range`. */
export function levelOfFraction(fraction: number): number {
	return Math.floor(requireFraction(fraction) * TOP_LEVEL + 0.5);
}

/** A level as two hexadecimal digits in capitals: 128 is `80`, 5 is `05`. Throws `level.range`. */
export function hexOf(level: number): string {
	return requireLevel(level).toString(16).toUpperCase().padStart(2, '0');
}

/** A level as the house shows it, value and percent together: `128 (50 %)`. Throws `level.range`. */
export function formatLevel(level: number): string {
	return `${requireLevel(level)} (${percentOf(level)} %)`;
}

/** The highest value two slots together can hold: 256 × 256 − 1. */
export const TOP_WORD = 65535;

/** A 16-bit value as its two slots: coarse (the high byte) stands first on the line, fine right behind it. */
export type CoarseFine = { readonly coarse: number; readonly fine: number };

/** Hands a 16-bit value back if it is one: a whole number from 0 to 65535. Throws `word.range`. */
function requireWord(word: number, path = 'word'): number {
	return requireWhole(word, { lo: 0, hi: TOP_WORD, code: 'word.range', path, of: 'word' });
}

/** Splits a 16-bit value into its coarse and fine levels: 32768 is coarse 128, fine 0. Throws `word.range`. */
export function splitWord(word: number): CoarseFine {
	requireWord(word);
	return { coarse: word >> 8, fine: word & 0xff };
}

/** Joins coarse and fine levels into a 16-bit value: coarse × 256 + fine. Throws `level.range`. */
export function joinWord(coarse: number, fine: number): number {
	return requireLevel(coarse, 'coarse') * 256 + requireLevel(fine, 'fine');
}

/**
 * The 16-bit value that is the same share of full as an 8-bit level: level × 257, so 255 is 65535 and not 65280.
 * Throws `level.range`.
 */
export function widenLevel(level: number): number {
	return requireLevel(level) * 257;
}

/** The percent (0 to 100, to the nearest hundredth, half up) of a 16-bit value: 32768 is 50. Throws `word.range`. */
export function percentOfWord(word: number): number {
	requireWord(word);
	return Math.floor((word * 20000 + TOP_WORD) / (2 * TOP_WORD)) / 100;
}

/**
 * The 16-bit value (0 to 65535) of a percent (0 to 100, fractions allowed), half up: 50 % is 32768.
 * Every percent of two decimals comes back as itself from `percentOfWord`. Throws `percent.range`.
 */
export function wordOfPercent(percent: number): number {
	return Math.floor((requirePercent(percent) * TOP_WORD) / 100 + 0.5);
}

/** The share of full (0 to 1, exact: word / 65535) of a 16-bit value. Throws `word.range`. */
export function fractionOfWord(word: number): number {
	return requireWord(word) / TOP_WORD;
}

/** The 16-bit value (0 to 65535) nearest a share of full (0 to 1), half up. Throws `fraction.range`. */
export function wordOfFraction(fraction: number): number {
	return Math.floor(requireFraction(fraction) * TOP_WORD + 0.5);
}

/** A 16-bit value as the house shows it, value and percent together: `32768 (50.00 %)`. Throws `word.range`. */
export function formatWord(word: number): string {
	return `${requireWord(word)} (${percentOfWord(word).toFixed(2)} %)`;
}
