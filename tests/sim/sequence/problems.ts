import { makeRandom } from '../../../shared/random/index.ts';
import type { Outcome, TestNode, TestProblem } from '../../../sim/sequence/index.ts';

/** A random problem: weights .01 to 1.01, `checks` checks of 2 to 4 outcomes at random and of 10 to 180 s. */
export function randomProblem(seed: number, suspects: number, checks = 14): TestProblem {
	const random = makeRandom(seed);
	return {
		weights: Array.from({ length: suspects }, () => random.next() + 0.01),
		costs: Array.from({ length: checks }, () => random.int(10, 180)),
		outcomes: Array.from({ length: checks }, () => {
			const most = random.int(1, 3);
			return Array.from({ length: suspects }, () => random.int(0, most));
		}),
	};
}

/**
 * A problem with the grain of a rig: suspects sit along a line of fixtures; checks halve the line, look at one fixture,
 * tell kinds of fault apart, or swap one part. Some repairs clear several suspects. Invented, for tests only.
 */
export function rigLikeProblem(seed: number, suspects: number, checks: number): TestProblem {
	const random = makeRandom(seed);
	const fixtures = Math.max(2, Math.round(suspects / 6));
	const seat = Array.from({ length: suspects }, (_, i) => i % fixtures);
	const kind = Array.from({ length: suspects }, (_, i) => Math.floor(i / fixtures));
	const outcomes: number[][] = [];
	const costs: number[] = [];
	for (let check = 0; check < checks; check++) {
		const at = random.int(0, fixtures - 1);
		const salt = random.fork(`${check}`);
		const coin = kind.map(() => salt.int(0, 2));
		const byKind = (i: number, most: number) => (coin[kind[i] as number] as number) % most;
		const [low, high, shows] = random.pick<[number, number, (i: number) => number]>([
			[15, 90, (i) => ((seat[i] as number) <= at ? 1 : 0)],
			[5, 60, (i) => (seat[i] === at ? 1 + byKind(i, 3) : 0)],
			[5, 40, (i) => byKind(i, 2)],
			[60, 180, (i) => (seat[i] === at && byKind(i, 2) === 1 ? 1 : 0)],
		]);
		costs.push(random.int(low, high));
		outcomes.push(seat.map((_, i) => shows(i)));
	}
	return {
		weights: seat.map(() => random.next() ** 2 + 0.05),
		costs,
		outcomes,
		repairs: seat.map((at, i) => ((kind[i] as number) === 0 ? `reseat ${at}` : `repair ${i}`)),
	};
}

/** Adds to a problem, for each repair, the check 'repair and see': `seconds` of repairing and 5 of looking. */
export function withMendAndSee(problem: TestProblem, seconds: (repair: Outcome) => number): TestProblem {
	const repairs = problem.repairs ?? problem.weights.map((_, i) => i);
	const names = [...new Set(repairs)];
	return {
		...problem,
		costs: [...problem.costs, ...names.map((repair) => seconds(repair) + 5)],
		outcomes: [
			...problem.outcomes,
			...names.map((name) => repairs.map((repair) => (repair === name ? 'cleared' : 'not'))),
		],
		refunds: [
			...problem.costs.map((_, check) => problem.refunds?.[check] ?? null),
			...names.map((repair) => ({ outcome: 'cleared', seconds: seconds(repair) })),
		],
	};
}

/** The leaf where a suspect ends, and the seconds spent on the way, by walking the tree with the problem's own outcomes. */
export function walkFor(tree: TestNode, problem: TestProblem, suspect: number) {
	let node = tree;
	let seconds = 0;
	let steps = 0;
	while ('check' in node) {
		const shown = problem.outcomes[node.check]?.[suspect];
		const branch = node.branches.find((each) => each.outcome === shown);
		if (branch === undefined) throw new Error(`check ${node.check} has no branch for ${shown}`);
		if (!branch.suspects.includes(suspect)) throw new Error(`suspect ${suspect} is not on its own branch`);
		seconds += node.cost - (branch.refund ?? 0);
		steps++;
		node = branch.node;
	}
	return { leaf: node.suspects, seconds, steps };
}

/** Expected seconds of a tree, by walking it once for each suspect. */
export function walkedCost(tree: TestNode, problem: TestProblem): number {
	const total = problem.weights.reduce((sum, weight) => sum + weight, 0);
	return problem.weights.reduce(
		(sum, weight, suspect) => sum + (weight / total) * walkFor(tree, problem, suspect).seconds,
		0,
	);
}
