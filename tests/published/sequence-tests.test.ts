import { describe, expect, it } from 'vitest';
import { entropyOf, sequence, type TestProblem } from '../../sim/sequence/index.ts';

const states = (count: number) => Array.from({ length: count }, (_, i) => i);

/** Each test fails under the states listed. */
const unitTests = (weights: readonly number[], fails: readonly (readonly number[])[]): TestProblem => ({
	weights,
	costs: fails.map(() => 1),
	outcomes: fails.map((list) => states(weights.length).map((state) => (list.includes(state) ? 'fails' : 'passes'))),
});

/** Least average number of yes-or-no questions, by Huffman's merging of the two lightest. */
function huffman(weights: readonly number[]): number {
	const left = [...weights].sort((a, b) => a - b);
	let sum = 0;
	while (left.length > 1) {
		const [a = 0, b = 0] = left.splice(0, 2);
		sum += a + b;
		left.push(a + b);
		left.sort((x, y) => x - y);
	}
	return sum;
}

/*
 * K. R. Pattipati and M. G. Alexandridis, Application of heuristic search and information theory to sequential fault
 * diagnosis, IEEE Trans. SMC 20(4), 1990: six states, five tests of unit cost, optimum 2.18. Table and optimum are from
 * memory (reconstructed: the paper could not be read); the other figures are recalculated.
 */
describe('the six states and five tests of Pattipati and Alexandridis, reconstructed', () => {
	const weights = [0.7, 0.01, 0.02, 0.1, 0.05, 0.12];
	const problem = unitTests(weights, [
		[3, 4, 5],
		[1, 4, 5],
		[2, 5],
		[2, 3, 5],
		[1, 3],
	]);

	it('has its optimum of 2.18, which the default finds too', () => {
		expect(sequence(problem, 'exact').expectedCost).toBeCloseTo(2.18, 12);
		expect(sequence(problem).expectedCost).toBeCloseTo(2.18, 12);
	});

	it('costs 2.86 by information alone', () => {
		expect(sequence(problem, 'gain').expectedCost).toBeCloseTo(2.86, 12);
	});

	it("stands above Huffman's bound of 1.59, and that above the entropy of 1.4549", () => {
		expect(huffman(weights)).toBeCloseTo(1.59, 12);
		expect(entropyOf(weights)).toBeCloseTo(1.4549, 4);
	});
});

/*
 * D. A. Huffman, A method for the construction of minimum-redundancy codes, Proc. IRE 40(9), 1952 (from memory): with
 * every yes-or-no question to be had at one cost, the optimum is Huffman's code; with fewer, it is no less.
 */
describe("Huffman's bound", () => {
	const weights = [0.3, 0.22, 0.17, 0.12, 0.1, 0.06, 0.03];

	it('is reached where every split can be asked for', () => {
		const every = Array.from({ length: 2 ** (weights.length - 1) - 1 }, (_, i) =>
			states(weights.length).filter((state) => ((i + 1) >> state) & 1),
		);
		expect(sequence(unitTests(weights, every), 'exact').expectedCost).toBeCloseTo(huffman(weights), 12);
	});

	it('is not undercut where only single states can be asked for', () => {
		const single = states(weights.length).map((state) => [state]);
		const { expectedCost } = sequence(unitTests(weights, single), 'exact');
		expect(expectedCost).toBeGreaterThan(huffman(weights));
		// heaviest first, the last known by elimination: the sum of rank times weight (recalculated)
		expect(expectedCost).toBeCloseTo(0.3 + 0.44 + 0.51 + 0.48 + 0.5 + 0.36 + 0.18, 12);
	});
});

/* Half-split along a chain of equal links: log2 n questions, against end to end (common practice; recalculated). */
describe('a chain of equal links with its ends seen', () => {
	it.each([
		[8, 3, 4.375],
		[16, 4, 8.4375],
	])('of %d costs %d by halves, and %d from end to end', (links, halves, endToEnd) => {
		const upTo = states(links - 1).map((last) => states(last + 1));
		const problem = unitTests(Array(links).fill(1), upTo);
		expect(sequence(problem, 'exact').expectedCost).toBeCloseTo(halves, 12);
		expect(sequence(problem).expectedCost).toBeCloseTo(halves, 12);
		expect(sequence(problem, 'gain').expectedCost).toBeCloseTo(halves, 12);
		expect(sequence(problem, 'order', { order: states(links - 1) }).expectedCost).toBeCloseTo(endToEnd, 12);
		const { tree } = sequence(problem);
		expect('check' in tree && tree.check).toBe(links / 2 - 1);
	});
});
