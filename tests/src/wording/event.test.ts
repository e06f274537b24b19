import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { events } from '#words/rig/index.ts';
import type { RigEvent, RigEventType } from '../../../sim/event/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { eventText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { anyEvent } from '../../sim/rig/events.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';
import { hasNoSeams } from './wording.ts';

type Example<T extends RigEventType> = readonly [Extract<RigEvent, { type: T }>, string];

/** Every kind of event once. */
const examples: { readonly [T in RigEventType]: Example<T> } = {
	'clock.wait': [{ type: 'clock.wait', ms: 2500 }, '2.5 seconds went by'],
	'key.tap': [{ type: 'key.tap', fixture: 'old-1', key: 'set' }, 'Set pressed on old wash'],
	'key.down': [{ type: 'key.down', fixture: 'bar-1', key: 'up' }, 'Up pressed on bar 1'],
	'key.up': [{ type: 'key.up', fixture: 'bar-1', key: 'up' }, 'Up let go on bar 1'],
	'switch.flip': [{ type: 'switch.flip', fixture: 'old-1', switch: 4, up: true }, 'Switch 4 flipped up on old wash'],
	'slide.move': [
		{ type: 'slide.move', fixture: 'old-1', slide: 'loss', to: 1 },
		'Slide Data gone moved to Hold on old wash',
	],
	'power.switch': [{ type: 'power.switch', fixture: 'bar-1', on: false }, 'Bar 1 switched off'],
	'mains.plug': [
		{ type: 'mains.plug', fixture: 'old-1', into: 'bar-1' },
		'Mains lead of old wash plugged into the mains link of bar 1',
	],
	'hall.power': [{ type: 'hall.power', on: false }, 'The hall’s mains went off'],
	'cable.lay': [
		{
			type: 'cable.lay',
			cable: {
				id: 'c9',
				kind: 'microphone',
				length: 10,
				from: 'desk:b',
				to: null,
				common: 'sound',
				minus: 'sound',
				plus: 'sound',
				swapped: false,
			},
		},
		'New cable 9, 10 m of microphone cable, from desk, output B',
	],
	'cable.lift': [{ type: 'cable.lift', cable: 'c2' }, 'Cable 2 taken away'],
	'cable.plug': [
		{ type: 'cable.plug', cable: 'c2', end: 'to', port: 'bar-1:in' },
		'Cable 2 plugged into bar 1, data in',
	],
	'cable.unplug': [{ type: 'cable.unplug', cable: 'c2', end: 'to' }, 'Cable 2 unplugged from bar 1, data in'],
	'cable.become': [
		{ type: 'cable.become', cable: 'c2', change: { minus: 'open', swapped: true, length: 12 } },
		'Cable 2 changed: data minus broken, data wires change places and 12 m long',
	],
	'terminator.fit': [{ type: 'terminator.fit', port: 'old-1:out' }, 'Terminator fitted in old wash, data out'],
	'terminator.remove': [{ type: 'terminator.remove', port: 'old-1:out' }, 'Terminator taken out of old wash, data out'],
	'desk.level': [
		{ type: 'desk.level', universe: 1, slot: 14, level: 128 },
		'Channel 14 of universe 1 set to 128 (50 %)',
	],
	'desk.recall': [
		{
			type: 'desk.recall',
			levels: [
				{ universe: 1, slot: 1, level: 255 },
				{ universe: 1, slot: 2, level: 0 },
			],
		},
		'A look called up on the desk: 1 channel up, all others at 0',
	],
	'desk.master': [{ type: 'desk.master', level: 255 }, 'The desk’s master set to 255 (100 %)'],
	'desk.output': [{ type: 'desk.output', output: 'a', on: false }, 'Desk, output A switched off'],
	'desk.universe': [{ type: 'desk.universe', output: 'b', universe: 3 }, 'Desk, output B set to universe 3'],
	'desk.patch': [
		{ type: 'desk.patch', fixture: 'bar-1', universe: 2, address: 40, mode: 'cells' },
		'Bar 1 patched at channel 40 of universe 2, mode Every cell, 35 channels',
	],
	'desk.start-code': [
		{ type: 'desk.start-code', output: 'a', code: 0x17 },
		'Desk, output A set to send start code 23 (text)',
	],
	'desk.hold': [{ type: 'desk.hold', by: 'blind' }, 'The desk left in blind'],
	'box.switch': [{ type: 'box.switch', box: 'fan', on: false }, 'Fan went off'],
	'box.output': [{ type: 'box.output', box: 'fan', socket: '2', dead: true }, 'Output 2 of fan went dead'],
	'remote.press': [{ type: 'remote.press', button: 'held:red' }, 'Static colour red pressed on the remote'],
	'remote.become': [
		{ type: 'remote.become', code: 2, battery: false },
		'The remote set to code 2, with a flat battery',
	],
	'sight.block': [{ type: 'sight.block', fixture: 'bar-1', hidden: true }, 'Bar 1 hidden from the remote'],
	'sound.play': [{ type: 'sound.play', level: 0.5 }, 'Sound played at 50 %'],
	'settings.become': [
		{ type: 'settings.become', fixture: 'bar-1', change: { mode: 'cells', level: 40 } },
		'Somebody had set bar 1: “Mode” to Every cell, 35 channels and “Brightness” to 40 %',
	],
	'charge.become': [{ type: 'charge.become', fixture: 'bar-1', charge: 0.25 }, 'Bar 1 has its battery at 25 %'],
	'condition.become': [
		{ type: 'condition.become', fixture: 'bar-1', change: { deadEmitters: ['warm-white'], covered: true } },
		'Bar 1: dead emitter: warm white and something covers its lens',
	],
};

describe('the log in words', () => {
	it('has words for every kind of event, and for nothing else', () => {
		expect(Object.keys(events).sort()).toEqual(Object.keys(examples).sort());
	});

	it.each(Object.values(examples) as unknown as [RigEvent, string][])('%j', (event, text) => {
		expect(eventText(openRig(mixed), event)).toBe(text);
	});

	// symptom: every tap was logged as 'pressed and held'. cause: the words went by the press alone, and not by how long it lasted
	it('calls a tap a tap, and a hold a hold with its length, by what the panel takes for one', () => {
		const rig = openRig(mixed);
		const says = (fixture: string, ms: number, over = true) =>
			eventText(rig, { type: 'key.down', fixture, key: 'up' }, { ms, over });
		for (const ms of [0, 60, 150, 300, 399]) expect(says('bar-1', ms)).toBe('Up pressed on bar 1');
		expect(says('bar-1', 60, false)).toBe('Up pressed on bar 1');
		expect(says('bar-1', 400)).toBe('Up held for 0.4 seconds on bar 1');
		expect(says('bar-1', 1040)).toBe('Up held for 1 second on bar 1');
		expect(says('bar-1', 75_000)).toBe('Up held for 75 seconds on bar 1');
		expect(says('bar-1', 700, false)).toBe('Up held down on bar 1');
		// this panel repeats later
		expect(says('wash-1', 499)).toMatch(/^Up pressed on/);
		expect(says('wash-1', 500)).toMatch(/^Up held for 0\.5 seconds on/);
	});

	it('says where a cable was, though it is there no longer', () => {
		const rig = openRig(mixed);
		const first: RigEvent = { type: 'cable.unplug', cable: 'c2', end: 'to' };
		const second: RigEvent = { type: 'cable.unplug', cable: 'c2', end: 'to' };
		rig.send(first);
		rig.send({ type: 'cable.unplug', cable: 'c3', end: 'to' });
		rig.send({ type: 'cable.plug', cable: 'c2', end: 'to', port: 'old-1:in' });
		rig.send(second);
		rig.send({ type: 'cable.lift', cable: 'c2' });
		expect(eventText(rig, first)).toBe('Cable 2 unplugged from bar 1, data in');
		expect(eventText(rig, second)).toBe('Cable 2 unplugged from old wash, data in');
	});

	it.each([mixed, led])('reads well whatever is done to $name, to things that are there or not', (sheet) => {
		fc.assert(
			fc.property(anyEvent(sheet), (event) => hasNoSeams(eventText(openRig(sheet), event))),
			{ numRuns: runs(300) },
		);
	});
});
