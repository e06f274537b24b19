import { describe, expect, test } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { type Complaint, openOutcomes, type RigOutcomes, together } from '../../../sim/finder/index.ts';
import { runs } from '../../runs.ts';
import { textOf, walkGig } from './gig.ts';

// Symptom: with two faults on the long line the walk made the repair of one and ended in a list of causes, none of them the other. Cause: pairs
// were laid out once, at the first repair that failed, with the faults of that repair alone; those of the repairs after it were in no pair.

const LINE = 'no-answer bar-12';

/** By complaint, pairs that were not found. */
const MISSED = [
	[LINE, 'leader-under-desk@bar-20:on', 'bad-socket-in@bar-17'],
	[LINE, 'wires-swapped@cable-1', 'cable-dead@cable-15'],
	[LINE, 'too-many-loads@bar-8', 'bad-socket-in@bar-22'],
] as const;

const benches = new Map<string, RigOutcomes>();

function benchFor(complaint: string): RigOutcomes {
	const [kind, fixture = ''] = complaint.split(' ');
	const bench = benches.get(complaint) ?? openOutcomes(bundledRig('long-line'), { kind, fixture } as Complaint);
	benches.set(complaint, bench);
	return bench;
}

describe('two faults on the long line', () => {
	// each is a walk on the largest rig, and takes seconds
	test.each(MISSED.slice(0, runs(1, MISSED.length)))(
		'%s: %s and %s are both mended',
		{ timeout: 300_000 },
		(complaint, ...names) => {
			const bench = benchFor(complaint);
			const faults = names.flatMap(
				(name) => bench.candidates.find((each) => textOf(each.faults) === name)?.faults ?? [],
			);
			expect(faults).toHaveLength(2);
			const broken = together(bench.meant, faults);
			if (!broken) throw new Error('the two were to stand together');
			expect(walkGig(bench, broken).cleared).toBe(true);
		},
	);
});
