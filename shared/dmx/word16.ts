import { requireWhole } from '../error/index.ts';
import { requireFraction, requireLevel, requirePercent } from './level.ts';

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
