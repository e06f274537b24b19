import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alongRoom, emptyPlan, lineOrder, linesOf, type PlanRow, withRows } from '../../../shared/plan/index.ts';
import { runs } from '../../runs.ts';
import { nameOf } from './plans.ts';

/** Rows at these metres, each fed from another of them, from itself, or from none there. */
function rowsAt(places: readonly { readonly x: number; readonly after: number }[]): PlanRow[] {
	const { rows } = withRows(
		emptyPlan('Test'),
		places.map(({ x }) => ({ profile: 'tallow-6', x })),
		nameOf,
	);
	return rows.map((row, i) => {
		const after = rows[places[i]?.after ?? -1]?.id;
		return after === undefined ? row : { ...row, after };
	});
}
const ids = (rows: readonly PlanRow[]): string[] => rows.map(({ id }) => id);
const places = fc.array(fc.record({ x: fc.nat(60), after: fc.nat(14) }), { minLength: 1, maxLength: 10 });

describe('a line that somebody said', () => {
	it('goes from each row to the first that is fed from it, and else along the room', () => {
		const rows = rowsAt([
			{ x: 0, after: -1 },
			{ x: 5, after: -1 },
			{ x: 9, after: 0 },
			{ x: 12, after: 2 },
			{ x: 15, after: 0 },
		]);
		expect(ids(lineOrder(rows))).toEqual(['wash-1', 'wash-3', 'wash-4', 'wash-2', 'wash-5']);
	});

	it('has every row once, whoever is fed from whom', () => {
		fc.assert(
			fc.property(places, (each) => {
				const rows = rowsAt(each);
				const order = lineOrder(rows);
				expect(ids(order).toSorted()).toEqual(ids(rows).toSorted());
				// of those fed from one, the first along the room comes right after it, unless the line is a ring there
				const along = alongRoom(rows);
				for (const [i, row] of order.entries()) {
					const first = along.find(({ after }) => after === row.id);
					if (first && order.indexOf(first) > i) expect(order[i + 1]?.id).toBe(first.id);
				}
			}),
			{ numRuns: runs(200) },
		);
	});

	it('that says nothing is the room’s, and one that feeds a row of another universe is not heard', () => {
		const rows = rowsAt([
			{ x: 4, after: -1 },
			{ x: 2, after: 0 },
		]).map((row, i) => ({ ...row, universe: i + 1 }));
		const plan = { ...withRows(emptyPlan('Test'), [], nameOf), rows };
		expect(linesOf(plan).map(({ runs: [run] }) => run?.rows)).toEqual([['wash-1'], ['wash-2']]);
		expect(
			ids(
				lineOrder(
					rowsAt([
						{ x: 4, after: -1 },
						{ x: 2, after: 30 },
					]),
				),
			),
		).toEqual(['wash-2', 'wash-1']);
	});
});
