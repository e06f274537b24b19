import { InputError } from '../error/index.ts';
import { requireFraction, requireLevel, TOP_LEVEL } from './level.ts';

/** A stretch of a slot's values that does one thing: `from` to `to`, both included, within 0 to 255. */
export type Band = { readonly from: number; readonly to: number };

/** The band a level (0 to 255) is in, the earliest if several are; undefined if none is. Throws `level.range`. */
export function bandOf<B extends Band>(bands: readonly B[], level: number): B | undefined {
	requireLevel(level);
	return bands.find((band) => band.from <= level && level <= band.to);
}

/** How many values a band has: to − from + 1. Throws `band.range`. */
export function widthOf(band: Band): number {
	requireBand(band);
	return band.to - band.from + 1;
}

/** All values of a band, rising. Throws `band.range`. */
export function valuesOf(band: Band): number[] {
	return Array.from({ length: widthOf(band) }, (_, i) => band.from + i);
}

/**
 * The middle value of a band: (from + to) / 2, and of two middles the lower one: of 8 to 15 it is 11.
 * The safest value to type, for it stays in the band whichever way a desk rounds. Throws `band.range`.
 */
export function middleOf(band: Band): number {
	requireBand(band);
	return Math.floor((band.from + band.to) / 2);
}

/**
 * How far into its band a level stands: 0 at `from`, 1 at `to`, evenly between; 0 in a band of one value.
 * This is what a speed or rate band is read by.
 * @throws InputError `band.range`, `level.range`, `band.outside` when the level is not in the band.
 */
export function positionInBand(band: Band, level: number): number {
	requireBand(band);
	requireLevel(level);
	if (level < band.from || level > band.to) {
		throw new InputError('band.outside', 'level', { trouble: 'outside-the-band', level, from: band.from, to: band.to });
	}
	return band.to === band.from ? 0 : (level - band.from) / (band.to - band.from);
}

/**
 * The level nearest a position in a band (0 at `from`, 1 at `to`), half up; `positionInBand` the other way round.
 * @throws InputError `band.range`, `fraction.range`.
 */
export function levelAt(band: Band, fraction: number): number {
	requireBand(band);
	return band.from + Math.floor(requireFraction(fraction) * (band.to - band.from) + 0.5);
}

function requireBand(band: Band): void {
	const whole = Number.isInteger(band.from) && Number.isInteger(band.to);
	if (!whole || band.from < 0 || band.to > TOP_LEVEL || band.from > band.to) {
		throw new InputError('band.range', 'band', { expected: 'band', from: band.from, to: band.to, hi: TOP_LEVEL });
	}
}
