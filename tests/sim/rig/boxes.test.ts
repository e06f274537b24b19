import { expect, test } from 'vitest';
import { type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { led } from './sheets.ts';

/** The battery leader's line goes through a splitter. */
const split = (on: boolean): RigSheet =>
	readSheet({
		...led,
		splitters: [{ id: 'fan', name: 'splitter', outputs: 2, on }],
		cables: [
			...led.cables.map((cable) => (cable.id === 'c1' ? { ...cable, from: 'fan:2' } : cable)),
			{ id: 'c0', kind: 'data', length: 5, from: 'lead:out', to: 'fan:in' },
		],
	});

test('a box in the hall passes a battery leader’s frames on while it is on and the hall has power, and no longer', () => {
	const heard = (rig: ReturnType<typeof openRig>) => {
		const { quality, causes } = rig.gear.receptions.get('f-1') ?? {};
		return [quality, causes];
	};
	const rig = openRig(split(true));
	expect(heard(rig)).toEqual(['clean', []]);
	const off = ['nothing', [{ cause: 'splitter-off', splitter: 'fan' }]];
	rig.send({ type: 'hall.power', on: false });
	expect(heard(rig)).toEqual(off);
	rig.send({ type: 'hall.power', on: true });
	expect(heard(rig)).toEqual(['clean', []]);
	expect(heard(openRig(split(false)))).toEqual(off);
});

// it would be a rig that no sheet can say, and so one that could not be kept
test('no event puts both ends of a cable into one socket', () => {
	const rig = openRig(led);
	const before = rig.gear.cables;
	for (const change of [{ from: 'f-1:in' }, { from: 'f-3:out', to: 'f-3:out' }]) {
		const error = thrownBy(() => rig.send({ type: 'cable.become', cable: 'c1', change }));
		expect(error.code).toBe('event.socket');
		expect(errorText(error)).toBe('Both ends of a cable can’t be in one socket.');
	}
	expect(rig.gear.cables).toBe(before);
});
