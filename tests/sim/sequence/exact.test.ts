import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sequence } from '../../../sim/sequence/index.ts';
import { runs } from '../../runs.ts';
import { anyProblem } from './arbitrary.ts';
import { naiveOptimum } from './naive.ts';
import { randomProblem, rigLikeProblem, withMendAndSee } from './problems.ts';

const agrees = (found: number, wanted: number) => Math.abs(found - wanted) <= 1e-12 * Math.max(1, wanted);

describe('the exact solver and plain recursion', () => {
	it('agree on any small problem, with repairs, refunds and walking', () => {
		fc.assert(
			fc.property(anyProblem({ suspects: 9, checks: 7, extras: true }), (problem) =>
				agrees(sequence(problem, 'exact').expectedCost, naiveOptimum(problem)),
			),
			{ numRuns: runs(400) },
		);
	});

	it('agree on random problems of 10 to 16 suspects', () => {
		for (let seed = 0; seed < runs(20); seed++) {
			const problem = randomProblem(seed, 10 + (seed % 7));
			expect(agrees(sequence(problem, 'exact').expectedCost, naiveOptimum(problem))).toBe(true);
		}
	});

	it('agree on problems with the grain of a rig, repairs tried among the checks', () => {
		for (let seed = 0; seed < runs(10); seed++) {
			const problem = withMendAndSee(rigLikeProblem(seed, 11, 12), (repair) => 20 + `${repair}`.length * 4);
			expect(agrees(sequence(problem, 'exact').expectedCost, naiveOptimum(problem))).toBe(true);
		}
	});

	it('agree where sums over a mask run past its first fifteen bits', () => {
		// symptom, once: 'optima' that were too low above 22 suspects; cause: weights were summed over 22 bits only
		const chain = (n: number) => ({
			weights: Array.from({ length: n }, () => 1),
			costs: Array.from({ length: n - 1 }, () => 1),
			outcomes: Array.from({ length: n - 1 }, (_, c) => Array.from({ length: n }, (__, s) => (s <= c ? 1 : 0))),
		});
		for (const n of [14, 15, 16, 17, 22, 23, 29, 30]) {
			const problem = chain(n);
			expect(agrees(sequence(problem, 'exact').expectedCost, naiveOptimum(problem))).toBe(true);
		}
	});
});
