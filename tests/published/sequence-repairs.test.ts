import { expect, it } from 'vitest';
import { orderRepairs, sequence, type TestProblem } from '../../sim/sequence/index.ts';

/*
 * D. Heckerman, J. S. Breese and K. Rommelse, Decision-theoretic troubleshooting, Communications of the ACM 38(3),
 * 1995: with one fault, repairs go by falling probability over cost (rule from memory, figures recalculated).
 */
const weights = [0.4, 0.3, 0.2, 0.1];
const seconds = [20, 5, 10, 2];

/** Expected seconds of trying repairs in a given order. */
function tried(order: readonly number[]): number {
	let spent = 0;
	return order.reduce((sum, repair) => {
		spent += seconds[repair] as number;
		return sum + spent * (weights[repair] as number);
	}, 0);
}

it('repairs go by weight over seconds: second, fourth, first, third, at 20.4', () => {
	const { order, expected } = orderRepairs(weights, seconds);
	expect(order).toEqual([1, 3, 0, 2]);
	expect(expected).toBeCloseTo(20.4, 12);
	expect(tried(order)).toBeCloseTo(20.4, 12);
});

it('by weight alone they cost 26.2', () => {
	expect(tried([0, 1, 2, 3])).toBeCloseTo(26.2, 12);
});

const asChecks: TestProblem = {
	weights,
	costs: seconds,
	outcomes: seconds.map((_, check) => seconds.map((__, suspect) => (check === suspect ? 'cleared' : 'not'))),
};

it('to find out which is at fault, each repair a check and no more, is another question: 12.4', () => {
	expect(sequence(asChecks, 'exact').expectedCost).toBeCloseTo(12.4, 12);
});

it('where a repair that clears gives its seconds back, the exact solver lands on the same 20.4', () => {
	const refunds = seconds.map((each) => ({ outcome: 'cleared', seconds: each }));
	const needed = seconds.reduce((sum, each, repair) => sum + each * (weights[repair] as number), 0);
	expect(sequence({ ...asChecks, refunds }, 'exact').expectedCost + needed).toBeCloseTo(20.4, 12);
	expect(sequence({ ...asChecks, refunds }).expectedCost + needed).toBeCloseTo(20.4, 12);
});
