import type { Band } from './bands.ts';
import { TOP_LEVEL } from './level.ts';

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
	/** What is wrong, with the place named, for a person. Bands are counted from 1. */
	readonly sentence: string;
};

function run(from: number, to: number): string {
	return from === to ? `${from}` : `${from} to ${to}`;
}

/** Problems of one band by itself. */
function ownProblems(band: Band, i: number): BandProblem[] {
	const { from, to } = band;
	const name = `Band ${i + 1} (${from} to ${to})`;
	const at = (kind: BandProblemKind, lo: number, hi: number, what: string): BandProblem => ({
		kind,
		index: i,
		from: lo,
		to: hi,
		sentence: `${name} ${what}`,
	});
	if (!(Number.isInteger(from) && Number.isInteger(to))) {
		return [at('not-whole', from, to, 'has an end that is no whole number.')];
	}
	if (from > to) return [at('reversed', from, to, 'starts above its end: swap the two.')];
	const found: BandProblem[] = [];
	if (from < 0) found.push(at('below-zero', from, Math.min(to, -1), 'starts below 0: values are 0 to 255.'));
	if (to > TOP_LEVEL) {
		found.push(at('past-255', Math.max(from, TOP_LEVEL + 1), to, `runs past ${TOP_LEVEL}: values are 0 to 255.`));
	}
	return found;
}

/**
 * Everything that is wrong with a slot's bands; an empty list when they cover 0 to 255 once each and in order.
 * Problems of single bands come first, then those of order, then gaps and overlaps by rising value. Never throws.
 */
export function checkBands(bands: readonly Band[]): BandProblem[] {
	if (bands.length === 0) {
		return [{ kind: 'none', index: 0, from: 0, to: TOP_LEVEL, sentence: 'There are no bands: 0 to 255 do nothing.' }];
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
				sentence: `Band ${band.i + 1} (${band.from} to ${band.to}) is listed behind band ${before.i + 1}, which starts higher, at ${before.from}.`,
			});
		}
	});

	let reached = -1; // the highest value covered so far
	let reachedBy = 0; // by which band, from 1; 0 for none
	const gap = (to: number, i: number) => {
		const place = `${run(reached + 1, to)} ${reached + 1 === to ? 'belongs' : 'belong'} to no band`;
		found.push({ kind: 'gap', index: i, from: reached + 1, to, sentence: `${place}: close the gap.` });
	};
	for (const band of sound.toSorted((a, b) => a.from - b.from)) {
		const from = Math.max(0, Math.min(band.from, TOP_LEVEL + 1));
		const to = Math.min(band.to, TOP_LEVEL);
		if (from > reached + 1) gap(from - 1, band.i);
		const sharedTo = Math.min(to, reached);
		if (sharedTo >= from) {
			const [one, other] = [reachedBy, band.i + 1].sort((a, b) => a - b);
			found.push({
				kind: 'overlap',
				index: band.i,
				from,
				to: sharedTo,
				sentence: `Bands ${one} and ${other} both hold ${run(from, sharedTo)}: each value belongs to one band.`,
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
