import type { RigSheet } from '../../../shared/sheet/index.ts';
import { type Complaint, faultyWitness, meantWitness, openOutcomes } from '../../../sim/finder/index.ts';
import { textOf, walkGig } from './gig.ts';

/** How the finder went on the faults of some complaints. */
export interface LoopRow {
	readonly complaints: number;
	readonly faults: number;
	/** To the end of the repair, over all faults. */
	readonly seconds: number;
	/** Kinds of the faults that were found and repaired. */
	readonly kinds: ReadonlySet<string>;
	readonly missed: readonly string[];
}

/** The closed loop on a rig: each fault that causes a complaint is put in, and the rig answers the finder's checks. */
export function closedLoop(sheet: RigSheet, asked: readonly Complaint[]): LoopRow {
	const meant = meantWitness(sheet);
	const missed: string[] = [];
	const kinds = new Set<string>();
	let complaints = 0;
	let faults = 0;
	let seconds = 0;
	for (const complaint of asked) {
		const bench = openOutcomes(sheet, complaint);
		if (bench.candidates.length === 0) continue;
		complaints++;
		for (const { faults: placed, came } of bench.candidates) {
			const name = textOf(placed);
			const walked = walkGig(bench, faultyWitness(meant, placed, came === 'warm' ? 'warm' : 'cold'));
			faults++;
			seconds += walked.spent;
			if (walked.cleared && walked.verdict?.suspects.some(({ id }) => id === name))
				for (const { fault } of placed) kinds.add(fault);
			else missed.push(`${complaint.kind} ${complaint.fixture}: ${name}`);
		}
	}
	return { complaints, faults, seconds, kinds, missed };
}
