import { expect, test } from 'vitest';
import { bundledRig, type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import { openRig, toSheet } from '../../../sim/rig/index.ts';
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

test('a dead output sends nothing on, its sheet says so, and so does a box that was switched off', () => {
	const rig = openRig(split(true));
	rig.send({ type: 'box.output', box: 'fan', socket: '2', dead: true });
	expect(rig.gear.receptions.get('f-1')?.quality).toBe('nothing');
	const kept = readSheet(toSheet(rig));
	expect(kept.splitters).toEqual([{ id: 'fan', name: 'splitter', outputs: 2, on: true, dead: [2] }]);
	expect(openRig(kept).gear.receptions.get('f-1')?.quality).toBe('nothing');
	rig.send({ type: 'box.output', box: 'fan', socket: '2', dead: false });
	expect(rig.gear.receptions.get('f-1')?.quality).toBe('clean');
	expect(toSheet(rig).splitters).toEqual(split(true).splitters);
	rig.send({ type: 'box.switch', box: 'fan', on: false });
	expect(rig.gear.receptions.get('f-1')?.quality).toBe('nothing');
	expect(toSheet(rig).splitters[0]?.on).toBe(false);
	expect(thrownBy(() => rig.send({ type: 'box.output', box: 'fan', socket: '9', dead: true })).code).toBe('event.box');
});

test('a desk that is held sends what stood, whatever its faders do, until it is let go; a sheet keeps both', () => {
	const rig = openRig(bundledRig('four-in-line'));
	rig.wait(2000);
	const before = rig.look('wash-1').light.whole;
	rig.send({ type: 'desk.hold', by: 'blind' });
	rig.send({ type: 'desk.level', universe: 1, slot: 1, level: 0 });
	rig.send({ type: 'desk.master', level: 0 });
	expect(rig.look('wash-1').light.whole).toEqual(before);
	const again = openRig(readSheet(toSheet(rig)));
	again.wait(2000);
	expect(again.look('wash-1').light.whole).toEqual(before);
	for (const each of [rig, again]) {
		each.send({ type: 'desk.hold', by: null });
		expect(each.look('wash-1').light.whole.brightness).toBe(0);
	}
});
