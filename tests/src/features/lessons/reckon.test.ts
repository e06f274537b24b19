import { describe, expect, it } from 'vitest';
import { luxAside, poolOnWall } from '../../../../shared/optics/index.ts';
import { CAUTIOUS_SHARE } from '../../../../shared/power/index.ts';
import { bundledProfile } from '../../../../shared/profile/index.ts';
import { quickSheet } from '../../../../shared/sheet/index.ts';
import { findingsOf } from '../../../../sim/drill/index.ts';
import { openRig } from '../../../../sim/rig/index.ts';
import { conditionOf, hoursAt, luxAt } from '../../../../src/features/lessons/open.ts';
import { kits, type SumLine } from '../../../../src/features/lessons/reckon/kit.ts';
import { RECKON_IDS, reckoners } from '../../../../src/features/lessons/reckon/sums.ts';
import { lessonFiles, taskFrom, taskSeeds } from '../../../content/lessons.ts';
import { saidBy } from '../../../shared/thrown.ts';

const all = kits();
const comes = (lines: readonly SumLine[]): string[] => lines.map((line) => line.comes);

describe.each(RECKON_IDS)('the reckoner of %s', (id) => {
	const { sliders, picks, reckon, formulas } = reckoners[id](all);

	it('comes to something at both ends of every slider, with every choice', () => {
		expect(formulas.length).toBeGreaterThan(0);
		const ends = sliders.reduce<Record<string, number>[]>(
			(sets, { id: name, least, most, start }) =>
				[least, most, start].flatMap((value) => sets.map((set) => ({ ...set, [name]: value }))),
			[{}],
		);
		for (const values of ends)
			for (const { value } of picks[0]?.options ?? []) {
				const lines = reckon(values, { [picks[0]?.id ?? '']: value });
				for (const { sum, comes: end } of lines) {
					expect(`${sum} ${end}`).not.toMatch(/NaN|undefined|Infinity/);
					expect(end).toMatch(/\d|without end/);
				}
			}
	});
});

describe('the reckoners agree with the rest of the house', () => {
	const sheet = quickSheet({ count: 1, linked: 'alone', profile: 'tallow-6' });
	const held = (look: string) =>
		openRig({
			...sheet,
			fixtures: sheet.fixtures.map((each) => ({ ...each, settings: { ...each.settings, held: look } })),
		});

	it('on hours, with the battery of the rig, at every look', () => {
		const { picks, reckon } = reckoners.hours(all);
		for (const { value } of picks[0]?.options ?? [])
			for (const brightness of [5, 50, 100]) {
				const [, lasts] = reckon({ brightness, share: 100 }, { look: value });
				expect(Number.parseFloat(lasts?.comes ?? '')).toBeCloseTo(hoursAt(held(value), 'wash-1', brightness), 0);
			}
	});

	it('on plain numbers, worked by hand', () => {
		expect(comes(reckoners.slots(all).reckon({ first: 1, count: 8 }, { mode: 'tallow-6 middle' }))).toEqual([
			'channel 72',
			'440 channels',
			'56 fixtures',
		]);
		expect(comes(reckoners.loads(all).reckon({ receivers: 33 }, { load: '1' }))[0]).toBe(
			'33 of 32 unit loads: too many',
		);
		expect(comes(reckoners.loads(all).reckon({ receivers: 33 }, { load: '0.125' }))[0]).toBe('4.125 of 32 unit loads');
		// 2 × 3 × tan 12.5° = 1.33 m
		expect(comes(reckoners.pool(all).reckon({ throw: 3, tilt: 0 }, { fixture: 'tallow-6' }))[0]).toBe('1.33 m');
	});

	it('on the battery task of the lesson, slid to its own charge, look, rule and brightness', () => {
		const { reckon } = reckoners.hours(all);
		const [, atMost] = reckon({ charge: 80, share: 100 * CAUTIOUS_SHARE, brightness: 45 }, { look: 'rose' });
		const [, over] = reckon({ charge: 80, share: 100 * CAUTIOUS_SHARE, brightness: 50 }, { look: 'rose' });
		expect(Number.parseFloat(atMost?.comes ?? '')).toBeGreaterThanOrEqual(10);
		expect(Number.parseFloat(over?.comes ?? '')).toBeLessThan(10);
	});

	it('on a time to charge: the least, since the sum has no losses and no slow end', () => {
		const { picks, reckon } = reckoners.hours(all);
		for (const { value } of picks[0]?.options ?? [])
			expect(comes(reckon({}, { look: value }))[2]).toMatch(/^at least \d/);
	});
});

describe('how many fit on one circuit', () => {
	const { reckon } = reckoners.circuit(all);
	const watts = all.find(({ id }) => id === 'picket-8')?.mainsWatts ?? 0;

	it('is never one more than the amps allow, and one more would be over', () => {
		for (const [rating, spare, volts, factor] of [
			[16, 20, 230, 90],
			[20, 20, 120, 95],
			[13, 0, 230, 50],
			[5, 50, 100, 100],
		] as const) {
			const [, , most] = comes(reckon({ rating, spare, volts, factor }, { fixture: 'picket-8' }));
			const n = Number.parseInt(most ?? '', 10);
			const drawn = (count: number) => (count * watts) / ((volts * factor) / 100);
			expect(drawn(n)).toBeLessThanOrEqual(rating * (1 - spare / 100));
			expect(drawn(n + 1)).toBeGreaterThan(rating * (1 - spare / 100));
		}
	});
});

describe('what it all weighs', () => {
	it('is every light with its own hardware, and what runs along it, worked by hand', () => {
		// 6 × (8 + 1.2) + 10 = 65.2 kg; at 2.2046 lb to a kilogram, 144 lb
		expect(comes(reckoners.weights(all).reckon({ count: 6, each: 8, hardware: 1.2, leads: 10 }, {}))).toEqual([
			'65.2 kg',
			'144 lb',
		]);
	});

	it('says nothing of what a point can take', () => {
		for (const line of reckoners.weights(all).reckon({ count: 24, each: 40, hardware: 5, leads: 60 }, {}))
			expect(line.over).toBeUndefined();
	});
});

// symptom: at a turn of 45° the slider told twice the light that falls there, at 70° more than eight times; cause: the throw is how
// far the lens stands from the wall, and the light goes a longer way than that once it is turned
describe('the pool of a turned light', () => {
	const { reckon, sliders, picks } = reckoners.pool(all);
	const luxOf = (lines: readonly SumLine[]) => Number.parseFloat(lines.at(-1)?.comes ?? '');

	it('has the light of the longer way: I cos θ over the square of the slanted ray, by hand', () => {
		for (const { value } of picks[0]?.options ?? []) {
			const kit = all.find(({ id }) => id === value);
			if (!kit) throw new Error(value);
			for (const throwOf of [1, 3, 5])
				for (const tilt of [0, 20, 45, 60, 70]) {
					const turn = (tilt * Math.PI) / 180;
					const ray = throwOf / Math.cos(turn);
					const lux = (kit.peak * Math.cos(turn)) / ray ** 2;
					expect(
						Math.abs(luxOf(reckon({ throw: throwOf, tilt }, { fixture: value })) - lux),
						value,
					).toBeLessThanOrEqual(0.51);
				}
		}
	});

	it('is no brighter than on the wall that the row is worked out on, at the same place', () => {
		for (const kit of all)
			for (const tilt of [0, 10, 30]) {
				const aside = 3 * Math.tan((tilt * Math.PI) / 180);
				// a beam as wide as can be is as strong to the side as ahead: then the two are one sum
				const even = { ...kit, beam: 179, field: 179 };
				const lux = luxOf(reckoners.pool([even]).reckon({ throw: 3, tilt }, { fixture: kit.id }));
				expect(Math.abs(lux - luxAside(even, 3, aside))).toBeLessThanOrEqual(0.51);
			}
	});

	it('is as long and as wide as the cone cut by the wall, and both are the diameter square on', () => {
		for (const kit of all) {
			const at = (tilt: number) => comes(reckon({ throw: 2, tilt }, { fixture: kit.id }));
			expect(at(0)[0]).toBe(at(0)[1]);
			const { long } = poolOnWall(2, kit.beam, 40);
			// across, the ray to its middle is 2 m ÷ cos 40° long, and the cone that wide there
			const wide = (2 * 2 * Math.tan((kit.beam * Math.PI) / 360)) / Math.cos((40 * Math.PI) / 180);
			expect(at(40).slice(0, 2)).toEqual([wide, long].map((m) => `${Number(m.toFixed(2))} m`));
		}
		expect(sliders.map(({ id }) => id)).toEqual(['throw', 'tilt']);
	});
});

// symptom: 'even' was the least over the mean, so that a row with a third of its light missing in the joins still passed for even; and
// a bar's throw slid to half a metre, where a thing a metre long is no point and the sum is wrong
describe('a row of pools', () => {
	const { reckon, picks } = reckoners.spacing(all);
	const options = picks[0]?.options.map(({ value }) => value) ?? [];
	const evenOf = (values: Record<string, number>, fixture: string) => reckon(values, { fixture })[2];

	it('is told by its least light against its most: summed here point by point over forty neighbours', () => {
		for (const fixture of options) {
			const kit = all.find(({ id }) => id === fixture);
			if (!kit) throw new Error(fixture);
			for (const spacing of [1, 2, 2.5]) {
				const lux = Array.from({ length: 201 }, (_, i) =>
					Array.from({ length: 41 }, (__, n) => luxAside(kit, 6, (spacing * i) / 200 - (n - 20) * spacing)).reduce(
						(sum, each) => sum + each,
					),
				);
				const even = Math.min(...lux) / Math.max(...lux);
				const line = evenOf({ throw: 6, spacing }, fixture);
				expect(Number.parseFloat(line?.comes ?? ''), fixture).toBeCloseTo(even, 1);
				expect(line?.sum).toBe(`${Math.round(Math.min(...lux))} lx ÷ ${Math.round(Math.max(...lux))} lx`);
				expect(line?.over, fixture).toBe(even < 0.7);
			}
		}
	});

	it('is even where half-bright edges meet, and patchy a third further apart', () => {
		for (const fixture of options) {
			const meet = Number.parseFloat(reckon({ throw: 6, spacing: 1 }, { fixture })[0]?.comes ?? '');
			expect(evenOf({ throw: 6, spacing: meet }, fixture)).toMatchObject({ over: false });
			expect(evenOf({ throw: 6, spacing: 1.35 * meet }, fixture)).toMatchObject({ over: true });
		}
	});

	it('and its single pool take no throw nearer than five times the length of what shines', () => {
		for (const { sliders } of [reckoners.spacing(all), reckoners.pool(all)]) {
			const throwSlider = sliders.find(({ id }) => id === 'throw');
			for (const fixture of options) {
				const { shape } = bundledProfile(fixture) ?? {};
				expect(throwSlider?.leastFor?.({ fixture }), fixture).toBe(shape === 'bar' ? 5 : 0.5);
			}
			expect(throwSlider?.most).toBeGreaterThan(5);
		}
	});
});

describe('the battery task', () => {
	const { lesson } = lessonFiles().find(({ lesson: { id } }) => id === 'charge-and-hours') ?? {};
	if (!lesson) throw new Error('no lesson on hours');
	const cases = taskSeeds(lesson).map((seed) => ({ ...taskFrom(lesson, seed), spec: lesson.tasks[seed] }));
	const isDoneAt =
		({ task }: (typeof cases)[number]) =>
		(level: number) => {
			const rig = openRig(task.sheet);
			rig.send({ type: 'settings.become', fixture: 'wash-1', change: { level } });
			return findingsOf(task, rig).length === 0;
		};

	// symptom: 58 % was marked right, which is flat at the tenth hour, and 45 %, which the lesson's own rule gives, wrong; cause: the
	// goal counted on all that was in the battery, the lesson on 80 % of it
	it('takes what the rule of the lesson gives, and not what is flat at the last minute', () => {
		const first = cases.find(({ says }) => says.includes('80 percent of its charge') && says.includes('last 10 hours'));
		if (!first) throw new Error('no such case');
		// 148 Wh × 0.8 left × 0.8 counted on ÷ 10 h = 9.472 W; less 1.5 W idle, over 17.71 W for rose at full: 45.0 %
		expect([39, 40, 45, 46, 58].map(isDoneAt(first))).toEqual([false, true, true, false, false]);
	});

	it('follows from battery, charge, look and rule: worked out a second way from the profile and the sheet', () => {
		const profile = bundledProfile('tallow-6');
		const held = profile?.held.find(({ id }) => id === 'rose');
		if (!profile?.power.battery || !held) throw new Error('no such battery or look');
		const full = profile.emitters.reduce((sum, { id, watts }) => sum + (watts * (held.levels[id] ?? 0)) / 255, 0);
		expect(cases.length).toBeGreaterThan(3);
		for (const each of cases) {
			const placed = each.task.sheet.fixtures.find(({ id }) => id === 'wash-1');
			const goal = each.spec && 'goal' in each.spec ? each.spec.goal.find(({ is }) => is === 'lasts') : undefined;
			if (!placed || goal?.is !== 'lasts') throw new Error('no such task');
			const watts = (profile.power.battery.wattHours * placed.charge * CAUTIOUS_SHARE) / goal.hours;
			const most = Math.floor((100 * (watts - profile.power.idleWatts)) / full + 1e-9);
			expect([most - 6, most - 5, most, most + 1].map(isDoneAt(each)), each.says).toEqual([false, true, true, false]);
			expect(each.says).toContain(`${goal.hours} hours`);
			expect(each.says).toContain(`${Math.round(100 * placed.charge)} percent`);
			expect(each.says).toMatch(/80 percent of what(’s| is) left/);
		}
	});
});

describe('a goal that is worked out', () => {
	const sheet = quickSheet({ count: 1, linked: 'alone', profile: 'tallow-6' });
	const rig = openRig(sheet);

	it('lasts as long as asked on the share to count on at its brightest, and no longer one point up', () => {
		const condition = conditionOf({ is: 'lasts', fixture: 'wash-1', hours: 14 }, rig);
		if (condition.is !== 'setting-within') throw new Error(condition.is);
		const [range] = condition.within;
		expect(CAUTIOUS_SHARE * hoursAt(rig, 'wash-1', range?.to ?? 0)).toBeGreaterThanOrEqual(14);
		expect(CAUTIOUS_SHARE * hoursAt(rig, 'wash-1', (range?.to ?? 0) + 1)).toBeLessThan(14);
	});

	it('gives the lux asked for within a tenth, all through its range', () => {
		const condition = conditionOf({ is: 'lux', fixture: 'wash-1', lux: 200 }, rig);
		if (condition.is !== 'setting-within') throw new Error(condition.is);
		for (const { from, to } of condition.within)
			for (const level of [from, to]) expect(Math.abs(luxAt(rig, 'wash-1', level) / 200 - 1)).toBeLessThanOrEqual(0.1);
	});

	it('says so where no brightness does it', () => {
		expect(saidBy(() => conditionOf({ is: 'lasts', fixture: 'wash-1', hours: 1000 }, rig))).toMatch(/No brightness/);
	});
});
