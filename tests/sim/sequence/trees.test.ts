import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import { type Policy, sequence, type TestNode, type TestProblem } from '../../../sim/sequence/index.ts';
import { runs } from '../../runs.ts';
import { anyProblem, reordered } from './arbitrary.ts';
import { walkedCost, walkFor } from './problems.ts';

const POLICIES: readonly Policy[] = ['exact', 'rollout', 'gain', 'order'];
const some = { numRuns: runs(150) };
const problems = anyProblem({ suspects: 9, checks: 7, extras: true });
const close = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * (1 + Math.abs(b));

/** Whether some check shows two of these suspects different things. */
function parted(problem: TestProblem, suspects: readonly number[]): boolean {
	return problem.outcomes.some((row) => new Set(suspects.map((suspect) => row[suspect])).size > 1);
}

function repairsOf(problem: TestProblem, suspects: readonly number[]): number {
	return new Set(suspects.map((suspect) => problem.repairs?.[suspect] ?? `own ${suspect}`)).size;
}

function shapeOf(node: TestNode): unknown {
	return 'check' in node
		? [node.check, node.branches.map((each) => [each.outcome, shapeOf(each.node)])]
		: node.suspects;
}

describe.each(POLICIES)('a tree by %s', (policy) => {
	it('costs what walking it for each suspect costs', () => {
		fc.assert(
			fc.property(problems, (problem) => {
				const { tree, expectedCost } = sequence(problem, policy);
				return close(expectedCost, walkedCost(tree, problem));
			}),
			some,
		);
	});

	it('ends only where one repair is left or no check parts those left, and goes on nowhere else', () => {
		fc.assert(
			fc.property(problems, (problem) => {
				const visit = (node: TestNode, suspects: readonly number[]): boolean => {
					const over = repairsOf(problem, suspects) === 1 || !parted(problem, suspects);
					if (!('check' in node)) return over && node.suspects.join() === suspects.join();
					const split = node.branches.flatMap((each) => each.suspects).sort((a, b) => a - b);
					return (
						!over &&
						node.branches.length > 1 &&
						split.join() === suspects.join() &&
						node.branches.every((each) => visit(each.node, each.suspects))
					);
				};
				return visit(
					sequence(problem, policy).tree,
					problem.weights.map((_, i) => i),
				);
			}),
			some,
		);
	});

	it('never makes a check twice on one way', () => {
		fc.assert(
			fc.property(problems, (problem) => {
				const visit = (node: TestNode, made: readonly number[]): boolean =>
					!('check' in node) ||
					(!made.includes(node.check) && node.branches.every((each) => visit(each.node, [...made, node.check])));
				return visit(sequence(problem, policy).tree, []);
			}),
			some,
		);
	});

	it('hangs on the weights only by their shares', () => {
		fc.assert(
			fc.property(problems, fc.integer({ min: -8, max: 8 }), (problem, power) => {
				const scaled = { ...problem, weights: problem.weights.map((weight) => weight * 2 ** power) };
				const [one, other] = [sequence(problem, policy), sequence(scaled, policy)];
				return close(one.expectedCost, other.expectedCost) && JSON.stringify(one.tree) === JSON.stringify(other.tree);
			}),
			some,
		);
	});

	it('is the same tree each time', () => {
		fc.assert(
			fc.property(problems, (problem) => {
				expect(sequence(problem, policy)).toEqual(sequence(structuredClone(problem), policy));
			}),
			{ numRuns: runs(30) },
		);
	});
});

describe('the order in which things are written down', () => {
	it('of suspects and of checks changes nothing in the least cost', () => {
		fc.assert(
			fc.property(problems, fc.integer({ min: 0, max: 1e6 }), (problem, seed) => {
				const random = makeRandom(seed);
				const suspects = random.shuffle(problem.weights.map((_, i) => i));
				const checks = random.shuffle(problem.costs.map((_, i) => i));
				const cost = sequence(reordered(problem, suspects, checks), 'exact').expectedCost;
				return close(cost, sequence(problem, 'exact').expectedCost);
			}),
			some,
		);
	});

	it.each(POLICIES)('of suspects changes nothing in the tree but their numbers (%s)', (policy) => {
		fc.assert(
			fc.property(problems, fc.integer({ min: 0, max: 1e6 }), (problem, seed) => {
				const suspects = makeRandom(seed).shuffle(problem.weights.map((_, i) => i));
				const checks = problem.costs.map((_, i) => i);
				const tree = sequence(problem, policy);
				const other = sequence(reordered(problem, suspects, checks), policy);
				return (
					close(other.expectedCost, tree.expectedCost) &&
					suspects.every((was, now) => {
						const { steps, seconds } = walkFor(tree.tree, problem, was);
						const moved = walkFor(other.tree, reordered(problem, suspects, checks), now);
						return (
							policy === 'exact' || policy === 'rollout' || (steps === moved.steps && close(moved.seconds, seconds))
						);
					})
				);
			}),
			some,
		);
	});
});

describe('policies against each other', () => {
	it('exact costs no more than any other, and rollout no more than gain', () => {
		fc.assert(
			fc.property(problems, (problem) => {
				const [exact, rollout, gain, order] = POLICIES.map((policy) => sequence(problem, policy).expectedCost);
				const most = (a: number | undefined, b: number | undefined) =>
					(a as number) <= (b as number) * (1 + 1e-9) + 1e-9;
				return most(exact, rollout) && most(rollout, gain) && most(exact, order);
			}),
			some,
		);
	});

	it('play alone, solved nowhere exactly but at its ends, costs no more than gain and no less than exact', () => {
		fc.assert(
			fc.property(anyProblem({ suspects: 24, checks: 9, extras: false }), (problem) => {
				const exact = sequence(problem, 'exact').expectedCost;
				const played = sequence(problem, 'rollout', { exactAt: 0 }).expectedCost;
				const gain = sequence(problem, 'gain').expectedCost;
				return exact <= played * (1 + 1e-9) + 1e-9 && played <= gain * (1 + 1e-9) + 1e-9;
			}),
			some,
		);
	});

	it('with no cells to look at, rollout above its exact end is gain', () => {
		fc.assert(
			fc.property(problems, (problem) => {
				const rollout = sequence(problem, 'rollout', { exactAt: 0, cells: 1 });
				expect(shapeOf(rollout.tree)).toEqual(shapeOf(sequence(problem, 'gain').tree));
			}),
			{ numRuns: runs(60) },
		);
	});

	it('one more check to choose from never costs anything', () => {
		fc.assert(
			fc.property(
				anyProblem({ suspects: 8, checks: 6, extras: false }),
				fc.array(fc.nat(2), { minLength: 8 }),
				(problem, row) => {
					const more = {
						...problem,
						costs: [...problem.costs, 30],
						outcomes: [...problem.outcomes, problem.weights.map((_, i) => row[i] as number)],
					};
					const parts = (each: TestProblem) => sequence(each, 'exact');
					// a check that parts what could not be parted before is another question
					const same = problem.weights.every((_, i) =>
						problem.weights.every((__, j) => parted(problem, [i, j]) || !parted(more, [i, j])),
					);
					return !same || parts(more).expectedCost <= parts(problem).expectedCost + 1e-9;
				},
			),
			some,
		);
	});
});
