import { describe, expect, it } from 'vitest';
import { readSheet } from '../../../../shared/sheet/index.ts';
import { openRig, type Rig } from '../../../../sim/rig/index.ts';
import { repairEvents, targetKey, targetOf } from '../../../../src/features/bench/breaker.ts';
import { cableLines, carriedIn } from '../../../../src/features/bench/cableLines.ts';
import { changesBetween } from '../../../../src/features/bench/changes.ts';
import {
	briefLight,
	handCautions,
	indicatorsOf,
	keyFor,
	lightCautions,
	linkFeeds,
	mainsChoices,
} from '../../../../src/features/bench/fixtureBack.ts';
import { emptySheet, PRESET_IDS, presetSheet } from '../../../../src/features/bench/index.ts';
import { logLines, timeText } from '../../../../src/features/bench/log.ts';
import { namedButtons, sightLines } from '../../../../src/features/bench/remote.ts';
import { sheetOf } from './sheets.ts';

describe('ready-made benches', () => {
	it.each(PRESET_IDS)('%s is whole as it stands', (id) => {
		const sheet = presetSheet(id);
		expect(readSheet(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
		expect(sheet.fixtures.length).toBeGreaterThan(0);
	});

	it('have permanent ids, and show light where they say so', () => {
		expect(PRESET_IDS).toEqual(['one', 'four', 'leader', 'mixed', 'universes']);
		expect(readSheet(emptySheet())).toEqual(emptySheet());
		for (const id of ['four', 'leader', 'mixed', 'universes'] as const) {
			const rig = openRig(presetSheet(id));
			rig.wait(100);
			for (const fixture of rig.gear.units.keys())
				expect(rig.look(fixture).light.whole.brightness, fixture).toBeGreaterThan(0.1);
		}
	});
});

describe('a fixture’s back', () => {
	it('has the lamps it has, each in words', () => {
		const rig = openRig(presetSheet('mixed'));
		const shown = (id: string) => indicatorsOf(rig.look(id)).map((lamp) => [lamp.id, lamp.state, lamp.look]);
		expect(shown('wash-1')).toEqual([
			['power', 'lit', 'lit'],
			['data', 'steady', 'lit'],
			['battery', '4 of 4', 'lit'],
			['sensor', 'listening', 'lit'],
		]);
		expect(shown('wash-2')).toEqual([
			['power', 'lit', 'lit'],
			['data', 'steady', 'lit'],
		]);
		rig.send({ type: 'mains.plug', fixture: 'wash-1', into: 'wall' });
		rig.send({ type: 'cable.unplug', cable: 'cable-1', end: 'to' });
		rig.wait(5000);
		expect(shown('wash-1')[1]).toEqual(['data', 'blinking', 'blinking']);
	});

	it('offers mains from where it can be had, and never from itself', () => {
		const rig = openRig(presetSheet('mixed'));
		const values = (id: string) => mainsChoices(rig, id).map(({ value }) => value);
		expect(values('wash-1')).toEqual(['none', 'wall', 'bar-1', 'wash-2']);
		rig.send({ type: 'mains.plug', fixture: 'bar-1', into: 'wash-2' });
		expect(values('wash-2')).toEqual(['none', 'wall']);
		expect(values('bar-1')).toEqual(['none', 'wall', 'wash-2']);
		for (const id of ['wash-1', 'bar-1', 'wash-2'])
			for (const into of values(id))
				expect(() => rig.fork().send({ type: 'mains.plug', fixture: id, into })).not.toThrow();
		expect(linkFeeds(rig, 'wash-2')).toEqual(['Bar 1']);
		expect(linkFeeds(rig, 'wash-1')).toBeNull();
	});

	it('takes arrows, Enter, Escape and Backspace for its keys', () => {
		expect(
			['ArrowUp', 'ArrowDown', 'Enter', 'Escape', 'Backspace', 'Tab', 'a'].map((key) =>
				keyFor(key, ['back', 'down', 'up', 'set']),
			),
		).toEqual(['up', 'down', 'set', 'back', 'back', null, null]);
	});

	it('carries the cautions of where the hands are', () => {
		const rig = openRig(presetSheet('mixed'));
		expect(handCautions(rig, 'wash-1')).toEqual([]);
		expect(handCautions(rig, 'bar-1')).toEqual(['hanging', 'mains']);
		expect(handCautions(rig, 'wash-2')).toEqual(['mains']);
		rig.send({ type: 'mains.plug', fixture: 'wash-1', into: 'wall' });
		expect(handCautions(rig, 'wash-1')).toEqual(['batteries', 'mains']);
		const lights = (settings: Parameters<typeof sheetOf>[0][number]) =>
			lightCautions([openRig(sheetOf([settings])).look('wash-1')]);
		expect(lights({ work: 'held', held: 'ultraviolet' })).toEqual(['ultraviolet']);
		expect(lights({ work: 'held', held: 'red', strobe: 2 })).toEqual(['flashing']);
		expect(lights({ work: 'held', held: 'red' })).toEqual([]);
	});
});

describe('what changed, in words', () => {
	it('is told lamp by lamp, and of many only how many', () => {
		const rig = openRig(presetSheet('four'));
		const look = () => new Map([...rig.gear.units.keys()].map((id) => [id, rig.look(id)]));
		const before = look();
		expect(changesBetween(before, look(), (id) => id)).toBe('');
		rig.send({ type: 'desk.master', level: 0 });
		const told = changesBetween(before, look(), (id) => `Lamp ${id}`);
		expect(told).toContain('Lamp wash-1 went dark.');
		expect(told).toMatch(/One more fixture changed\.$/);
		expect(told).not.toContain('wash-4');
	});

	it('is short enough for a card', () => {
		const brief = (rig: Rig, fixture: string) => briefLight(rig, fixture, rig.look(fixture).light);
		expect(brief(openRig(presetSheet('universes')), 'bar-1')).toMatchInlineSnapshot(
			`"magenta, half bright, its cells each their own, level 255 (100 %)"`,
		);
		expect(brief(openRig(presetSheet('four')), 'wash-2')).toMatchInlineSnapshot(`"pink, at full, level 255 (100 %)"`);
	});
});

/** A desk, a splitter, and a light on each of its outputs. */
function splitSheet() {
	const { fixtures, desk } = presetSheet('four');
	const cable = (id: string, from: string, to: string) => ({ id, kind: 'data', length: 5, from, to });
	return readSheet({
		version: 1,
		name: 'Split',
		fixtures: fixtures.slice(0, 2),
		desk: desk && { ...desk, patch: [] },
		splitters: [{ id: 'split', name: 'Split', outputs: 2 }],
		cables: [
			cable('c-1', 'desk:a', 'split:in'),
			cable('c-2', 'split:1', 'wash-1:in'),
			cable('c-3', 'split:2', 'wash-2:in'),
		],
	});
}

describe('cables as drawn', () => {
	const spots = new Map([
		['desk:a', { x: 10, y: 50 }],
		['wash-1:in', { x: 110, y: 50 }],
	]);
	const [cable] = presetSheet('four').cables;
	if (!cable) throw new Error('no cable');

	it('hang from socket to socket, or loose from one', () => {
		const [line] = cableLines([cable], spots);
		expect(line?.path).toMatch(/^M10 50C.* 110 50$/);
		expect(line?.loose).toEqual([]);
		expect(cableLines([{ ...cable, to: null }], spots)[0]?.loose).toHaveLength(1);
		expect(cableLines([{ ...cable, from: null, to: null }], spots)).toEqual([]);
	});

	it('say which way data goes, from the end that is no input', () => {
		expect(cableLines([cable], spots)[0]).toMatchObject({ middle: { x: 60 }, turn: 0 });
		expect(cableLines([{ ...cable, from: cable.to, to: cable.from }], spots)[0]?.turn).toBe(360);
		const below = new Map([...spots, ['wash-1:in', { x: 10, y: 90 }] as const]);
		expect(cableLines([cable], below)[0]?.turn).toBe(90);
	});

	const carried = (rig: Rig) => carriedIn(rig.gear, (id) => rig.look(id).lamps.data);
	/** As long as any fixture holds out without data. */
	const LONG = 10_000;

	it('carry data as far as it goes, and one of them is where it stops', () => {
		const rig = openRig(presetSheet('four'));
		rig.wait(LONG);
		expect(carried(rig)).toEqual(['steady', 'steady', 'steady', 'steady']);
		rig.send({
			type: 'cable.become',
			cable: 'cable-2',
			change: { plus: 'open', minus: 'open' },
		});
		rig.wait(LONG);
		expect(carried(rig)).toEqual(['steady', 'stops', 'none', 'none']);
	});

	it('stop at none where the plug is out: its end hangs in the air', () => {
		const rig = openRig(presetSheet('four'));
		rig.send({ type: 'cable.unplug', cable: 'cable-2', end: 'to' });
		rig.wait(LONG);
		expect(carried(rig)).toEqual(['steady', null, 'none', 'none']);
	});

	it('don’t stop at an output that sends nothing, nor at a splitter that is off: none comes out of those', () => {
		const rig = openRig(presetSheet('four'));
		rig.wait(LONG);
		rig.send({ type: 'desk.output', output: 'a', on: false });
		rig.wait(LONG);
		expect(carried(rig)).toEqual(['none', 'none', 'none', 'none']);
		const split = openRig(splitSheet());
		split.wait(LONG);
		expect(carried(split)).toEqual([null, 'steady', 'steady']);
		split.send({ type: 'box.switch', box: 'split', on: false });
		split.wait(LONG);
		expect(carried(split)).toEqual([null, 'none', 'none']);
		split.send({ type: 'box.switch', box: 'split', on: true });
		split.send({ type: 'cable.become', cable: 'c-2', change: { plus: 'open', minus: 'open' } });
		split.wait(LONG);
		expect(carried(split)).toEqual([null, 'stops', 'steady']);
	});

	it('stop between a leader that sends and the first that waits', () => {
		const rig = openRig(presetSheet('leader'));
		rig.wait(LONG);
		expect(carried(rig)[0]).toBe('steady');
		const [first] = rig.gear.cables;
		rig.send({ type: 'cable.become', cable: first?.id ?? '', change: { plus: 'open', minus: 'open' } });
		rig.wait(LONG);
		expect(carried(rig)[0]).toBe('stops');
	});

	it('say nothing of a fixture that is off, nor of what has no data to want', () => {
		const rig = openRig(presetSheet('four'));
		rig.send({ type: 'power.switch', fixture: 'wash-2', on: false });
		rig.wait(LONG);
		const [, second] = carried(rig);
		expect(second).toBeNull();
	});
});

describe('things that break', () => {
	it('are named by a key that leads back to them while they are there', () => {
		const rig = openRig(presetSheet('four'));
		for (const target of [
			{ kind: 'cable', id: 'cable-1' },
			{ kind: 'fixture', id: 'wash-1' },
			{ kind: 'output', id: 'a' },
		] as const)
			expect(targetOf(rig, targetKey(target))).toEqual(target);
		for (const key of ['', 'cable:none', 'fixture:none', 'output:z', 'other:x']) expect(targetOf(rig, key)).toBeNull();
	});

	it('are all put right by the repairs, and then there is nothing to mend', () => {
		const rig = openRig(presetSheet('four'));
		expect(repairEvents(rig)).toEqual([]);
		const sound = JSON.stringify([...rig.gear.units.keys()].map((id) => rig.look(id)));
		rig.send({ type: 'hall.power', on: false });
		rig.send({ type: 'cable.become', cable: 'cable-2', change: { minus: 'open', swapped: true } });
		rig.send({ type: 'condition.become', fixture: 'wash-3', change: { covered: true, batteryHealth: 0.6 } });
		rig.send({ type: 'desk.start-code', output: 'a', code: 23 });
		for (const event of repairEvents(rig)) rig.send(event);
		expect(repairEvents(rig)).toEqual([]);
		rig.send({ type: 'charge.become', fixture: 'wash-3', charge: 1 });
		expect(JSON.stringify([...rig.gear.units.keys()].map((id) => rig.look(id)))).toBe(sound);
	});
});

describe('the remote', () => {
	it('sees the fixtures that have a sensor, and has a button for each colour they know', () => {
		const rig = openRig(presetSheet('mixed'));
		expect(sightLines(rig.gear).map(({ name, number }) => [name, number])).toEqual([['Wash 1', 1]]);
		const held = namedButtons(rig.gear, 'held');
		expect(held).toContainEqual({ button: 'held:rose', name: 'rose' });
		expect(new Set(held.map(({ button }) => button)).size).toBe(held.length);
		for (const { button } of [...held, ...namedButtons(rig.gear, 'programme')])
			rig.send({ type: 'remote.press', button });
	});
});

describe('the log', () => {
	it('tells what was done, latest first, and when', () => {
		const lines = logLines([
			{ type: 'clock.wait', ms: 61_000 },
			{ type: 'key.down', fixture: 'wash-1', key: 'up' },
			{ type: 'clock.wait', ms: 500 },
			{ type: 'key.up', fixture: 'wash-1', key: 'up' },
			{ type: 'desk.master', level: 3 },
		]);
		expect(lines.map(({ at, event }) => [timeText(at), event.type])).toEqual([
			['0:01:01', 'desk.master'],
			['0:01:01', 'key.down'],
		]);
		expect(timeText(3_849_999)).toBe('1:04:09');
	});

	it('tells of each press how long it lasted, whatever else was done meanwhile, and which key is still down', () => {
		const on = (fixture: string, key: 'up' | 'set') => ({ fixture, key }) as const;
		const lines = logLines([
			{ type: 'key.down', ...on('wash-1', 'up') },
			{ type: 'clock.wait', ms: 120 },
			{ type: 'key.up', ...on('wash-1', 'up') },
			{ type: 'key.down', ...on('wash-1', 'up') },
			{ type: 'clock.wait', ms: 1000 },
			{ type: 'desk.master', level: 3 },
			{ type: 'key.down', ...on('wash-2', 'up') },
			{ type: 'clock.wait', ms: 1500 },
			{ type: 'key.up', ...on('wash-1', 'up') },
			{ type: 'key.tap', ...on('wash-1', 'set') },
		]);
		expect(lines.map(({ pressed }) => pressed).reverse()).toEqual([
			{ ms: 120, over: true },
			{ ms: 2500, over: true },
			null,
			{ ms: 1500, over: false },
			null,
		]);
	});
});
