import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aimLux, beamOf, luxAside, poolDiameter, poolOnWall } from '../../../shared/optics/index.ts';
import {
	emptyPlan,
	lightChanges,
	lightOf,
	type Plan,
	readPlan,
	wallLux,
	withRows,
} from '../../../shared/plan/index.ts';
import { bundledProfile } from '../../../shared/profile/index.ts';
import { runs } from '../../runs.ts';
import { nameOf, plans } from './plans.ts';

const wash = bundledProfile('tallow-6');
if (!wash) throw new Error('the wash is bundled');
const beam = beamOf(wash);

/** Washes at these places, square on, a metre and a half up. */
function washes(xs: readonly number[], more: { throw?: number; tilt?: number } = {}): Plan {
	const plan = withRows(
		emptyPlan('Test'),
		xs.map((x) => ({ profile: 'tallow-6', x })),
		nameOf,
	);
	const { throw: far = 4, tilt } = more;
	return {
		...plan,
		rows: plan.rows.map((row) => ({
			...row,
			...(tilt === undefined ? {} : { tilt }),
			place: { ...row.place, y: 1.5, throw: far },
		})),
	};
}

describe('light on the wall', () => {
	test('of one fixture square on: candela over the square of the throw, and the pool of its beam angle', () => {
		const [light] = lightOf(washes([5]));
		// inverse square, by hand: at 4 m a sixteenth of the candela
		expect(light?.own).toBeCloseTo(beam.peak / 16, 9);
		expect(light?.wide).toBeCloseTo(poolDiameter(4, beam.beam), 9);
		expect(light?.high).toBeCloseTo(poolDiameter(4, beam.beam), 9);
		expect(light).toMatchObject({ aim: 1.5, misses: false, next: null });
	});

	test('twice as far it is a quarter, and half the look is half', () => {
		const [near] = lightOf(washes([5]));
		const [far] = lightOf(washes([5], { throw: 8 }));
		expect(far?.own).toBeCloseTo((near?.own ?? 0) / 4, 9);
		const half = { ...washes([5]), show: { hours: 5, look: 0.5 } };
		expect(lightOf(half)[0]?.own).toBeCloseTo((near?.own ?? 0) / 2, 9);
	});

	test('turned up or down: as the lessons’ sums have it, and a miss is told', () => {
		fc.assert(
			fc.property(fc.integer({ min: -80, max: 80 }), fc.integer({ min: 1, max: 30 }), (tilt, far) => {
				const [light] = lightOf(washes([5], { tilt, throw: far }));
				const pool = poolOnWall(far, beam.beam, Math.abs(tilt));
				expect(light?.own).toBeCloseTo(aimLux(beam.peak, far, Math.abs(tilt)), 6);
				expect([light?.wide, light?.high]).toEqual([pool.wide, pool.long]);
				const aim = 1.5 + Math.tan((tilt * Math.PI) / 180) * far;
				expect(light?.aim).toBeCloseTo(aim, 6);
				expect(light?.misses).toBe(aim < 0 || aim > 6);
			}),
			{ numRuns: runs(200) },
		);
	});

	test('at any point it is the sum of each alone, a second way where all are square on', () => {
		fc.assert(
			fc.property(
				fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 6 }),
				fc.double({ min: 0, max: 40, noNaN: true }),
				(xs, at) => {
					const sum = xs.reduce((lux, x) => lux + luxAside(beam, 4, at - x), 0);
					expect(wallLux(washes(xs), at, 1.5)).toBeCloseTo(sum, 6);
				},
			),
			{ numRuns: runs(200) },
		);
	});

	test('overlap with the next: the mean of both pools less the way between; less than 0 is a gap', () => {
		const wide = poolDiameter(4, beam.beam);
		const [first, second] = lightOf(washes([2, 2 + wide / 2]));
		expect(first?.next?.overlap).toBeCloseTo(wide / 2, 9);
		expect(second?.next).toBeNull();
		expect(lightOf(washes([2, 3 + wide]))[0]?.next?.overlap).toBeCloseTo(-1, 9);
	});

	test('a move tells what it changes and nothing else; no move changes nothing', () => {
		const plan = washes([2, 4, 30]);
		expect(lightChanges(plan, plan)).toEqual([]);
		const [, second] = plan.rows;
		const moved = {
			...plan,
			rows: plan.rows.map((row) => (row === second ? { ...row, place: { ...row.place, throw: 8 } } : row)),
		};
		expect(lightChanges(plan, moved).map(({ row }) => row)).toEqual(['wash-1', 'wash-2']);
		fc.assert(
			fc.property(plans, (any) => {
				expect(lightChanges(any, any)).toEqual([]);
				expect(lightOf(any)).toHaveLength(any.rows.length);
			}),
			{ numRuns: runs(40) },
		);
	});

	test('a tilt is read back, and one that is none refused', () => {
		const plan = washes([2], { tilt: -20 });
		expect(readPlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
		expect(() => readPlan(JSON.parse(JSON.stringify(washes([2], { tilt: 90 }))))).toThrow();
	});
});
