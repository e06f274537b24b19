import { isInputError } from '../../../shared/error/index.ts';
import {
	type Check,
	ELSE,
	type FaultDrill,
	type Finder,
	finderOn,
	hiddenRig,
	isRepair,
	offeredBy,
	type RigOutcomes,
	repairEvents,
	repairTriedBy,
	type Witness,
	witness,
} from '../../../sim/finder/index.ts';

/** One thing done to the rig that is really broken. */
export interface Did {
	readonly check: Check;
	readonly outcome: string;
	/** What the finder was told of it: the outcome, or that it is something else. */
	readonly told: string;
	/** Walk and doing. */
	readonly seconds: number;
}

/** A broken rig, and somebody who does checks on it. Repairs change it for good. */
export interface Gig {
	readonly done: readonly Did[];
	/** What the finder made of those that tell anything. */
	readonly finder: Finder;
	readonly spent: number;
	readonly cleared: boolean;
	/** Does a check; nothing where there is no such check or the complaint is gone. */
	do(id: string): void;
}

/** Most that the finder may ask before its walk counts as lost. */
const MOST = 80;

/** The rig of a drill as it is found, with nothing done yet. */
export function openGig(bench: RigOutcomes, drill: FaultDrill): Gig {
	const finder = finderOn(bench);
	const done: Did[] = [];
	let rig: Witness = hiddenRig(drill);
	// seconds of checks that the finder's table does not hold: they tell nothing
	let aside = 0;
	let cleared = false;
	const known = (id: string): Check | undefined =>
		offeredBy(bench).find((check) => check.id === id) ?? finder.check(id);
	return {
		done,
		finder,
		get spent() {
			return finder.spent + aside;
		},
		get cleared() {
			return cleared;
		},
		do(id) {
			const check = known(id);
			if (!check || cleared) return;
			const outcome = check.read(rig);
			const before = finder.spent;
			const told = heard(finder, id, outcome);
			if (told === null) aside += check.seconds;
			done.push({ check, outcome, told: told ?? outcome, seconds: finder.spent - before || check.seconds });
			if (!isRepair(check)) return;
			cleared = outcome === 'cleared';
			rig = repaired(bench, rig, id, done.length);
		},
	};
}

/** Tells the finder what was seen; what none of its suspects would show is something else to it. @returns what it took; null for a check it does not know */
function heard(finder: Finder, id: string, outcome: string): string | null {
	for (const seen of [outcome, ELSE]) {
		try {
			finder.answer(id, seen);
			return seen;
		} catch (error) {
			if (!isInputError(error)) throw error;
			if (error.code === 'finder.check') return null;
		}
	}
	return null;
}

/** The rig with a repair done: its place is as the sheet says, the rest as it was. */
function repaired(bench: RigOutcomes, rig: Witness, id: string, nth: number): Witness {
	const repair = repairTriedBy(id);
	return repair ? witness(rig.after(`mended ${nth}`, () => repairEvents(bench.sheet, rig.rig, repair))) : rig;
}

/** The finder's own walk on the same rig: it asks, the rig answers, and its repairs are done until the complaint is gone. */
export function finderGig(bench: RigOutcomes, drill: FaultDrill): Gig {
	const gig = openGig(bench, drill);
	while (!gig.cleared && gig.done.length < MOST) {
		const next = gig.finder.next()?.check.id ?? gig.finder.verdict()?.repairs[0]?.check;
		const before = gig.done.length;
		if (next !== undefined) gig.do(next);
		if (gig.done.length === before) break;
	}
	return gig;
}
