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

const placements = (plan: Plan) =>
	plan.rows.map((row) => ({
		id: row.id,
		universe: row.universe,
		start: row.address,
		footprint: rowFootprint(plan, row),
	}));

/** What one tap can always put right, labelled or not. */
const ALWAYS: readonly string[] = ['clash', 'same-address', 'past-512', 'no-such-address'];

/** Each repair of each problem leaves nothing of it, and of those that one tap can put right there is one. */
function clears(plan: Plan): void {
	for (const problem of problemsOf(plan)) {
		const repairs = repairsOf(plan, problem);
		if (ALWAYS.includes(problem.is)) expect(repairs.length, problem.is).toBeGreaterThan(0);
		for (const repair of repairs) {
			const after = repaired(plan, repair);
			const [first, second] = problem.rows;
			if (problem.is === 'clash' || problem.is === 'same-address')
				expect(overlaps(placements(after).filter(({ id }) => id === first || id === second))).toEqual([]);
			else
				expect(
					problemsOf(after).filter(({ is, rows }) => is === problem.is && rows.at(-1) === problem.rows.at(-1)),
				).toEqual([]);
		}
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

	test('a panel that shows what is planned is no problem; one that does not is until it is set, and stays known', () => {
		const asPlanned = withRow(four(), 2, { shows: { mode: 'middle', address: 19 } });
		expect(problemsOf(asPlanned)).toEqual([]);
		const off = withRow(four(), 2, { shows: { mode: 'long', address: 40 } });
		const [problem] = problemsOf(off);
		if (!problem) throw new Error('nothing is wrong');
		const repairs = repairsOf(off, problem);
		expect(repairs.map((repair) => repair.do)).toEqual(['use-shown']);
		for (const repair of repairs)
			expect(repaired(off, repair).rows[2]).toMatchObject({
				mode: 'long',
				address: 40,
				shows: { mode: 'long', address: 40 },
			});
	});

	test('of two that clash the one without a label moves; of two labelled ones nothing is packed afresh', () => {
		const clash = withRow(four(), 2, { address: 14, labelled: true });
		const moves = (plan: Plan) =>
			problemsOf(plan).flatMap((problem) =>
				repairsOf(plan, problem).map((repair) => [repair.do, repair.changes.map(({ row }) => row)]),
			);
		expect(moves(clash)[0]).toEqual(['move', ['wash-2']]);
		expect(moves(withRow(clash, 1, { labelled: true }))).toEqual([['move', ['wash-3']]]);
	});

	test('one that moves goes by the rules for start addresses', () => {
		const plan = withRow({ ...four(), rules: { ...four().rules, step: 10, gap: 3 } }, 2, { address: 14 });
		const [problem] = problemsOf(plan);
		const [repair] = problem ? repairsOf(plan, problem) : [];
		// 28 to 36 are taken, 3 stay free, and 41 is the next of 1, 11, 21
		expect(repair?.changes).toEqual([{ row: 'wash-3', change: { universe: 1, address: 41, labelled: false } }]);
	});

	test('behind a leader more than a line takes is told: no splitter stands there', () => {
		const washes = (count: number): Plan =>
			withRows(
				{ ...emptyPlan('Long'), source: 'leader' },
				Array.from({ length: count }, () => ({ profile: 'tallow-6' })),
				nameOf,
			);
		expect(problemsOf(washes(32))).toEqual([]);
		expect(problemsOf(washes(33))).toEqual([{ is: 'too-many-loads', rows: [], unitLoads: 33, most: 32 }]);
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
				.array(fc.record({ start: fc.integer({ min: 0, max: 61 }), labelled: fc.boolean() }), {
					minLength: plan.rows.length,
					maxLength: plan.rows.length,
				})
				.map((drawn) => ({
					...plan,
					source: 'desk' as const,
					rows: plan.rows.map((row, i) => {
						const { start = 0, labelled = false } = drawn[i] ?? {};
						return { ...row, address: 1 + start + (i === 0 ? 450 : 0), labelled };
					}),
				})),
		);
		fc.assert(
			fc.property(moved, (plan) => {
				const shared = overlaps(placements(plan));
				const said = problemsOf(plan).filter(({ is }) => is === 'clash' || is === 'same-address');
				expect(new Set(said.map(({ rows }) => rows.at(-1)))).toEqual(new Set(shared.map(({ second }) => second)));
				clears(plan);
			}),
			{ numRuns: runs(100) },
		);
	});
});
