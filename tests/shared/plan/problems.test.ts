import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlaps } from '../../../shared/dmx/index.ts';
import {
	emptyPlan,
	type Plan,
	packed,
	problemsOf,
	repaired,
	repairsOf,
	rowFootprint,
	withRows,
} from '../../../shared/plan/index.ts';
import { runs } from '../../runs.ts';
import { nameOf, plans } from './plans.ts';

const four = (): Plan =>
	packed(
		withRows(
			emptyPlan('Four'),
			Array.from({ length: 4 }, () => ({ profile: 'tallow-6' })),
			nameOf,
		),
	).plan;
const withRow = (plan: Plan, i: number, change: Partial<Plan['rows'][number]>): Plan => ({
	...plan,
	rows: plan.rows.map((row, n) => (n === i ? { ...row, ...change } : row)),
});
const kinds = (plan: Plan) => problemsOf(plan).map(({ is }) => is);

/** Whether some repair of each problem leaves that problem's last row with none of its kind. */
function clears(plan: Plan): void {
	for (const problem of problemsOf(plan))
		for (const repair of repairsOf(plan, problem)) {
			const after = problemsOf(repaired(plan, repair));
			const row = problem.rows.at(-1);
			expect(after.filter((each) => each.is === problem.is && each.rows.at(-1) === row)).toEqual([]);
		}
}

describe('what is wrong with a plan', () => {
	test('a packed plan has nothing wrong', () => {
		expect(problemsOf(four())).toEqual([]);
		expect(four().rows.map(({ address }) => address)).toEqual([1, 10, 19, 28]);
	});

	test.each([
		['two that share some slots', { address: 14 }, 'clash'],
		['two on one start address', { address: 10 }, 'same-address'],
		['one that runs past 512', { address: 506 }, 'past-512'],
		['a panel in another mode', { shows: { mode: 'long', address: 19 } }, 'panel-mode'],
		['a panel at another address', { shows: { mode: 'middle', address: 20 } }, 'panel-address'],
	] as const)('%s', (_, change, is) => {
		const plan = withRow(four(), 2, change);
		expect(kinds(plan)).toContain(is);
		const problem = problemsOf(plan).find((each) => each.is === is);
		expect(problem && repairsOf(plan, problem).length).toBeGreaterThan(0);
		clears(plan);
	});

	test('followers: another kind, another mode, an address that is not read from', () => {
		const plan = { ...four(), source: 'leader' as const };
		expect(problemsOf(plan)).toEqual([]);
		expect(kinds(withRow(plan, 2, { mode: 'long' }))).toEqual(['follower-mode']);
		expect(kinds(withRow(plan, 2, { profile: 'picket-8', mode: 'whole' }))).toEqual(['follower-kind']);
		const bars = withRows(
			{ ...emptyPlan('Bars'), source: 'leader' },
			[{ profile: 'picket-8' }, { profile: 'picket-8' }],
			nameOf,
		);
		expect(problemsOf(bars)).toEqual([]);
		const off = withRow(bars, 1, { address: 5 });
		expect(kinds(off)).toEqual(['follower-address']);
		clears(off);
	});

	test('says something is off exactly where slots are shared, and every repair clears what it is for', () => {
		const moved = plans.chain((plan) =>
			fc
				.array(fc.integer({ min: 1, max: 512 }), { minLength: plan.rows.length, maxLength: plan.rows.length })
				.map((starts) => ({
					...plan,
					source: 'desk' as const,
					rows: plan.rows.map((row, i) => ({ ...row, address: 1 + ((starts[i] ?? 0) % 60) + (i === 0 ? 450 : 0) })),
				})),
		);
		fc.assert(
			fc.property(moved, (plan) => {
				const shared = overlaps(
					plan.rows.map((row) => ({
						id: row.id,
						universe: row.universe,
						start: row.address,
						footprint: rowFootprint(plan, row),
					})),
				);
				const said = problemsOf(plan).filter(({ is }) => is === 'clash' || is === 'same-address');
				expect(new Set(said.map(({ rows }) => rows.at(-1)))).toEqual(new Set(shared.map(({ second }) => second)));
				clears(plan);
			}),
			{ numRuns: runs(100) },
		);
	});
});
