import { makeRandom } from '../../shared/random/index.ts';
import { bundledRig, type RigId, type RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault } from '../event/index.ts';
import type { Complaint } from './complaints.ts';
import { COMPLAINTS, complaintsOf } from './complaints.ts';
import { type Candidate, candidatesFor, weightApart } from './table.ts';
import { together } from './widen.ts';
import { faultyWitness, meantWitness, type Witness } from './witness.ts';

/** A rig with something hidden in it. It follows from rig, seed and count alone, so a link need not hold the answer. */
export interface FaultDrill {
	readonly rig: RigId;
	readonly seed: number;
	readonly count: 1 | 2;
	readonly sheet: RigSheet;
	/** What somebody complains of. */
	readonly complaint: Complaint;
	/** The answer. */
	readonly faults: readonly PlacedFault[];
}

/** How many complaints are tried before a drill with two faults settles for one. */
const TRIES = 12;

/** A fault drill: the same rig, seed and count always hide the same. @param count of faults; two where two can be found that both show the complaint */
export const makeFaultDrill = (rig: RigId, seed: number, count: 1 | 2 = 1): FaultDrill =>
	hideFaults(rig, bundledRig(rig), seed, count);

/** As `makeFaultDrill`, by one who has the rig's sheet at hand: `loadRig` fetches it. */
export function hideFaults(rig: RigId, sheet: RigSheet, seed: number, count: 1 | 2): FaultDrill {
	const meant = meantWitness(sheet);
	const random = makeRandom(seed).fork(`fault drill ${rig} ${count}`);
	const complaints = random.shuffle(complaintsOf(meant, sheet));
	let spare: FaultDrill | null = null;
	for (const complaint of complaints.slice(0, TRIES * 2)) {
		const candidates = causesOf(sheet, meant, complaint);
		if (candidates.length < 4) continue;
		const one = drawn(candidates, random.next());
		const drill = { rig, seed, count, sheet, complaint };
		if (count === 1) return { ...drill, faults: one.faults };
		spare ??= { ...drill, faults: one.faults };
		for (const two of random.shuffle(candidates).slice(0, TRIES)) {
			if (two.mend === one.mend) continue;
			const faults = [...one.faults, ...two.faults];
			const both = together(meant, faults);
			if (both && COMPLAINTS[complaint.kind].holds(both, meant, complaint.fixture)) return { ...drill, faults };
		}
	}
	if (spare) return spare;
	// no complaint of this rig leaves four to choose from: the first that any fault shows
	const [complaint] = complaints.filter((each) => causesOf(sheet, meant, each).length > 0);
	if (!complaint) throw new RangeError(`no fault of ${rig} shows`);
	return {
		rig,
		seed,
		count,
		sheet,
		complaint,
		faults: drawn(causesOf(sheet, meant, complaint), random.next()).faults,
	};
}

/** What can be hidden, with the weights of the catalogue: a learner meets the rig as it was switched on. */
const causesOf = (sheet: RigSheet, meant: Witness, complaint: Complaint): Candidate[] =>
	candidatesFor(sheet, meant, complaint).flatMap((candidate) =>
		candidate.came === 'warm' ? [] : { ...candidate, weight: weightApart(candidate) },
	);

/** One by weight: common faults are drawn more often. @param at 0..1 */
function drawn<T extends { readonly weight: number }>(list: readonly T[], at: number): T {
	const all = list.reduce((sum, { weight }) => sum + weight, 0);
	let left = at * all;
	for (const one of list) {
		left -= one.weight;
		if (left < 0) return one;
	}
	return list.at(-1) as T;
}

/** The rig of a drill as the learner finds it. */
export function hiddenRig({ sheet, faults }: FaultDrill): Witness {
	return faultyWitness(meantWitness(sheet), faults);
}
