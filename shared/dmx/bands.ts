import { type BandTrouble, InputError } from '../error/index.ts';
import { requireFraction, requireLevel, TOP_LEVEL } from './level.ts';

/** A stretch of a slot's values that does one thing: `from` to `to`, both included, within 0 to 255. */
export type ValueBand = { readonly from: number; readonly to: number };

/** The band a level (0 to 255) is in, the earliest if several are; undefined if none is. Throws `level.range`. */
export function bandOf<B extends ValueBand>(bands: readonly B[], level: number): B | undefined {
	requireLevel(level);
	return bands.find((band) => band.from <= level && level <= band.to);
}

/** How many values a band has: to − from + 1. Throws `band.range`. */
export function widthOf(band: ValueBand): number {
	requireBand(band);
	return band.to - band.from + 1;
}

/** All values of a band, rising. Throws `band.range`. */
export function valuesOf(band: ValueBand): number[] {
	return Array.from({ length: widthOf(band) }, (_, i) => band.from + i);
}

/**
 * The middle value of a band: (from + to) / 2, and of two middles the lower one: of 8 to 15 it is 11.
 * The safest value to type, for it stays in the band whichever way a desk rounds. Throws `band.range`.
 */
export function middleOf(band: ValueBand): number {
	requireBand(band);
	return Math.floor((band.from + band.to) / 2);
}

/**
 * How far into its band a level stands: 0 at `from`, 1 at `to`, evenly between; 0 in a band of one value.
 * This is what a speed or rate band is read by.
 * @throws InputError `band.range`, `level.range`, `band.outside` when the level is not in the band.
 */
export function positionInBand(band: ValueBand, level: number): number {
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
export function levelAt(band: ValueBand, fraction: number): number {
	requireBand(band);
	return band.from + Math.floor(requireFraction(fraction) * (band.to - band.from) + 0.5);
}

function requireBand(band: ValueBand): void {
	const whole = Number.isInteger(band.from) && Number.isInteger(band.to);
	if (!whole || band.from < 0 || band.to > TOP_LEVEL || band.from > band.to) {
		throw new InputError('band.range', 'band', { expected: 'band', from: band.from, to: band.to, hi: TOP_LEVEL });
	}
}

/** What can be wrong with a slot's bands. */
export type BandProblemKind =
	| 'none' // no band at all
	| 'not-whole' // an end is no whole number
	| 'below-zero'
	| 'past-255'
	| 'reversed' // from above to
	| 'out-of-order' // starts lower than the band listed before it
	| 'overlap'
	| 'gap';

/** One thing wrong with a slot's bands, and where. */
export type BandProblem = {
	readonly kind: BandProblemKind;
	/** The band it shows at, its place in the list from 0. A gap is put at the band behind it, or else at the last. */
	readonly index: number;
	/** The values in question, both included: the gap, the shared values, the band's own ends, or what lies outside. */
	readonly from: number;
	readonly to: number;
	/** What is wrong, for the words of `profile.band`. Bands are counted from 1. */
	readonly facts: BandTrouble;
};

const runOf = (from: number, to: number) => ({ from, to: from === to ? null : to, count: to - from + 1 });

/** Problems that one band has by itself, and what an error calls them. */
const OWN = {
	'not-whole': 'band-not-whole',
	reversed: 'band-reversed',
	'below-zero': 'band-below-zero',
	'past-255': 'band-past-end',
} as const;

/** Problems of one band by itself. */
function ownProblems(band: ValueBand, i: number): BandProblem[] {
	const { from, to } = band;
	const at = (kind: keyof typeof OWN, lo: number, hi: number): BandProblem => ({
		kind,
		index: i,
		from: lo,
		to: hi,
		facts: { trouble: OWN[kind], band: i + 1, from, to },
	});
	if (!(Number.isInteger(from) && Number.isInteger(to))) {
		return [at('not-whole', from, to)];
	}
	if (from > to) return [at('reversed', from, to)];
	const found: BandProblem[] = [];
	if (from < 0) found.push(at('below-zero', from, Math.min(to, -1)));
	if (to > TOP_LEVEL) found.push(at('past-255', Math.max(from, TOP_LEVEL + 1), to));
	return found;
}

/**
 * Everything that is wrong with a slot's bands; an empty list when they cover 0 to 255 once each and in order.
 * Problems of single bands come first, then those of order, then gaps and overlaps by rising value. Never throws.
 */
export function checkBands(bands: readonly ValueBand[]): BandProblem[] {
	if (bands.length === 0) {
		return [{ kind: 'none', index: 0, from: 0, to: TOP_LEVEL, facts: { trouble: 'no-bands' } }];
	}

	const found = bands.flatMap(ownProblems);
	const sound = bands
		.map((band, i) => ({ ...band, i }))
		.filter(({ from, to }) => Number.isInteger(from) && Number.isInteger(to) && from <= to);

	sound.forEach((band, k) => {
		const before = sound[k - 1];
		if (before !== undefined && band.from < before.from) {
			found.push({
				kind: 'out-of-order',
				index: band.i,
				from: band.from,
				to: band.to,
				facts: {
					trouble: 'band-out-of-order',
					band: band.i + 1,
					from: band.from,
					to: band.to,
					before: before.i + 1,
					beforeFrom: before.from,
				},
			});
		}
	});

	let reached = -1; // the highest value covered so far
	let reachedBy = 0; // by which band, from 1; 0 for none
	const gap = (to: number, i: number) => {
		const from = reached + 1;
		found.push({ kind: 'gap', index: i, from, to, facts: { trouble: 'band-gap', ...runOf(from, to) } });
	};
	for (const band of sound.toSorted((a, b) => a.from - b.from)) {
		const from = Math.max(0, Math.min(band.from, TOP_LEVEL + 1));
		const to = Math.min(band.to, TOP_LEVEL);
		if (from > reached + 1) gap(from - 1, band.i);
		const sharedTo = Math.min(to, reached);
		if (sharedTo >= from) {
			const one = Math.min(reachedBy, band.i + 1);
			const other = Math.max(reachedBy, band.i + 1);
			found.push({
				kind: 'overlap',
				index: band.i,
				from,
				to: sharedTo,
				facts: { trouble: 'band-overlap', one, other, ...runOf(from, sharedTo) },
			});
		}
		if (to > reached) {
			reached = to;
			reachedBy = band.i + 1;
		}
	}
	if (reached < TOP_LEVEL) gap(TOP_LEVEL, bands.length - 1);
	return found;
}
