import { expect, test } from 'vitest';
import type { Complaint } from '../../../sim/finder/index.ts';
import { boxed } from './boxed.ts';
import { closedLoop } from './closedLoop.ts';

/** A light behind the splitter, and a leader and a follower that are set by switches: all complaints are in the soak. */
const SOME: readonly Complaint[] = [
	{ kind: 'dark', fixture: 'wash-1' },
	{ kind: 'dark', fixture: 'old-1' },
	{ kind: 'dark', fixture: 'old-2' },
];

test('on a rig with a splitter and switches every fault is found, and its repair ends the complaint', () => {
	const { missed, kinds } = closedLoop(boxed, SOME);
	expect(missed).toEqual([]);
	// faults that no bundled rig has
	expect([...kinds]).toEqual(
		expect.arrayContaining(['splitter-off', 'splitter-output-dead', 'function-switch-wrong', 'tenth-switch-down']),
	);
});
