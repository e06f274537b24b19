import { isInputError } from '../../shared/error/index.ts';
import type { PlacedFault } from '../event/index.ts';
import { COMPLAINTS } from './complaints.ts';
import { type Bench, type Candidate, mendText, tableFor } from './table.ts';
import { faultyWitness, type Witness } from './witness.ts';

/** Share of all weight that two faults at once are given, once one alone does not explain what was seen (common practice, no source). */
const PAIRS = 0.1;

/** How many of the heaviest are paired with each other. */
const PAIRED = 14;

/**
 * The bench with pairs of faults beside the single ones: each of those whose mend was done with all others, and the heaviest with
 * each other.
 * @param weights of the single candidates now, in their order
 * @param mended texts of the mends done that did not clear the complaint
 */
export function widen(bench: Bench, weights: ArrayLike<number>, mended: ReadonlySet<string>): Bench {
	const singles = bench.candidates.map((candidate, at) => ({ candidate, weight: weights[at] ?? 0 }));
	const done = singles.filter(({ candidate }) => mended.has(candidate.mend)).map(({ candidate }) => candidate);
	const heavy = [...singles]
		.sort((a, b) => b.weight - a.weight)
		.slice(0, PAIRED)
		.map(({ candidate }) => candidate);
	const pairs = new Map<string, readonly [Candidate, Candidate]>();
	const add = (one: Candidate, two: Candidate): void => {
		if (one.mend === two.mend) return;
		const [a, b] = bench.candidates.indexOf(one) < bench.candidates.indexOf(two) ? [one, two] : [two, one];
		pairs.set(`${bench.candidates.indexOf(a)},${bench.candidates.indexOf(b)}`, [a, b]);
	};
	for (const one of done) for (const two of bench.candidates) add(one, two);
	for (const one of heavy) for (const two of heavy) if (one !== two) add(one, two);
	const found = [...pairs.values()].flatMap((pair) => pairOf(bench, pair) ?? []);
	const all = bench.candidates.reduce((sum, { weight }) => sum + weight, 0);
	const both = found.reduce((sum, { weight }) => sum + weight, 0);
	const scaled = found.map((candidate) => ({ ...candidate, weight: (candidate.weight * all * PAIRS) / both }));
	return tableFor(bench.sheet, bench.complaint, bench.meant, [...bench.candidates, ...scaled]);
}

/** Two faults at once, if the rig shows the complaint with both in it. */
function pairOf({ sheet, complaint, meant }: Bench, [one, two]: readonly [Candidate, Candidate]): Candidate | null {
	const faults = [...one.faults, ...two.faults];
	const witness = together(meant, faults);
	if (!witness || !COMPLAINTS[complaint.kind].holds(witness, meant, complaint.fixture)) return null;
	return {
		faults,
		weight: one.weight * two.weight,
		mend: faults
			.map((fault) => mendText(sheet, fault))
			.sort()
			.join('+'),
		witness,
	};
}

/** A rig with several faults, or null where one of them leaves no room for another. */
export function together(meant: Witness, faults: readonly PlacedFault[]): Witness | null {
	try {
		return faultyWitness(meant, faults);
	} catch (error) {
		if (isInputError(error)) return null;
		throw error;
	}
}
