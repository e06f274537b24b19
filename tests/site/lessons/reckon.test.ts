import { describe, expect, it } from 'vitest';
import { quickSheet } from '../../../shared/sheet/index.ts';
import { openUnharmed } from '../../../sim/rig/index.ts';
import { conditionOf, hoursAt, luxAt } from '../../../src/lessons/goal.ts';
import { kits } from '../../../src/lessons/reckon/kit.ts';
import { RECKON_IDS, reckoners } from '../../../src/lessons/reckon/sums.ts';
import type { Line } from '../../../src/lessons/reckon/types.ts';

const all = kits();
const comes = (lines: readonly Line[]): string[] => lines.map((line) => line.comes);

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
		openUnharmed({
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
			'slot 72',
			'440 slots',
			'56 fixtures',
		]);
		expect(comes(reckoners.loads(all).reckon({ receivers: 33 }, { load: '1' }))[0]).toBe(
			'33 of 32 unit loads: too many',
		);
		expect(comes(reckoners.loads(all).reckon({ receivers: 33 }, { load: '0.125' }))[0]).toBe('4.125 of 32 unit loads');
		// 2 × 3 × tan 12.5° = 1.33 m
		expect(comes(reckoners.pool(all).reckon({ throw: 3, tilt: 0 }, { fixture: 'tallow-6' }))[0]).toBe('1.33 m');
	});
});

describe('a goal that is worked out', () => {
	const sheet = quickSheet({ count: 1, linked: 'alone', profile: 'tallow-6' });
	const rig = openUnharmed(sheet);

	it('lasts as long as asked at its brightest, and no longer one point up', () => {
		const condition = conditionOf({ is: 'lasts', fixture: 'wash-1', hours: 14 }, rig);
		if (condition.is !== 'setting-within') throw new Error(condition.is);
		const [range] = condition.within;
		expect(hoursAt(rig, 'wash-1', range?.to ?? 0)).toBeGreaterThanOrEqual(14);
		expect(hoursAt(rig, 'wash-1', (range?.to ?? 0) + 1)).toBeLessThan(14);
	});

	it('gives the lux asked for within a tenth, all through its range', () => {
		const condition = conditionOf({ is: 'lux', fixture: 'wash-1', lux: 200 }, rig);
		if (condition.is !== 'setting-within') throw new Error(condition.is);
		for (const { from, to } of condition.within)
			for (const level of [from, to]) expect(Math.abs(luxAt(rig, 'wash-1', level) / 200 - 1)).toBeLessThanOrEqual(0.1);
	});

	it('says so where no brightness does it', () => {
		expect(() => conditionOf({ is: 'lasts', fixture: 'wash-1', hours: 1000 }, rig)).toThrow(/No brightness/);
	});
});
