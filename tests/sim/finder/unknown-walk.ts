import { bundledRig } from '../../../shared/sheet/index.ts';
import { COMPLAINTS } from '../../../sim/finder/complaints.ts';
import {
	type Complaint,
	complaintsOf,
	ELSE,
	finderOn,
	isRepair,
	meantWitness,
	openOutcomes,
	type RigOutcomes,
	repairTriedBy,
	triedBy,
	type Verdict,
} from '../../../sim/finder/index.ts';
import { textTriedBy } from '../../../sim/finder/tried.ts';
import { meanwhile, repaired, type UnknownFault, unknownRig } from './unknown.ts';

/** Most answers before a walk counts as one that does not end. */
export const MOST = 80;

export interface UnknownWalk {
	readonly complaint: string;
	readonly because: string;
	readonly asked: number;
	readonly seconds: number;
	readonly repairs: readonly string[];
	/** What was said before any repair that a verdict asked for, and at the end. */
	readonly first: Verdict | null;
	readonly last: Verdict | null;
	/** A cause named at the end whose repair was seen to fail. */
	readonly failedCause: string | null;
	/** Anything on the way that said two things at once. */
	readonly torn: readonly string[];
}

const benches = new Map<string, RigOutcomes>();

/** A table worked out once for all walks. */
export function benchFor(rig: UnknownFault['rig'], complaint: Complaint): RigOutcomes {
	const key = `${rig} ${complaint.kind} ${complaint.fixture}`;
	const bench = benches.get(key) ?? openOutcomes(bundledRig(rig), complaint);
	benches.set(key, bench);
	return bench;
}

/** Always what the finder asks, answered as the rig shows; each repair it asks for is made, and the fault is there again. */
export function walkUnknown(fault: UnknownFault, complaint: Complaint): UnknownWalk {
	const bench = benchFor(fault.rig, complaint);
	const finder = finderOn(bench);
	let broken = unknownRig(fault);
	const away = meanwhile(fault);
	let isEnded = false;
	const now = () => (isEnded || fault.isThere?.(finder.steps.length) === false ? away : broken);
	const repairs: string[] = [];
	const torn: string[] = [];
	let first: Verdict | null = null;
	let asked = 0;
	const repair = (check: string): void => {
		const tried = repairTriedBy(check);
		repairs.push(check);
		if (textTriedBy(check) === fault.endedBy) isEnded = true;
		else if (tried) broken = repaired(broken, fault, tried.id, tried.place);
		// nobody calls it mended at once who has seen it come and go
		const w = isEnded ? away : broken;
		finder.answer(check, COMPLAINTS[complaint.kind].holds(w, bench.meant, complaint.fixture) ? 'still' : 'cleared');
	};
	while (asked++ < MOST) {
		const verdict = finder.verdict();
		const next = finder.next();
		if (verdict) first ??= verdict;
		torn.push(...tornBy(verdict, next !== null));
		if (next && isRepair(next.check)) repair(next.check.id);
		else if (next) {
			const seen = next.check.read(now());
			finder.answer(next.check.id, next.outcomes.some(({ id }) => id === seen) ? seen : ELSE);
		} else if (verdict && !verdict.confirmed && verdict.repairs[0]) repair(verdict.repairs[0].check);
		else break;
	}
	const last = finder.verdict();
	const failed = new Set(repairs);
	const isFailed = (list: readonly Parameters<typeof triedBy>[0][]) =>
		list.length > 0 && list.every((repair) => failed.has(triedBy(repair)));
	const cause = last?.confirmed ? undefined : last?.suspects.find((suspect) => isFailed(suspect.repairs));
	return {
		complaint: complaint.kind,
		because: last?.because ?? 'no verdict',
		asked: finder.steps.length,
		seconds: Math.round(finder.spent),
		repairs,
		first,
		last,
		failedCause: cause?.id ?? null,
		torn: [...new Set(torn)],
	};
}

function tornBy(verdict: Verdict | null, isMoreToDo: boolean): string[] {
	const torn = verdict && isMoreToDo ? ['a verdict, and a check to do'] : [];
	if (verdict?.because === 'unknown') {
		if (verdict.suspects.some(({ id }) => id !== 'unknown')) torn.push('nothing fits, and a cause beside it');
		if (verdict.repairs.length > 0) torn.push('nothing fits, and a repair beside it');
	} else if (verdict && verdict.because !== 'mended') {
		if (verdict.suspects.some(({ id }) => id === 'unknown')) torn.push('a cause, and something not known beside it');
		if (verdict.suspects.every(({ against }) => against.length > 0))
			torn.push('causes with something against them all');
	}
	return torn;
}

/** What can be complained of with such a rig. */
export function complaintsWith(fault: UnknownFault): Complaint[] {
	const sheet = bundledRig(fault.rig);
	const meant = meantWitness(sheet);
	const w = unknownRig(fault);
	return complaintsOf(meant, { ...sheet, fixtures: sheet.fixtures.filter(({ id }) => id === fault.fixture) }).filter(
		({ kind, fixture }) => COMPLAINTS[kind].holds(w, meant, fixture),
	);
}

/** Whether a verdict says what is so of a fault that the finder does not know: that it does not, or the repair that would end it. */
export const isRight = (fault: UnknownFault, { because, suspects }: Verdict): boolean =>
	because === 'unknown' ||
	suspects.some(({ repairs }) => repairs.some(({ id, place }) => `${id}@${place}` === fault.endedBy));
