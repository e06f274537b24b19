import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyPlan, linesOf, readPlan, withRows } from '../../../../shared/plan/index.ts';
import { DRAWING, placeAt, pointOf } from '../../../../src/features/rig-sheet/linePlan.ts';
import { movedTo } from '../../../../src/features/rig-sheet/view.ts';
import { runs } from '../../../runs.ts';
import { nameOf } from '../../../shared/plan/plans.ts';

const plans = fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 12 }).map((places) =>
	places.reduce(
		(plan, place, i) => movedTo(plan, plan.rows[i]?.id ?? '', place / 2),
		withRows(
			emptyPlan('Tonight'),
			places.map(() => ({ profile: 'tallow-6' })),
			nameOf,
		),
	),
);

test('a dot let go where it is drawn stays where it was, and one dragged stops at half metres on the drawing', () => {
	fc.assert(
		fc.property(plans, fc.double({ min: -50, max: DRAWING.width + 50, noNaN: true }), (plan, at) => {
			for (const { place } of plan.rows) expect(placeAt(plan, pointOf(plan, place.x))).toBeCloseTo(place.x, 9);
			const x = placeAt(plan, at);
			const wide = Math.max(plan.hall.width, ...plan.rows.map(({ place }) => place.x));
			expect(x === wide || Number.isInteger(x * 2)).toBe(true);
			expect(x).toBeGreaterThanOrEqual(0);
			expect(x).toBeLessThanOrEqual(wide);
		}),
		{ numRuns: runs(200) },
	);
});

test('a light moved stands there, alone of all, on a wall that is long enough, in a plan that opens again', () => {
	fc.assert(
		fc.property(plans, fc.nat(11), fc.integer({ min: 0, max: 400 }), (plan, pick, place) => {
			const row = plan.rows[pick % plan.rows.length];
			const moved = movedTo(plan, row?.id ?? '', place / 2);
			expect(moved.hall.width).toBeGreaterThanOrEqual(Math.min(200, place / 2));
			for (const each of moved.rows) {
				const was = plan.rows.find(({ id }) => id === each.id);
				expect(each.place).toEqual(each.id === row?.id ? { ...was?.place, x: place / 2 } : was?.place);
			}
			expect(linesOf(readPlan(JSON.parse(JSON.stringify(moved)))).flatMap(({ runs }) => runs)).not.toEqual([]);
			expect(movedTo(moved, row?.id ?? '', place / 2)).toBe(moved);
		}),
		{ numRuns: runs(200) },
	);
});
