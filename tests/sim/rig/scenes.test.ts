import { describe, expect, test } from 'vitest';
import { readSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig, type Rig, why } from '../../../sim/rig/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { led, mixed } from './sheets.ts';

const words = (rig: Rig, id: string): string => rig.look(id).light.whole.words;
const ids = (rig: Rig, id: string): string[] => why(rig, id).map((reason) => reason.id);
function send(rig: Rig, ...events: RigEvent[]): void {
	for (const event of events) rig.send(event);
}

describe('the line', () => {
	test('a fixture with no power still passes the line on', () => {
		const rig = openRig(mixed);
		expect(words(rig, 'old-1')).not.toBe('dark');
		send(rig, { type: 'power.switch', fixture: 'wash-1', on: false });
		rig.wait(5000);
		expect(words(rig, 'wash-1')).toBe('dark');
		expect(words(rig, 'old-1')).not.toBe('dark');
		expect(rig.look('old-1').lamps.data).toBe('steady');
	});

	test('mains link: the bar feeds the old wash whatever the bar’s own switch says, and not without its plug', () => {
		const rig = openRig(mixed);
		send(rig, { type: 'power.switch', fixture: 'bar-1', on: false });
		expect(rig.look('old-1').lamps.power).toBe('lit');
		send(rig, { type: 'mains.plug', fixture: 'bar-1', into: 'none' });
		expect(rig.look('old-1').lamps.power).toBe('out');
		expect(ids(rig, 'old-1')).toEqual(['power.no-mains']);
	});

	test('frames whose start code is not zero are no levels: the light goes by its loss setting', () => {
		const rig = openRig(mixed);
		const before = words(rig, 'wash-1');
		send(rig, { type: 'desk.start-code', output: 'a', code: 0x17 });
		rig.wait(2000);
		expect(rig.look('wash-1').lamps.data).toBe('blinking');
		expect(words(rig, 'wash-1')).toBe(before); // tallow holds
		expect(words(rig, 'bar-1')).toBe('dark'); // picket goes dark
		expect(ids(rig, 'bar-1')).toContain('source.start-code');
	});

	test('loss of data: 1.25 seconds’ grace, then hold, dark or the fixture’s own programme', () => {
		for (const [loss, state] of [
			['hold', 'signal.holding'],
			['dark', 'signal.dark'],
			['programme', 'signal.running'],
		] as const) {
			const rig = openRig(mixed);
			send(rig, { type: 'settings.become', fixture: 'wash-1', change: { loss } });
			const before = words(rig, 'wash-1');
			send(rig, { type: 'desk.output', output: 'a', on: false });
			rig.wait(1249);
			expect(words(rig, 'wash-1')).toBe(before);
			rig.wait(1);
			expect(ids(rig, 'wash-1')).toContain(state);
			expect(rig.look('wash-1').light.moving).toBe(loss === 'programme');
			expect(words(rig, 'wash-1') === 'dark').toBe(loss === 'dark');
			send(rig, { type: 'desk.output', output: 'a', on: true });
			expect(words(rig, 'wash-1')).toBe(before);
		}
	});

	test('swapped data wires stop it, and a second swapped cable puts it right again', () => {
		const rig = openRig(mixed);
		send(rig, { type: 'cable.become', cable: 'c1', change: { swapped: true } });
		rig.wait(2000);
		for (const id of ['wash-1', 'bar-1', 'old-1']) expect(ids(rig, id)).toContain('line.swapped');
		send(rig, { type: 'cable.become', cable: 'c3', change: { swapped: true } });
		rig.wait(2000);
		expect(rig.look('wash-1').lamps.data).toBe('blinking');
		expect(rig.look('old-1').lamps.data).toBe('steady');
	});

	test('one wire open: the fixtures past it flicker or go, those before it do not', () => {
		for (const wire of ['minus', 'plus'] as const) {
			const rig = openRig(mixed);
			send(rig, { type: 'cable.become', cable: 'c3', change: { [wire]: 'open' } });
			rig.wait(2000);
			expect(rig.look('bar-1').lamps.data).toBe('steady');
			expect(rig.look('old-1').lamps.data).not.toBe('steady');
			expect(ids(rig, 'old-1')).toContain('line.one-wire-open');
		}
	});
});

describe('leading and following', () => {
	test('followers in the leader’s mode show the leader’s light', () => {
		const rig = openRig(led);
		for (const id of ['f-1', 'f-2', 'f-3']) expect(words(rig, id)).toBe(words(rig, 'lead'));
		send(rig, { type: 'settings.become', fixture: 'lead', change: { held: 'green' } });
		for (const id of ['f-1', 'f-2', 'f-3']) expect(words(rig, id)).toBe(words(rig, 'lead'));
		expect(words(rig, 'f-1')).toMatch(/green/);
	});

	test('a follower in another mode reads the same frame by another chart', () => {
		const rig = openRig(led);
		send(rig, { type: 'settings.become', fixture: 'f-2', change: { mode: 'short' } });
		expect(words(rig, 'f-1')).toBe(words(rig, 'lead'));
		expect(rig.look('f-2').light.whole.levels).not.toEqual(rig.look('lead').light.whole.levels);
		expect(ids(rig, 'f-2')).toContain('address.mode-differs');
	});

	test('they move with it, and flash with it', () => {
		const rig = openRig(led);
		send(rig, {
			type: 'settings.become',
			fixture: 'lead',
			change: { work: 'programme', programme: 'drift', speed: 90 },
		});
		const seen = new Set<string>();
		for (let i = 0; i < 12; i++) {
			rig.wait(400);
			seen.add(rig.look('f-3').light.whole.colour);
			expect(rig.look('f-3').light.whole.colour).toBe(rig.look('f-1').light.whole.colour);
			expect(rig.look('f-3').light.moving).toBe(true);
		}
		expect(seen.size).toBeGreaterThan(4);
		send(rig, { type: 'settings.become', fixture: 'lead', change: { programme: 'flashes' } });
		expect(rig.look('f-2').light.flashes).toBeCloseTo(rig.look('lead').light.flashes);
	});

	test('the leader stops: they keep its last look', () => {
		const rig = openRig(led);
		const look = words(rig, 'lead');
		send(rig, { type: 'power.switch', fixture: 'lead', on: false });
		rig.wait(3000);
		expect(words(rig, 'lead')).toBe('dark');
		expect(words(rig, 'f-3')).toBe(look);
		expect(ids(rig, 'f-3')).toContain('signal.holding');
	});

	test('a leader under a running desk is a second talker: all on that line get damaged frames', () => {
		const rig = openRig(mixed);
		send(rig, { type: 'settings.become', fixture: 'wash-1', change: { work: 'held', lead: 'on' } });
		rig.wait(2000);
		expect(rig.look('bar-1').light.flicker || rig.look('bar-1').lamps.data !== 'steady').toBe(true);
		expect(ids(rig, 'bar-1')).toContain('line.collision');
		send(rig, { type: 'desk.output', output: 'a', on: false });
		expect(rig.look('bar-1').lamps.data).toBe('steady');
		expect(ids(rig, 'bar-1')).toContain('source.leader');
	});
});

describe('hands and ears', () => {
	test('the remote reaches those it sees, whose sensor is open and whose code is the same, and takes them from the desk', () => {
		const rig = openRig(led);
		send(
			rig,
			{ type: 'settings.become', fixture: 'f-1', change: { sensor: 'shut' } },
			{ type: 'settings.become', fixture: 'f-2', change: { code: 2 } },
			{ type: 'sight.block', fixture: 'f-3', hidden: true },
		);
		send(rig, { type: 'remote.press', button: 'held:blue' });
		const work = (id: string) => rig.gear.units.get(id)?.state.context.settings.work;
		expect(['lead', 'f-1', 'f-2', 'f-3'].map(work)).toEqual(['held', 'follow', 'follow', 'follow']);
		expect(words(rig, 'lead')).toMatch(/blue/);
		const dead = openRig(led);
		send(dead, { type: 'remote.become', code: 1, battery: false }, { type: 'remote.press', button: 'held:blue' });
		expect(words(dead, 'lead')).not.toMatch(/blue/);
	});

	test('four kinds of sound answer, each by what is heard', () => {
		for (const programme of ['ear-step', 'ear-swell', 'ear-flash', 'ear-run']) {
			const rig = openRig(led);
			send(rig, {
				type: 'settings.become',
				fixture: 'lead',
				change: { work: 'programme', programme, lead: 'off', hearing: 70 },
			});
			const seen = new Set<string>();
			for (let beat = 0; beat < 6; beat++) {
				send(rig, { type: 'sound.play', level: 0.9 });
				rig.wait(50);
				seen.add(rig.look('lead').light.whole.colour);
				send(rig, { type: 'sound.play', level: 0.1 });
				rig.wait(950);
				seen.add(rig.look('lead').light.whole.colour);
			}
			expect(seen.size, programme).toBeGreaterThan(1);
			const silent = openRig(led);
			send(silent, { type: 'settings.become', fixture: 'lead', change: { work: 'programme', programme, lead: 'off' } });
			const still = silent.look('lead').light.whole.colour;
			silent.wait(2000);
			expect(silent.look('lead').light.whole.colour, programme).toBe(still);
		}
	});

	test('a microphone that hears nothing at all hears no beat', () => {
		const rig = openRig(led);
		send(
			rig,
			{ type: 'settings.become', fixture: 'lead', change: { work: 'programme', programme: 'ear-flash', hearing: 0 } },
			{ type: 'sound.play', level: 1 },
		);
		expect(words(rig, 'lead')).toBe('dark');
	});

	test('the desk’s master brings intensity down, or the colours where a mode has no intensity slot', () => {
		const rig = openRig(mixed);
		const before = rig.look('wash-1').light.whole.levels;
		send(rig, { type: 'desk.master', level: 127 });
		const after = rig.look('wash-1').light.whole.levels;
		for (const [i, level] of before.entries()) expect(after[i]).toBeCloseTo((level * 127) / 255, 2);
		expect(ids(rig, 'wash-1')).toContain('source.master');
	});

	test('the battery runs down by what the light draws, and the lamp goes out with it', () => {
		const rig = openRig(led);
		rig.wait(1);
		const { battery, watts } = rig.gear.units.get('f-1')?.state.context ?? {};
		const hours = (battery?.wattHours ?? 0) / (watts ?? 1);
		rig.wait(hours * 3_600_000 - 60_000);
		expect(words(rig, 'f-1')).not.toBe('dark');
		rig.wait(120_000);
		expect(words(rig, 'f-1')).toBe('dark');
		expect(ids(rig, 'f-1')).toEqual(['power.flat']);
		send(rig, { type: 'mains.plug', fixture: 'f-1', into: 'wall' });
		expect(rig.look('f-1').lamps.battery?.charging).toBe(true);
	});

	test('hands can do what hands can do: the rest is refused with a sentence', () => {
		const rig = openRig(mixed);
		const refused: [RigEvent, string, RegExp][] = [
			[{ type: 'key.tap', fixture: 'old-1', key: 'up' }, 'event.key', /switches and no keys/],
			[{ type: 'switch.flip', fixture: 'wash-1', switch: 1, up: true }, 'event.switch', /keys and no DIP switches/],
			[{ type: 'key.tap', fixture: 'nobody', key: 'up' }, 'rig.fixture', /no fixture "nobody"/],
			[{ type: 'mains.plug', fixture: 'bar-1', into: 'old-1' }, 'event.mains', /from itself/],
			[{ type: 'mains.plug', fixture: 'bar-1', into: 'wash-1' }, 'event.mains', /no mains link/],
			[{ type: 'cable.plug', cable: 'c1', end: 'from', port: 'desk:b' }, 'event.cable', /Unplug it first/],
			[{ type: 'terminator.fit', port: 'wash-1:in' }, 'event.socket', /has cable 'c1' in it/],
			[{ type: 'desk.output', output: 'q', on: false }, 'event.desk', /no output 'q'/],
			[
				{ type: 'slide.move', fixture: 'old-1', slide: 'mode', to: 3 },
				'event.slide',
				/no slide 'mode' with a position 3/,
			],
		];
		for (const [event, code, sentence] of refused) {
			const error = thrownBy(() => rig.send(event));
			expect(error.code).toBe(code);
			expect(errorText(error)).toMatch(sentence);
		}
		expect(rig.log).toEqual([]);
		expect(thrownBy(() => rig.wait(-1)).code).toBe('rig.wait');
		expect(thrownBy(() => rig.look('nobody')).code).toBe('rig.fixture');
	});

	test('a rig with nothing in it opens', () => {
		const rig = openRig(readSheet({ version: 1, name: 'empty', fixtures: [] }));
		rig.wait(1000);
		expect(rig.log).toEqual([{ type: 'clock.wait', ms: 1000 }]);
	});
});
