import { describe, expect, it } from 'vitest';
import { percentOf } from '../../../shared/dmx/index.ts';
import {
	type BundledKind,
	type Drill,
	type Finding,
	isInHand,
	makeDrill,
	markDrill,
	pressesOf,
	shortestWay,
} from '../../../sim/drill/index.ts';
import { fewestPresses } from '../../../sim/drill/way/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { type Rig, replay, why } from '../../../sim/rig/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../../shared/thrown.ts';

const SEEDS = runs(30, 1000);

/** What stands wrong, without the conditions. */
const told = (wrong: readonly Finding[]) =>
	wrong.map(({ place, what, found, wanted }) => ({ place, what, found, wanted }));

/** Drills of a kind, each finished by its way. */
function finished(kind: BundledKind, check: (drill: Drill, rig: Rig, at: string) => void): void {
	for (let seed = 0; seed < SEEDS; seed++) {
		const drill = makeDrill(kind, seed);
		check(drill, replay(drill.sheet, shortestWay(drill)), `seed ${seed}`);
	}
}

const fact = <T>(drill: Drill, name: string): T => drill.facts[name] as T;

describe('what is asked is what a person then sees', () => {
	it('desk-percent: these emitters and no others, at a level shown as that percent', () => {
		finished('desk-percent', (drill, rig, at) => {
			const fixture = fact<string>(drill, 'fixture');
			const unit = rig.gear.units.get(fixture);
			const { levels } = rig.look(fixture).light.whole;
			const lit = unit?.profile.emitters.filter((_, i) => (levels[i] ?? 0) > 0).map(({ id }) => id) ?? [];
			expect(lit.toSorted(), at).toEqual([...fact<string[]>(drill, 'emitters')].sort());
			const entered = rig.gear.desk?.levels.get(1) ?? new Uint8Array(512);
			const own = entered.slice(fact<number>(drill, 'address') - 1, fact<number>(drill, 'address') + 11);
			expect(
				[...own].map((level) => percentOf(level)),
				at,
			).toContain(fact<number>(drill, 'percent'));
		});
	});

	it('desk-band: the reason trail names the programme, at a speed near enough', () => {
		finished('desk-band', (drill, rig, at) => {
			const reason = why(rig, fact(drill, 'fixture')).find(({ id }) => id === 'slots.programme');
			expect(reason?.facts['programme'], at).toBe(fact(drill, 'programme'));
			const off = Math.abs(Number(reason?.facts['speed']) - fact<number>(drill, 'speed'));
			expect(off, at).toBeLessThanOrEqual(fact<number>(drill, 'off'));
		});
	});

	it('strobe-left-on: it flashed, and now gives a steady light of the same colour', () => {
		for (let seed = 0; seed < SEEDS; seed++) {
			const drill = makeDrill('strobe-left-on', seed);
			const fixture = fact<string>(drill, 'fixture');
			const before = replay(drill.sheet, []).look(fixture).light;
			const after = replay(drill.sheet, shortestWay(drill)).look(fixture).light;
			expect(before.flashes, `seed ${seed}`).toBeGreaterThan(0);
			expect(after, `seed ${seed}`).toEqual({ ...before, flashes: 0 });
		}
	});

	it('leader-three, followers-mode: the followers show what the leader shows', () => {
		for (const kind of ['leader-three', 'followers-mode'] as const) {
			finished(kind, (drill, rig, at) => {
				const led = rig.look(fact(drill, 'leader')).light.whole;
				for (const id of fact<string[]>(drill, 'followers')) {
					const { levels } = rig.look(id).light.whole;
					for (const [i, level] of levels.entries())
						expect(Math.abs(level - (led.levels[i] ?? 0)), `${kind}, ${at}, ${id}`).toBeLessThan(0.01);
				}
			});
		}
	});

	it('row-as-one: every light shows the same, and the data indicator is steady', () => {
		finished('row-as-one', (drill, rig, at) => {
			const sights = fact<string[]>(drill, 'fixtures').map((id) => rig.look(id));
			expect(new Set(sights.map(({ light }) => light.whole.colour)).size, at).toBe(1);
			expect(new Set(sights.map(({ lamps }) => lamps.data)), at).toEqual(new Set(['steady']));
		});
	});

	it('row-back-to-back: each starts where the one before ends', () => {
		finished('row-back-to-back', (drill, rig, at) => {
			const footprints = fact<number[]>(drill, 'footprints');
			let next = fact<number>(drill, 'first');
			for (const [i, id] of fact<string[]>(drill, 'fixtures').entries()) {
				expect(rig.gear.units.get(id)?.state.context.settings.address, at).toBe(next);
				next += footprints[i] ?? 0;
			}
		});
	});

	it('past-512: the footprint fits, and lies on no neighbour', () => {
		finished('past-512', (drill, rig, at) => {
			const fixture = fact<string>(drill, 'fixture');
			const reasons = (id: string) => rig.gear.units.get(id)?.state.context.settings.address ?? 0;
			expect(fact<number>(drill, 'last'), at).toBeGreaterThan(512);
			expect(reasons(fixture) + fact<number>(drill, 'footprint') - 1, at).toBeLessThanOrEqual(512);
		});
	});

	it('defaults: every setting is the profile’s own', () => {
		finished('defaults', (drill, rig, at) => {
			const unit = rig.gear.units.get(fact(drill, 'fixture'));
			expect(unit?.state.context.settings, at).toEqual(unit?.profile.defaults);
		});
	});
});

describe('a wrong answer', () => {
	const drill = makeDrill('address-keys', 1);
	const fixture = fact<string>(drill, 'fixture');
	const asked = fact<number>(drill, 'address');

	it('is named by fixture, setting, what stands and what should', () => {
		expect(told(markDrill(drill, []).wrong)).toEqual([
			{ place: fixture, what: 'address', found: fact(drill, 'from'), wanted: asked },
		]);
		const way = shortestWay(drill);
		const set = way.findLastIndex((event) => event.type === 'key.tap' && event.key === 'set');
		// one step too far before the value is kept
		const off = way.toSpliced(set, 0, { type: 'key.tap', fixture, key: 'up' });
		const [wrong] = markDrill(drill, off).wrong;
		expect([wrong?.place, wrong?.what, wrong?.wanted]).toEqual([fixture, 'address', asked]);
	});

	it('is what was right and is spoilt, too', () => {
		const way = shortestWay(drill);
		const off = markDrill(drill, [...way, { type: 'power.switch', fixture, on: false }]);
		expect(told(off.wrong)).toEqual([{ place: fixture, what: 'power', found: 'off', wanted: 'on' }]);
		expect(off.presses).toBe(off.fewest + 1);
	});

	it('at the desk is named by slot, with the ranges that would do', () => {
		const band = makeDrill('desk-band', 2);
		const wrong = told(markDrill(band, []).wrong);
		expect(wrong.every(({ place, what }) => place === 'desk' && /^slot \d+$/.test(what))).toBe(true);
		const way = shortestWay(band);
		const stray: RigEvent = { type: 'desk.level', universe: 1, slot: 512, level: 9 };
		expect(told(markDrill(band, [...way, stray]).wrong)).toEqual([
			{ place: 'desk', what: 'slot 512', found: 9, wanted: 0 },
		]);
		const master: RigEvent = { type: 'desk.master', level: 10 };
		expect(told(markDrill(band, [...way, master]).wrong)).toContainEqual({
			place: 'desk',
			what: 'master',
			found: 10,
			wanted: 255,
		});
		const dark: RigEvent = { type: 'desk.output', output: 'a', on: false };
		expect(told(markDrill(band, [...way, dark]).wrong)).toContainEqual({
			place: 'desk:a',
			what: 'output',
			found: 'off',
			wanted: 'on',
		});
	});

	it('on two talkers is named as what is heard', () => {
		const left = makeDrill('leader-left-on', 1);
		const heard = told(markDrill(left, []).wrong).filter(({ what }) => what === 'data');
		expect(heard.length).toBeGreaterThan(0);
		for (const { found, wanted } of heard) expect([found, wanted]).toEqual(['collision', 'universe 1']);
	});

	it('in the line is named by socket', () => {
		const seed = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].find(
			(n) => makeDrill('cable-missing', n).facts['what'] === 'microphone',
		);
		const mic = makeDrill('cable-missing', seed ?? 0);
		const [wrong] = told(markDrill(mic, []).wrong);
		expect(wrong).toMatchObject({ what: 'cable', found: 'unfit' });
		expect(wrong?.wanted).toMatch(/:in$/);
	});
});

describe('hands', () => {
	const drill = makeDrill('held-colour', 3);
	const fixture = fact<string>(drill, 'fixture');
	const cheat: RigEvent = { type: 'settings.become', fixture, change: { work: 'held' } };

	it('leave nothing to an event that is nobody’s hand, nor to another drill’s', () => {
		expect(isInHand(drill, cheat)).toBe(false);
		expect(isInHand(drill, { type: 'remote.press', button: 'light' })).toBe(false);
		expect(isInHand(drill, { type: 'key.tap', fixture, key: 'set' })).toBe(true);
		expect(isInHand(drill, { type: 'clock.wait', ms: 5 })).toBe(true);
		for (const door of [markDrill, shortestWay]) {
			const error = thrownBy(() => door(drill, [{ type: 'clock.wait', ms: 5 }, cheat]));
			expect(error).toMatchObject({ code: 'drill.hands', path: '[1].type' });
			expect(errorText(error)).toBe(
				"This drill is done by panel, power, and 'settings.become' is none of these. Start the drill again.",
			);
		}
	});

	it('count presses: taps, keys down and switches one each, letting go and waiting none', () => {
		const log: RigEvent[] = [
			{ type: 'key.tap', fixture, key: 'set' },
			{ type: 'key.down', fixture, key: 'down' },
			{ type: 'clock.wait', ms: 900 },
			{ type: 'key.up', fixture, key: 'down' },
			{ type: 'power.switch', fixture, on: true },
		];
		expect(pressesOf(log)).toBe(3);
		const { presses, looked, milliseconds } = markDrill(drill, log);
		expect([presses + looked, milliseconds]).toEqual([3, 900]);
	});
});

describe('panels about to sleep', () => {
	/** Bars that go dark after 20 s, each with a long way to go. */
	function sleepy(count: number): Drill {
		const drill = makeDrill('row-back-to-back', 0);
		const one = makeDrill(
			'address-keys',
			[...Array(40).keys()].find((n) => makeDrill('address-keys', n).facts['profile'] === 'picket-8') ?? 0,
		);
		const [bar] = one.sheet.fixtures;
		if (!bar) throw new Error('no bar');
		const fixtures = Array.from({ length: count }, (_, i) => ({
			...bar,
			id: `bar-${i + 1}`,
			settings: { ...bar.settings, sleep: 20, address: 1 },
		}));
		return {
			...drill,
			sheet: { ...drill.sheet, fixtures },
			goal: fixtures.flatMap(({ id }, i): Drill['goal'] => [
				{ is: 'setting', fixture: id, key: 'address', value: 296 + i },
				{ is: 'on', fixture: id },
			]),
		};
	}

	it.each([
		['one after another, while they stay awake', 2, 0],
		['all at once, where the last would not wait its turn', 9, 0],
		['all at once, where all are about to go', 4, 19_950],
	])('are worked %s', (_, count, waited) => {
		const drill = sleepy(count);
		const log: RigEvent[] = waited > 0 ? [{ type: 'clock.wait', ms: waited }] : [];
		const way = shortestWay(drill, log);
		expect(pressesOf(way)).toBe(fewestPresses(drill, replay(drill.sheet, log)));
		expect(markDrill(drill, [...log, ...way]).wrong).toEqual([]);
		// a panel left to itself would have slept, and cost a press more to wake
		expect(fewestPresses(drill, replay(drill.sheet, [{ type: 'clock.wait', ms: 20_000 }]))).toBe(
			fewestPresses(drill, replay(drill.sheet, [])) + count,
		);
	});
});
