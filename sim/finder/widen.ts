import { isInputError } from '../../shared/error/index.ts';
import type { PlacedFault } from '../event/index.ts';
import { type Candidate, type More, type RigOutcomes, repairText, showingOf, withMore } from './table.ts';
import { type Came, faultyWitness, type Witness } from './witness.ts';

/** Share of all weight that two faults at once are given, once one alone does not explain what was seen (common practice, no source). */
const PAIRS = 0.1;

/** How many of the heaviest are paired with each other; and how many where a repair was done, since one of those is then likely. */
const PAIRED = 14;
const PAIRED_BESIDE = 8;

/** How many of those that one repair would have cleared are paired with all others: the heaviest. */
const DONE = 3;

/** Most pairs laid out at once: those of the repair made last come first. */
const MOST_PAIRS = 1500;

/** Where one fault alone explains too little. */
export interface Doubt {
	/** The number of the step after which it does. */
	readonly after: number;
	/** Of the single candidates then, in their order. */
	readonly weights: ArrayLike<number>;
	/** Texts of the repairs done that did not clear the complaint, in the order they were done. */
	readonly repaired: ReadonlySet<string>;
}

/**
 * The bench with pairs of faults beside the single ones: the likeliest of those whose repair was done with all others, and the
 * heaviest with each other.
 * @param asked ids of the checks answered so far
 */
export function widen(table: RigOutcomes, { weights, repaired }: Doubt, asked: ReadonlySet<string>): RigOutcomes {
	const { candidates } = table;
	const numbers = new Map(candidates.map((candidate, at) => [candidate, at]));
	const weightOf = (candidate: Candidate): number => weights[numbers.get(candidate) ?? -1] ?? 0;
	const byWeight = [...candidates].sort((a, b) => weightOf(b) - weightOf(a) || b.weight - a.weight);
	const heavy = byWeight.slice(0, repaired.size > 0 ? PAIRED_BESIDE : PAIRED);
	const done = [...repaired]
		.reverse()
		.flatMap((repair) => byWeight.filter((each) => each.repair === repair).slice(0, DONE));
	const pairs = new Map<string, readonly [Candidate, Candidate]>();
	const add = (one: Candidate, two: Candidate): void => {
		if (one.repair === two.repair) return;
		const [a, b] = (numbers.get(one) ?? 0) < (numbers.get(two) ?? 0) ? [one, two] : [two, one];
		pairs.set(`${numbers.get(a)},${numbers.get(b)}`, [a, b]);
	};
	for (const one of heavy) for (const two of heavy) if (one !== two) add(one, two);
	for (const one of done) for (const two of candidates) if (pairs.size < MOST_PAIRS) add(one, two);
	const shows = showingOf(table.meant, table.complaint);
	const found = [...pairs.values()].flatMap((pair) => pairOf(table, pair, repaired, shows) ?? []);
	const all = candidates.reduce((sum, { weight }) => sum + weight, 0);
	const both = found.reduce((sum, { weight }) => sum + weight, 0);
	const scaled = found.map((candidate) => ({ ...candidate, weight: (candidate.weight * all * PAIRS) / both }));
	return withMore(table, scaled, asked);
}

/** Two faults at once, if the rig shows the complaint with both in it. */
function pairOf(
	{ sheet, meant }: RigOutcomes,
	[one, two]: readonly [Candidate, Candidate],
	repaired: ReadonlySet<string>,
	shows: (w: Witness) => boolean,
): More | null {
	const came = cameTogether(one.came, two.came);
	const faults = [...one.faults, ...two.faults];
	const witness = came && together(meant, faults, came === 'warm' ? 'warm' : 'cold');
	if (!witness || !shows(witness)) return null;
	return {
		faults,
		came,
		weight: one.weight * two.weight,
		repair: faults
			.map((fault) => repairText(sheet, fault))
			.sort()
			.join('+'),
		witness,
		left: repaired.has(one.repair) ? two : repaired.has(two.repair) ? one : null,
	};
}

/** When two faults came, both before the rig was switched on or both while it ran; null where that is one each. */
function cameTogether(one: Came, two: Came): Came | null {
	if (one === two || two === 'either') return one;
	return one === 'either' ? two : null;
}

/** A rig with several faults, or null where one of them leaves no room for another. @param came when they came about */
export function together(
	meant: Witness,
	faults: readonly PlacedFault[],
	came: Exclude<Came, 'either'> = 'cold',
): Witness | null {
	try {
		return faultyWitness(meant, faults, came);
	} catch (error) {
		if (isInputError(error)) return null;
		throw error;
	}
}
