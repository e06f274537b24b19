import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	alongRoom,
	emptyPlan,
	fedWithin,
	letGo,
	linesOf,
	type Plan,
	type PlanProblem,
	packed,
	problemsOf,
	repaired,
	repairsOf,
	swapped,
	withRows,
} from '../../../shared/plan/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { fedFrom, withoutRow, withRow } from '../../../src/features/rig-sheet/view.ts';
import { runs } from '../../runs.ts';
import { nameOf, plans } from './plans.ts';

/** Plans of some universes, where anything is said of who feeds whom: of gone rows, of itself, in circles, across universes. */
const fedAnyhow = fc
	.tuple(plans, fc.array(fc.tuple(fc.nat(9), fc.integer({ min: 1, max: 2 })), { minLength: 8, maxLength: 8 }))
	.map(
		([plan, said]): Plan => ({
			...plan,
			rows: plan.rows.map((row, i) => {
				const [from = 0, universe = 1] = said[i] ?? [];
				return {
					...row,
					universe,
					labelled: from % 2 === 1,
					...(from < 9 ? { after: plan.rows[from]?.id ?? 'gone' } : {}),
				};
			}),
		}),
	);
const fedPlans = fedAnyhow.map(fedWithin);

const FEEDS: readonly PlanProblem['is'][] = ['fed-twice', 'fed-in-circle', 'leader-fed'];
const feedsOff = (plan: Plan): PlanProblem[] => problemsOf(plan).filter(({ is }) => FEEDS.includes(is));

/** Whether every row that is fed from one is fed from one on its own line. */
function isWithin({ rows, source }: Plan): boolean {
	return rows.every(({ after, universe }) => {
		const from = rows.find(({ id }) => id === after);
		return after === undefined || (from !== undefined && (source === 'leader' || from.universe === universe));
	});
}

/** Whether the line as planned goes from one row straight on to another. */
const goesOn = (plan: Plan, from: string, to: string): boolean =>
	linesOf(plan).some(({ runs: all }) => {
		const order = all.flatMap(({ rows }) => rows);
		return order.includes(from) && order[order.indexOf(from) + 1] === to;
	});

/** Whether the line as planned goes from each row to what is said to be fed from it. */
const isAsSaid = (plan: Plan): boolean =>
	plan.rows.every(({ id, after }) => after === undefined || goesOn(plan, after, id));

const three = (): Plan =>
	packed(
		withRows(
			emptyPlan('Three'),
			[0, 4, 8].map((x) => ({ profile: 'tallow-6', x })),
			nameOf,
		),
	).plan;

describe('what was said of who feeds whom', () => {
	it('goes where the line no longer reaches, at every door where a universe, the source or a row changes', () => {
		fc.assert(
			fc.property(fedPlans, fc.nat(7), fc.integer({ min: 1, max: 3 }), (plan, n, universe) => {
				const { id } = plan.rows[n % plan.rows.length] ?? { id: '' };
				const spare = BUNDLED[n % BUNDLED.length]?.id ?? '';
				const doors: readonly Plan[] = [
					withRow(plan, id, { universe }),
					withoutRow(plan, id),
					packed({ ...plan, source: 'desk', rules: { ...plan.rules, universe } }).plan,
					fedWithin({ ...plan, source: 'desk' }),
					swapped(fedWithin({ ...plan, source: 'desk' }), id, spare),
					...problemsOf(plan).flatMap((problem) => repairsOf(plan, problem).map((repair) => repaired(plan, repair))),
				];
				expect(doors.map(isWithin)).toEqual(doors.map(() => true));
			}),
			{ numRuns: runs(150) },
		);
	});

	// symptom: a cable was moved out of the way by 'Data comes from'; start addresses were given out, and it lay along the room again unsaid
	it('is told wherever a change lets it go, and nowhere that a person takes it back', () => {
		fc.assert(
			fc.property(fedPlans, fc.nat(7), fc.integer({ min: 1, max: 3 }), (plan, n, universe) => {
				const { id } = plan.rows[n % plan.rows.length] ?? { id: '' };
				const lost = (next: Plan): string[] =>
					plan.rows.flatMap((row) =>
						row.after !== undefined && next.rows.some((each) => each.id === row.id && each.after === undefined)
							? [row.id]
							: [],
					);
				for (const next of [
					withRow(plan, id, { universe }),
					withoutRow(plan, id),
					packed({ ...plan, source: 'desk', rules: { ...plan.rules, universe } }).plan,
					fedWithin({ ...plan, source: 'desk' }),
				])
					expect(letGo(plan, next).toSorted()).toEqual(lost(next).toSorted());
				expect(letGo(plan, fedFrom(plan, id, ''))).toEqual([]);
				expect(letGo(plan, plan)).toEqual([]);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('stays where the line reaches, and a plan with nothing off is the same plan', () => {
		fc.assert(
			fc.property(fedAnyhow, (plan) => {
				const kept = fedWithin(plan);
				expect(fedWithin(kept)).toBe(kept);
				for (const [i, row] of plan.rows.entries()) {
					const from = plan.rows.find(({ id }) => id === row.after);
					const isReached = from && (plan.source === 'leader' || from.universe === row.universe);
					expect(kept.rows[i]?.after).toBe(isReached ? row.after : undefined);
				}
			}),
			{ numRuns: runs(200) },
		);
	});

	it('is a problem exactly where the line as planned can’t be as said, and each problem has a repair that clears it', () => {
		fc.assert(
			fc.property(fedPlans, (plan) => {
				const off = feedsOff(plan);
				// behind a leader too, and on lines too short to split
				expect(off.length === 0, JSON.stringify(off)).toBe(isAsSaid(plan));
				for (const problem of off) {
					const [from = '', to = ''] = problem.rows;
					if (problem.is === 'fed-twice' && off.every(({ is }) => is === 'fed-twice'))
						expect(goesOn(plan, from, to)).toBe(true);
					const repairs = repairsOf(plan, problem);
					expect(repairs.length).toBeGreaterThan(0);
					for (const repair of repairs) expect(feedsOff(repaired(plan, repair))).not.toContainEqual(problem);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	it('comes right by first repairs alone', () => {
		fc.assert(
			fc.property(fedPlans, (plan) => {
				let now = plan;
				for (let left = 20; left > 0; left--) {
					const [problem] = feedsOff(now);
					if (!problem) break;
					const [repair] = repairsOf(now, problem);
					if (repair) now = repaired(now, repair);
				}
				expect(feedsOff(now)).toEqual([]);
			}),
			{ numRuns: runs(150) },
		);
	});

	it('one data out that feeds two: the second goes to the end of that line, or along the room', () => {
		const plan = three();
		const said = fedFrom(fedFrom(plan, 'wash-2', 'wash-1'), 'wash-3', 'wash-1');
		const [problem] = problemsOf(said);
		expect(problem).toEqual({ is: 'fed-twice', rows: ['wash-1', 'wash-2', 'wash-3'] });
		expect(problem && repairsOf(said, problem)).toEqual([
			{ do: 'feed', changes: [{ row: 'wash-3', change: { after: 'wash-2' } }] },
			{ do: 'along', changes: [{ row: 'wash-3', change: { after: null } }] },
		]);
	});

	it('a circle opens at its first fixture along the room; a leader is fed from none', () => {
		const round = fedFrom(fedFrom(fedFrom(three(), 'wash-1', 'wash-3'), 'wash-2', 'wash-1'), 'wash-3', 'wash-2');
		const [problem] = problemsOf(round);
		expect(problem).toEqual({ is: 'fed-in-circle', rows: ['wash-1'] });
		const [open] = problem ? repairsOf(round, problem) : [];
		expect(open && repaired(round, open).rows.map(({ after }) => after)).toEqual([undefined, 'wash-1', 'wash-2']);
		const led = { ...fedFrom(three(), 'wash-1', 'wash-2'), source: 'leader' as const };
		expect(alongRoom(led.rows)[0]?.id).toBe('wash-1');
		expect(problemsOf(led)).toEqual([{ is: 'leader-fed', rows: ['wash-1', 'wash-2'] }]);
	});
});
