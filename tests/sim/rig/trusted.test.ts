import { expect, it } from 'vitest';
import { bundledRig, RIG_IDS } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import * as checked from '../../../sim/rig/index.ts';
import * as trusted from '../../../sim/rig/trusted.ts';
import { saidBy } from '../../shared/thrown.ts';

const LOG: readonly RigEvent[] = [
	{ type: 'clock.wait', ms: 1200 },
	{ type: 'hall.power', on: false },
	{ type: 'clock.wait', ms: 1200 },
];

it.each(RIG_IDS)('the door that trusts opens the same rig: %s', (id) => {
	const sheet = bundledRig(id);
	for (const [one, other] of [
		[checked.openRig(sheet), trusted.openUnharmed(sheet)],
		[checked.replay(sheet, LOG), trusted.replayUnharmed(sheet, LOG)],
	] as const)
		for (const fixture of sheet.fixtures) {
			expect(other.look(fixture.id)).toEqual(one.look(fixture.id));
			expect(checked.why(other, fixture.id)).toEqual(checked.why(one, fixture.id));
		}
});

it('is held to no schema there, and to one here', () => {
	const sheet = bundledRig('one-wash');
	const crooked = { type: 'hall.power', on: 'perhaps' } as never;
	expect(saidBy(() => checked.openRig(sheet).send(crooked))).toMatch(/doesn’t fit/);
	expect(saidBy(() => checked.openRig(sheet).fork().send(crooked))).toMatch(/doesn’t fit/);
	expect(() => trusted.openUnharmed(sheet).send(crooked)).not.toThrow();
	expect(saidBy(() => checked.openRig({ ...sheet, fixtures: 4 } as never))).toMatch(/doesn’t fit/);
	expect(saidBy(() => checked.openRig(sheet, { faults: 4 } as never))).toMatch(/doesn’t fit/);
});
