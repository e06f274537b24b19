import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { portsOf } from '../../../../shared/sheet/index.ts';
import { openRig } from '../../../../sim/rig/index.ts';
import { type InHand, inSocket, layEvent, pressSocket, stillHeld } from '../../../../src/features/bench/hand.ts';
import { presetSheet } from '../../../../src/features/bench/presets.ts';
import { runs } from '../../../runs.ts';

const next = { kind: 'data', length: 5 } as const;

describe('a hand at the sockets', () => {
	it('never does what the rig refuses, whatever is pressed, and no cable is lost', () => {
		const sheet = presetSheet('four');
		const ports = portsOf(sheet);
		fc.assert(
			fc.property(fc.array(fc.constantFrom(...ports), { maxLength: 60 }), (presses) => {
				const rig = openRig(sheet);
				let hand: InHand | null = null;
				let laid = rig.gear.cables.length;
				for (const port of presses) {
					const press = pressSocket(rig, hand, port, next);
					if (press.refused) {
						expect(press.event).toBeNull();
						expect(inSocket(rig, port).kind).not.toBe('free');
					}
					if (press.event) rig.send(press.event);
					if (press.event?.type === 'cable.lay') laid++;
					hand = press.hand;
					expect(stillHeld(rig, hand)).toBe(true);
					expect(rig.gear.cables).toHaveLength(laid);
				}
			}),
			{ numRuns: runs(200) },
		);
	});

	it('plugs, pulls, puts back and gives up', () => {
		const rig = openRig(presetSheet('one'));
		const first = pressSocket(rig, null, 'desk:a', next);
		expect(first).toEqual({ event: null, hand: { kind: 'fresh', from: 'desk:a' } });
		expect(pressSocket(rig, first.hand, 'desk:a', next)).toEqual({ event: null, hand: null });
		const second = pressSocket(rig, first.hand, 'wash-1:in', { kind: 'microphone', length: 12 });
		expect(second.event).toMatchObject({
			type: 'cable.lay',
			cable: { id: 'cable-1', kind: 'microphone', length: 12, from: 'desk:a', to: 'wash-1:in' },
		});
		if (second.event) rig.send(second.event);
		const pulled = pressSocket(rig, null, 'wash-1:in', next);
		expect(pulled).toEqual({
			event: { type: 'cable.unplug', cable: 'cable-1', end: 'to' },
			hand: { kind: 'end', cable: 'cable-1', end: 'to' },
		});
		if (pulled.event) rig.send(pulled.event);
		expect(pressSocket(rig, pulled.hand, 'desk:a', next)).toEqual({ event: null, hand: pulled.hand, refused: true });
		expect(pressSocket(rig, pulled.hand, 'wash-1:out', next).event).toEqual({
			type: 'cable.plug',
			cable: 'cable-1',
			end: 'to',
			port: 'wash-1:out',
		});
		expect(layEvent(rig, null, null, next)).toMatchObject({ cable: { id: 'cable-2', from: null, to: null } });
	});

	it('is empty again once what it held is gone', () => {
		const rig = openRig(presetSheet('four'));
		expect(stillHeld(rig, { kind: 'end', cable: 'cable-1', end: 'to' })).toBe(false);
		rig.send({ type: 'cable.unplug', cable: 'cable-1', end: 'to' });
		expect(stillHeld(rig, { kind: 'end', cable: 'cable-1', end: 'to' })).toBe(true);
		rig.send({ type: 'cable.lift', cable: 'cable-1' });
		expect(stillHeld(rig, { kind: 'end', cable: 'cable-1', end: 'to' })).toBe(false);
		expect(stillHeld(rig, { kind: 'fresh', from: 'wash-4:out' })).toBe(false);
		expect(inSocket(rig, 'wash-4:out').kind).toBe('terminator');
	});
});
