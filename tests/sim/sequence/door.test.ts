import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { type Policy, sequence, type TestProblem } from '../../../sim/sequence/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { walkFor } from './problems.ts';

const POLICIES: readonly Policy[] = ['exact', 'rollout', 'gain', 'order'];

/** Four suspects on a line of four links, and two checks that halve it. */
const line: TestProblem = {
	weights: [1, 1, 1, 1],
	costs: [10, 10, 10],
	outcomes: [
		['dark', 'dark', 'lit', 'lit'],
		[1, 0, 0, 0],
		[0, 0, 1, 0],
	],
};

function refusal(act: () => unknown): [string, string, string] {
	try {
		act();
	} catch (error) {
		if (error instanceof InputError) return [error.code, error.path, errorText(error)];
		throw error;
	}
	throw new Error('nothing was refused');
}

describe('what comes out', () => {
	it('names checks, seconds, outcomes in the words given, and who is left', () => {
		expect(sequence(line)).toEqual({
			expectedCost: 20,
			tree: {
				check: 0,
				cost: 10,
				branches: [
					{
						outcome: 'dark',
						suspects: [0, 1],
						node: {
							check: 1,
							cost: 10,
							branches: [
								{ outcome: 1, suspects: [0], node: { suspects: [0] } },
								{ outcome: 0, suspects: [1], node: { suspects: [1] } },
							],
						},
					},
					{
						outcome: 'lit',
						suspects: [2, 3],
						node: {
							check: 2,
							cost: 10,
							branches: [
								{ outcome: 0, suspects: [3], node: { suspects: [3] } },
								{ outcome: 1, suspects: [2], node: { suspects: [2] } },
							],
						},
					},
				],
			},
		});
	});

	it.each(POLICIES)('takes one suspect, or no check at all, as an end (%s)', (policy) => {
		const one = { weights: [3], costs: [5], outcomes: [['a']] };
		expect(sequence(one, policy)).toEqual({ expectedCost: 0, tree: { suspects: [0] } });
		const none = { weights: [1, 2], costs: [], outcomes: [] };
		expect(sequence(none, policy)).toEqual({ expectedCost: 0, tree: { suspects: [0, 1] } });
	});

	it.each(POLICIES)('leaves suspects that no check parts in one leaf (%s)', (policy) => {
		const twins = { ...line, outcomes: line.outcomes.map((row) => [...row, row[1] as number | string]) };
		const { tree } = sequence({ ...twins, weights: [1, 1, 1, 1, 1] }, policy);
		expect(walkFor(tree, twins, 1).leaf).toEqual([1, 4]);
		expect(walkFor(tree, twins, 4).leaf).toEqual([1, 4]);
		expect(walkFor(tree, twins, 0).leaf).toEqual([0]);
	});

	it.each(POLICIES)('ends where one repair clears all who are left, and not before (%s)', (policy) => {
		const { tree, expectedCost } = sequence({ ...line, repairs: ['plug', 'plug', 'lamp', 'fuse'] }, policy);
		expect(walkFor(tree, line, 0).leaf).toEqual([0, 1]);
		expect(walkFor(tree, line, 2).leaf).toEqual([2]);
		expect(walkFor(tree, line, 3).leaf).toEqual([3]);
		expect(expectedCost).toBeCloseTo(15, 10);
	});

	it('goes on among suspects alike to every check only as far as checks go, though their repairs differ', () => {
		const problem = { weights: [1, 1, 1], costs: [4], outcomes: [[0, 0, 1]], repairs: ['a', 'b', 'a'] };
		expect(sequence(problem).expectedCost).toBe(4);
	});

	it('tells 1 from "1"', () => {
		expect(sequence({ weights: [1, 1], costs: [7], outcomes: [[1, '1']] }).expectedCost).toBe(7);
	});

	it('walks every suspect of weight 0 to its leaf too', () => {
		for (const policy of POLICIES) {
			const { tree, expectedCost } = sequence({ ...line, weights: [1, 0, 0, 0] }, policy);
			for (const suspect of [0, 1, 2, 3]) expect(walkFor(tree, line, suspect).leaf).toEqual([suspect]);
			expect(expectedCost).toBeGreaterThanOrEqual(10);
		}
	});

	it('takes checks that cost nothing first, and only those that tell something', () => {
		const free = { ...line, costs: [10, 0, 10], outcomes: [...line.outcomes.slice(0, 2), [5, 5, 5, 5]] };
		for (const policy of POLICIES) {
			const { tree } = sequence(free, policy);
			expect('check' in tree && tree.check).toBe(1);
		}
	});
});

describe('mend and see', () => {
	it('gives back the repair that was needed anyway: the order of repairs by weight over seconds comes out by itself', () => {
		const seconds = [20, 5, 10, 2];
		const problem: TestProblem = {
			weights: [0.4, 0.3, 0.2, 0.1],
			costs: seconds,
			outcomes: seconds.map((_, check) => seconds.map((_, suspect) => (check === suspect ? 'cleared' : 'not'))),
			refunds: seconds.map((each) => ({ outcome: 'cleared', seconds: each })),
		};
		const { expectedCost, tree } = sequence(problem, 'exact');
		const needed = seconds.reduce((sum, each, i) => sum + each * (problem.weights[i] as number), 0);
		expect(expectedCost + needed).toBeCloseTo(20.4, 10);
		expect('check' in tree && tree.check).toBe(1);
		expect('check' in tree && tree.branches.map(({ outcome, refund }) => [outcome, refund])).toEqual([
			['not', undefined],
			['cleared', 5],
		]);
	});
});

describe('walking', () => {
	it('puts checks at one place together where walking is dear', () => {
		const near: TestProblem = {
			...line,
			costs: [10, 10, 10, 13],
			outcomes: [...line.outcomes, [0, 0, 1, 1]],
			places: {
				at: 0,
				of: [1, 0, 0, 0],
				walk: [
					[0, 100],
					[100, 0],
				],
			},
		};
		const { expectedCost, tree } = sequence(near, 'exact');
		expect('check' in tree && tree.check).toBe(3);
		expect(expectedCost).toBe(23);
		expect(
			sequence({
				...near,
				places: {
					at: 1,
					of: [1, 0, 0, 0],
					walk: [
						[0, 1],
						[1, 0],
					],
				},
			}).expectedCost,
		).toBe(21);
	});
});

describe('the fixed order', () => {
	it('is cheapest first unless told', () => {
		const priced = { ...line, costs: [30, 20, 10] };
		const { tree } = sequence(priced, 'order');
		expect('check' in tree && tree.check).toBe(2);
		const told = sequence(priced, 'order', { order: [0, 1, 2] });
		expect('check' in told.tree && told.tree.check).toBe(0);
	});
});

describe('nonsense', () => {
	const nonsense: [string, unknown, string, string, RegExp][] = [
		['no problem', null, 'sequence.list', '', /has weights, costs and outcomes; found null/],
		['no suspects', { ...line, weights: [] }, 'sequence.suspects', 'weights', /at least one suspect/],
		['a weight below 0', { ...line, weights: [1, -1, 1, 1] }, 'sequence.weight', 'weights[1]', /0 or more; found -1/],
		['a weight that is none', { ...line, weights: [1, 1, Number.NaN, 1] }, 'sequence.weight', 'weights[2]', /NaN/],
		['an endless weight', { ...line, weights: [1, 1, 1, 1 / 0] }, 'sequence.weight', 'weights[3]', /Infinity/],
		['no weight at all', { ...line, weights: [0, 0, 0, 0] }, 'sequence.weights', 'weights', /above 0; these sum to 0/],
		['a cost below 0', { ...line, costs: [10, -5, 10] }, 'sequence.cost', 'costs[1]', /A cost .* found -5/],
		['a cost too few', { ...line, costs: [10, 5] }, 'sequence.lengths', 'costs', /Costs are 3.*found 2/],
		[
			'an outcome too few',
			{ ...line, outcomes: [[0, 1]], costs: [1] },
			'sequence.lengths',
			'outcomes[0]',
			/are 4.*found 2/,
		],
		[
			'an outcome that is none',
			{ ...line, outcomes: [[0, 1, null, 1]], costs: [1] },
			'sequence.outcomes',
			'outcomes[0][2]',
			/found null/,
		],
		[
			'an outcome NaN',
			{ ...line, outcomes: [[0, 1, 2, Number.NaN]], costs: [1] },
			'sequence.outcomes',
			'outcomes[0][3]',
			/NaN/,
		],
		['weights that are no list', { ...line, weights: 'abcd' }, 'sequence.list', 'weights', /found "abcd"/],
		[
			'a repair too many',
			{ ...line, repairs: [1, 2, 3, 4, 5] },
			'sequence.lengths',
			'repairs',
			/Repairs are 4.*found 5/,
		],
		[
			'a refund above the cost',
			{ ...line, refunds: [{ outcome: 'lit', seconds: 11 }, null, null] },
			'sequence.refund',
			'refunds[0].seconds',
			/0 to the check's own cost of 10; found 11/,
		],
		[
			'a place that is none',
			{ ...line, places: { at: 0, of: [0, 1, 0], walk: [[0]] } },
			'sequence.place',
			'places.of[1]',
			/from 0 to 0; found 1/,
		],
		[
			'a walk below 0',
			{ ...line, places: { at: 0, of: [0, 0, 0], walk: [[-1]] } },
			'sequence.walk',
			'places.walk[0][0]',
			/found -1/,
		],
	];

	it.each(nonsense)('%s is refused, saying where and why', (_, problem, code, path, sentence) => {
		const [foundCode, foundPath, foundSentence] = refusal(() => sequence(problem as TestProblem));
		expect([foundCode, foundPath]).toEqual([code, path]);
		expect(foundSentence).toMatch(sentence);
	});

	it('an order that leaves a check out is refused', () => {
		const [code, path, sentence] = refusal(() => sequence(line, 'order', { order: [0, 0, 1] }));
		expect([code, path]).toEqual(['sequence.order', 'order']);
		expect(sentence).toMatch(/each of the 3 checks once/);
	});

	it('exact over too many suspects is refused, and says what to do', () => {
		const many = {
			weights: Array(31).fill(1),
			costs: Array(31).fill(1),
			outcomes: Array.from({ length: 31 }, (_, c) => Array.from({ length: 31 }, (_, s) => (c === s ? 1 : 0))),
		};
		const [code, path, sentence] = refusal(() => sequence(many, 'exact'));
		expect([code, path]).toEqual(['sequence.exact-size', 'policy']);
		expect(sentence).toBe(
			'The exact policy takes at most 30 suspects that checks can part; here are 31. Use the default policy.',
		);
	});

	// symptom: 'Map maximum size exceeded', after a minute. cause: the exact policy had no limit to what it tried
	it('exact where suspects can be parted in too many ways is refused, and says what to do', () => {
		const many = {
			weights: Array(30).fill(1),
			costs: Array.from({ length: 30 }, (_, c) => c + 1),
			outcomes: Array.from({ length: 30 }, (_, c) => Array.from({ length: 30 }, (_, s) => (c === s ? 1 : 0))),
		};
		const [code, path, sentence] = refusal(() => sequence(many, 'exact'));
		expect([code, path]).toEqual(['sequence.exact-size', 'policy']);
		expect(sentence).toMatch(/parted in too many ways\. Use the default policy\.$/);
	});

	it.each([
		['exactAt', 31],
		['exactAt', -1],
		['exactAt', 2.5],
		['cells', 0],
		['tries', Number.NaN],
	] as const)('a limit of %s = %d is refused', (name, value) => {
		const [code, path] = refusal(() => sequence(line, 'rollout', { [name]: value }));
		expect([code, path]).toEqual(['sequence.limit', name]);
	});

	it('a policy that is none is refused', () => {
		const [code, path, sentence] = refusal(() => sequence(line, 'best' as Policy));
		expect([code, path]).toEqual(['sequence.policy', 'policy']);
		expect(sentence).toMatch(/exact, rollout, gain or order; found "best"/);
	});
});
