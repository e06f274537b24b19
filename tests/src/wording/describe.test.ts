import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openRig, type Rig, type Sight } from '../../../sim/rig/index.ts';
import { describeChange, describeFixture, describeLight, describeRig } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { anyEvent } from '../../sim/rig/events.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';
import { readsWell } from './wording.ts';

const look = (rig: Rig, id: string): Sight => rig.look(id);

describe('the text twin', () => {
	it('says what is seen of each fixture, in the order of the sheet', () => {
		const lines = describeRig(openRig(mixed));
		expect(lines).toHaveLength(3);
		expect(lines[0]).toMatch(
			/^Wash 1, house left: amber, bright, level 200 \(78 %\)\. Power indicator lit, data indicator steady, battery at 4 of 4 bars, sensor indicator lit\.$/,
		);
		expect(lines[1]).toMatch(
			/^Bar 1: deep red, at full, level 255 \(100 %\)\. Power indicator lit, data indicator steady\.$/,
		);
	});

	it('says that it charges, and nothing of lamps it has not', () => {
		const rig = openRig(led);
		rig.wait(3_600_000);
		rig.send({ type: 'mains.plug', fixture: 'lead', into: 'wall' });
		rig.send({ type: 'power.switch', fixture: 'lead', on: false });
		expect(describeFixture(rig, 'lead')).toBe(
			'Leader: dark. Power indicator lit, data indicator out, battery at 4 of 4 bars, charging, sensor indicator out.',
		);
	});

	it('tells runs of unlike cells apart', () => {
		const rig = openRig(mixed);
		rig.send({ type: 'settings.become', fixture: 'bar-1', change: { mode: 'cells', curve: 'straight' } });
		for (const slot of [14, 16, 22, 25]) rig.send({ type: 'desk.level', universe: 1, slot, level: 0 });
		// shutter open, intensity up, then cells 2 and 3 green
		for (const slot of [12, 10 + 9, 10 + 13]) rig.send({ type: 'desk.level', universe: 1, slot, level: 255 });
		rig.send({ type: 'desk.level', universe: 1, slot: 11, level: 40 });
		expect(describeLight(look(rig, 'bar-1').light)).toMatch(
			/^cells 1 and 4 to 8 dark, cells 2 and 3 deep green, at full$/,
		);
	});

	it('says flashes with their warning', () => {
		const rig = openRig(mixed);
		rig.send({ type: 'desk.level', universe: 1, slot: 11, level: 211 });
		expect(describeFixture(rig, 'bar-1')).toMatch(
			/^Bar 1: deep red, at full, flashing 18 times a second, level 255 \(100 %\)\. Warn people before they see it flash\. Power indicator/,
		);
	});

	it('says ultraviolet with its warning, however dim it looks', () => {
		const rig = openRig(led);
		rig.send({ type: 'settings.become', fixture: 'lead', change: { held: 'ultraviolet' } });
		expect(describeFixture(rig, 'lead')).toMatch(
			/ultraviolet.*Its ultraviolet is barely seen and still strong: do not look in\./,
		);
	});

	it.each([mixed, led])('reads well whatever is done to $name', (sheet) => {
		fc.assert(
			fc.property(fc.array(anyEvent(sheet), { maxLength: 30 }), (events) => {
				const rig = openRig(sheet);
				play(rig, events);
				for (const line of describeRig(rig)) readsWell(line);
			}),
			{ numRuns: runs(60) },
		);
	});
});

function play(rig: Rig, events: readonly Parameters<Rig['send']>[0][]): void {
	for (const event of events) {
		try {
			if (event.type === 'clock.wait') rig.wait(event.ms);
			else rig.send(event);
		} catch {}
	}
}

describe('what changed', () => {
	const change = (rig: Rig, id: string, ...events: Parameters<Rig['send']>[0][]): string | null => {
		const before = look(rig, id);
		play(rig, events);
		return describeChange(before, look(rig, id), 'wash 1');
	};
	const level = (slot: number, value: number) => ({ type: 'desk.level', universe: 1, slot, level: value }) as const;

	it('is nothing where nothing was done, and nothing where nobody would see it', () => {
		const rig = openRig(mixed);
		expect(change(rig, 'wash-1')).toBeNull();
		expect(change(rig, 'wash-1', level(1, 254))).toBeNull();
		expect(change(rig, 'wash-1', level(300, 255))).toBeNull();
		expect(change(rig, 'wash-1', { type: 'key.tap', fixture: 'wash-1', key: 'set' })).toBeNull();
	});

	it('is said from dark to lit and back, and between colours', () => {
		const rig = openRig(mixed);
		expect(change(rig, 'wash-1', level(1, 0))).toBe('Wash 1 went dark.');
		expect(change(rig, 'wash-1', level(1, 255))).toMatch(/^Wash 1 came up: amber, bright\.$/);
		expect(change(rig, 'wash-1', level(1, 128))).toMatch(/^Wash 1 got dimmer: amber, low\.$/);
		expect(change(rig, 'wash-1', level(8, 255))).toMatch(/^Wash 1 got brighter: amber, half bright\.$/);
		expect(change(rig, 'wash-1', level(8, 0), level(6, 255))).toMatch(/^Wash 1 is now deep blue, half bright\.$/);
	});

	it('says that flashing begins, with its warning, and that it ends', () => {
		const rig = openRig(mixed);
		expect(change(rig, 'bar-1', level(11, 211))).toMatch(
			/^Wash 1 is now deep red, at full, flashing 18 times a second\. Warn people before they see it flash\.$/,
		);
		expect(change(rig, 'bar-1', level(11, 210))).toBeNull();
		expect(change(rig, 'bar-1', level(11, 70))).toMatch(/flashing 1\.\d times a second\.$/);
		expect(change(rig, 'bar-1', level(11, 40))).toMatch(/^Wash 1 is now deep red, at full, no longer flashing\.$/);
	});

	it('does not tell a programme step by step', () => {
		const rig = openRig(mixed);
		expect(change(rig, 'wash-1', level(2, 100), level(3, 255))).toMatch(/, changing by itself\.$/);
		for (let i = 0; i < 40; i++) expect(change(rig, 'wash-1', { type: 'clock.wait', ms: 173 })).toBeNull();
		expect(change(rig, 'wash-1', level(2, 0))).toMatch(/, no longer changing\.$/);
	});

	it('says that it begins to jump about, and that it is calm again', () => {
		const rig = openRig(led);
		const wait = { type: 'clock.wait', ms: 1000 } as const;
		expect(change(rig, 'f-3', { type: 'cable.become', cable: 'c2', change: { common: 'open' } }, wait)).toMatch(
			/, jumping about\.$/,
		);
		expect(change(rig, 'f-3', { type: 'cable.become', cable: 'c2', change: { common: 'sound' } })).toMatch(
			/, no longer jumping\.$/,
		);
	});

	// symptom: on a line with two senders a fixture read 'dark' at one moment and 'violet, jumping about' at the next
	it('says of damaged data throughout that the light jumps about, dark moments too', () => {
		const rig = openRig(led);
		rig.send({ type: 'cable.become', cable: 'c2', change: { common: 'open' } });
		rig.send({ type: 'settings.become', fixture: 'lead', change: { held: 'white', level: 0 } });
		for (let i = 0; i < 40; i++) {
			rig.wait(137);
			const { light } = rig.look('f-3');
			if (light.flicker) expect(describeLight(light)).toMatch(/, jumping about$/);
		}
		expect(rig.look('f-3').light.flicker).toBe(true);
	});

	it.each([mixed, led])(
		'is said exactly where colours, manner or brightness changed, whatever is done to $name',
		(sheet) => {
			fc.assert(
				fc.property(
					fc.array(anyEvent(sheet), { maxLength: 20 }),
					fc.array(anyEvent(sheet), { maxLength: 3 }),
					(start, more) => {
						const rig = openRig(sheet);
						play(rig, start);
						const before = sheet.fixtures.map(({ id }) => look(rig, id));
						play(rig, more);
						for (const was of before) {
							const is = look(rig, was.fixture);
							const said = describeChange(was, is, 'wash 1');
							if (said !== null) readsWell(said);
							const steady = !was.light.moving && !is.light.moving && !was.light.flicker && !is.light.flicker;
							const seen =
								was.light.whole.words !== is.light.whole.words ||
								Math.abs(was.light.whole.brightness - is.light.whole.brightness) >= 0.02;
							if (steady && seen) expect(said).not.toBeNull();
							expect(describeChange(is, is, 'wash 1')).toBeNull();
						}
					},
				),
				{ numRuns: runs(60) },
			);
		},
	);
});
