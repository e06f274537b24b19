import { describe, expect, it } from 'vitest';
import type { RigEvent } from '../../../../sim/event/index.ts';
import { replay } from '../../../../sim/rig/index.ts';
import { worthKeeping } from '../../../../src/features/papers/learner/logs.ts';
import { mixed } from '../../../sim/rig/sheets.ts';

const dark: RigEvent = { type: 'settings.become', fixture: 'wash-1', change: { loss: 'dark' } };
const pulled: RigEvent = { type: 'cable.unplug', cable: 'c1', end: 'from' };
const wait = (ms: number): RigEvent => ({ type: 'clock.wait', ms });

describe('the log of a task that is kept', () => {
	// symptom: a light dark on the bench since its cable was pulled was lit when the task was marked; cause: what was kept of the last
	// wait ended before data counts as lost
	it('shows when it is marked what was on the bench when it was left, lost data too', () => {
		for (const ms of [500, 1000, 1249, 1250, 1300, 60_000]) {
			const log = [wait(2000), dark, pulled, wait(ms)];
			const [left, marked] = [replay(mixed, log), replay(mixed, worthKeeping(log))];
			expect(marked.look('wash-1').light.whole, `${ms}`).toEqual(left.look('wash-1').light.whole);
		}
	});

	it('does not grow while nothing is done', () => {
		expect(worthKeeping([pulled, wait(60_000)])).toEqual(worthKeeping([pulled, wait(3_600_000)]));
		expect(worthKeeping([wait(60_000)])).toEqual([]);
		expect(worthKeeping([dark, pulled])).toEqual([dark, pulled]);
	});
});
