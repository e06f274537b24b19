import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import {
	type AskOptions,
	bestCheck,
	makeOutcomeTable,
	makeSeconds,
	sharesByRepair,
	suspectsByRepair,
	type TableSearch,
} from '../../../sim/sequence/index.ts';
import { runs } from '../../runs.ts';
import { anyProblem } from './arbitrary.ts';
import { naiveOptimum } from './naive.ts';
import { rigLikeProblem, withMendAndSee } from './problems.ts';
import { manyWalks, searchOf, softWalk } from './softwalk.ts';

const some = { numRuns: runs(100) };
const problems = anyProblem({ suspects: 8, checks: 6, extras: false });

/** Suspects told apart by checks of two outcomes, all answered wrongly at one rate. */
function asked(
	weights: readonly number[],
	rows: readonly (readonly number[])[],
	costs: readonly number[],
	error: number,
	more: Partial<TableSearch> = {},
	options: Partial<AskOptions> = {},
) {
	const search: TableSearch = {
		table: makeOutcomeTable(rows, weights.length),
		weights: Float64Array.from(weights),
		repairs: Int32Array.from(weights.keys()),
		seconds: makeSeconds(costs),
		settled: 0.95,
		...more,
	};
	return bestCheck(search, { errors: costs.map(() => error), ...options });
}

describe('the next check', () => {
	it('is none once one repair holds the share that settles it, or where no check tells anything', () => {
		expect(asked([0.96, 0.04], [[0, 1]], [10], 0.05)).toBeNull();
		expect(asked([0.5, 0.5], [[0, 0]], [10], 0.05)).toBeNull();
		expect(asked([0.5, 0.5], [[0, 1]], [10], 0.05, {}, { excluded: [0] })).toBeNull();
		expect(asked([0.4, 0.2, 0.4], [[0, 1, 0]], [10], 0.05, { repairs: Int32Array.of(0, 0, 0) })).toBeNull();
		expect(asked([0.5, 0.5], [[0, 1]], [10], 0.5)).toBeNull();
	});

	it('costs what it should where that can be told by hand', () => {
		// one answer at an error of .04 makes .5 into .96, which settles it: one check, the cheaper
		expect(
			asked(
				[1, 1],
				[
					[0, 1],
					[0, 1],
				],
				[30, 20],
				0.04,
			),
		).toMatchObject({ check: 1, by: 'exact' });
		expect(
			asked(
				[1, 1],
				[
					[0, 1],
					[0, 1],
				],
				[30, 20],
				0.04,
			)?.expected,
		).toBeCloseTo(20, 9);
		// at .1 it makes .9: the second is asked too, whichever way the first went
		expect(
			asked(
				[1, 1],
				[
					[0, 1],
					[0, 1],
				],
				[30, 20],
				0.1,
			)?.expected,
		).toBeCloseTo(50, 9);
	});

	it('goes by how far an answer can be trusted', () => {
		const rows = [
			[0, 1],
			[0, 1],
		];
		expect(asked([1, 1], rows, [20, 25], 0, {}, { errors: [0.3, 0.02] })?.check).toBe(1);
		expect(asked([1, 1], rows, [20, 25], 0, {}, { errors: [0.02, 0.02] })?.check).toBe(0);
	});

	it('goes by where the tech stands', () => {
		const walk = Float64Array.of(0, 60, 60, 0);
		const seconds = makeSeconds([20, 20], { place: Int32Array.of(0, 1), places: 2, walk });
		const rows = [
			[0, 1],
			[0, 1],
		];
		for (const here of [0, 1]) {
			expect(asked([1, 1], rows, [20, 20], 0.04, { seconds }, { here })?.check).toBe(here);
			expect(asked([1, 1], rows, [20, 20], 0, { seconds }, { here })?.check).toBe(here);
		}
	});

	it('tries a likely repair before a look that takes longer than it saves', () => {
		// .8 sits in one repair of 40 s: to try it costs 5 s of looking, and 45 in vain one time in five
		const see = { refund: Float64Array.of(0, 40, 0), refundOutcome: Int32Array.of(-1, 1, -1) };
		const rows = [
			[0, 1, 1],
			[1, 0, 0],
			[0, 0, 1],
		];
		const search = {
			seconds: makeSeconds([30, 45, 10], see),
			table: makeOutcomeTable(
				rows,
				3,
				rows.map(() => [0, 1]),
			),
		};
		expect(asked([0.8, 0.1, 0.1], rows, [30, 45, 10], 0, search, { errors: [0.05, 0.01, 0.05] })?.check).toBe(1);
		// the same repair with nothing given back is dearer than the look
		const plain = { ...search, seconds: makeSeconds([30, 45, 10]) };
		expect(asked([0.8, 0.1, 0.1], rows, [30, 45, 10], 0, plain, { errors: [0.05, 0.01, 0.05] })?.check).toBe(0);
	});

	it('takes a suspect that predicts nothing into account: no answer moves it', () => {
		const rows = [[0, 1, null]];
		const table = makeOutcomeTable(rows, 3);
		const plan = asked([0.45, 0.45, 0.1], [], [10], 0.05, { table, seconds: makeSeconds([10]) });
		expect(plan?.check).toBe(0);
		// where answers are never wrong either: 'nothing predicted' is no outcome that could be seen
		const never = asked([0.45, 0.45, 0.1], [], [10], 0, { table, seconds: makeSeconds([10]) });
		expect(never).toMatchObject({ check: 0, by: 'exact' });
		expect(asked([0.001, 0.001, 0.998], [], [10], 0.05, { table, seconds: makeSeconds([10]) })).toBeNull();
	});

	it('is never one that is excluded, is the same each time, and hangs on weights only by their shares', () => {
		fc.assert(
			fc.property(problems, fc.array(fc.nat(5)), fc.integer({ min: -6, max: 6 }), (problem, excluded, power) => {
				const { search, errors } = searchOf(problem, 0.95, 0.05);
				const plan = bestCheck(search, { errors, excluded });
				const scaled = { ...search, weights: search.weights.map((weight) => weight * 2 ** power) };
				expect(bestCheck(scaled, { errors, excluded })?.check).toBe(plan?.check);
				expect(bestCheck(search, { errors, excluded })).toEqual(plan);
				expect(plan === null || !excluded.includes(plan.check)).toBe(true);
			}),
			some,
		);
	});

	it('where no answer is ever wrong is the optimum', () => {
		fc.assert(
			fc.property(anyProblem({ suspects: 8, checks: 6, extras: true }), (problem) => {
				if (problem.places || problem.refunds) return true;
				const { search } = searchOf(problem, 1, 0);
				const plan = bestCheck(search, { errors: new Float64Array(problem.costs.length) });
				const optimum = naiveOptimum(problem);
				return plan === null ? optimum === 0 : Math.abs((plan.expected ?? -1) - optimum) < 1e-9 * (1 + optimum);
			}),
			some,
		);
	});

	it.each([
		['weights', { weights: Float64Array.of(1) }, {}, 'sequence.lengths', 'weights'],
		['repairs', { repairs: Int32Array.of(1) }, {}, 'sequence.lengths', 'repairs'],
		['seconds', { seconds: makeSeconds([1, 2]) }, {}, 'sequence.lengths', 'seconds.base'],
		['errors', {}, { errors: [] }, 'sequence.lengths', 'errors'],
		['error rates', {}, { errors: [0.7] }, 'sequence.error-rate', 'errors[0]'],
		['weights that sum to 0', { weights: Float64Array.of(0, 0) }, {}, 'sequence.weights', 'weights'],
		['a price below 0', {}, { wrongSeconds: -1 }, 'sequence.cost', 'wrongSeconds'],
		['weights below 0', { weights: Float64Array.of(2, -1) }, {}, 'sequence.weights', 'weights'],
	])('is refused for nonsense: %s', (_, more, options, code, path) => {
		const act = () => asked([1, 1], [[0, 1]], [10], 0.05, more as Partial<TableSearch>, options as Partial<AskOptions>);
		expect(act).toThrow(expect.objectContaining({ code, path }));
	});
});

describe('a walk', () => {
	const rigs = (count: number) =>
		Array.from({ length: count }, (_, seed) =>
			withMendAndSee(rigLikeProblem(seed, 30, 50), (repair) => 15 + (`${repair}`.length % 5) * 20),
		);

	it('ends on the guilty repair when every answer is right, with the share asked for or a repair that cleared it', () => {
		for (const problem of rigs(8)) {
			const { search, errors } = searchOf(problem, 0.95, 0.05);
			for (let truth = 0; truth < problem.weights.length; truth += 7) {
				const walk = softWalk(search, errors, truth, 'best', makeRandom(truth), () => false);
				expect(walk.right).toBe(true);
				expect(walk.share).toBeGreaterThanOrEqual(0.95);
				expect(new Set(walk.made).size).toBe(walk.made.length);
			}
		}
	});

	it('with answers wrong by chance ends right as often as it was asked to be sure', () => {
		const best = manyWalks(rigs(80), 'best', 'chance');
		expect(best.right).toBeGreaterThanOrEqual(0.95);
		// struck out, one wrong answer ends most walks wrong: one in six came right in the prototype's rigs
		expect(manyWalks(rigs(80), 'best', 'one').right).toBeGreaterThanOrEqual(0.95);
	});
});

describe('those with one mend', () => {
	it('stand side by side', () => {
		const { search } = searchOf(
			{ weights: [1, 1, 1, 1], costs: [], outcomes: [], repairs: ['a', 'b', 'a', 'b'] },
			0.95,
			0,
		);
		expect([...suspectsByRepair(search)]).toEqual([0, 2, 1, 3]);
		expect([...suspectsByRepair(search, [3, 2, 0])]).toEqual([0, 2, 3]);
		expect([...sharesByRepair(search)]).toEqual([0.5, 0.5]);
	});
});
