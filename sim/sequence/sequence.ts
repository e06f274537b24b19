import { InputError, requireWhole, shown } from '../../shared/error/index.ts';
import { cutSmall, MOST_EXACT } from './bound.ts';
import { solveExactly } from './exact.ts';
import { type PlanLimits, Planner } from './plan.ts';
import { checkProblem } from './problem.ts';
import { classesOf, pickSuspects, suspectsByRepair, type TableSearch } from './table.ts';
import {
	type Outcome,
	type Policy,
	type SequenceOptions,
	secondsFrom,
	type TestBranch,
	type TestNode,
	type TestProblem,
	type TestTree,
} from './types.ts';

/** Names the next check for those left, or null where none parts them. */
type Chooser = (suspects: Int32Array, here: number) => number | null;

interface MergedSearch {
	readonly search: TableSearch;
	readonly members: readonly (readonly number[])[];
}

/** Puts suspects that no check tells apart together; one that holds different repairs counts as a repair of its own. */
function merge(search: TableSearch): MergedSearch {
	const classes = classesOf(search.table);
	const members: number[][] = [];
	classes.forEach((at, suspect) => {
		members[at] ??= [];
		(members[at] as number[]).push(suspect);
	});
	const lead = members.map((list) => list[0] as number);
	const own = search.weights.length;
	return {
		members,
		search: {
			...search,
			table: pickSuspects(search.table, lead),
			weights: Float64Array.from(members, (list) => list.reduce((sum, s) => sum + (search.weights[s] as number), 0)),
			repairs: Int32Array.from(members, (list, at) => {
				const repair = search.repairs[list[0] as number] as number;
				return list.every((suspect) => search.repairs[suspect] === repair) ? repair : own + at;
			}),
		},
	};
}

/** Cells for one choice unless told: so many times the table, within bounds. */
function usualCells(table: number): number {
	return Math.min(50_000_000, Math.max(4_000_000, 24 * table));
}

/** Checks tried before the exact policy gives up: about the sets of suspects that memory has room for. */
const EXACT_TRIES = 15_000_000;

/** Asks the exact solver, for any set of suspects out of those it was made for. */
function exactChooser(search: TableSearch, suspects: Int32Array, checks: Int32Array, tries?: number): Chooser | null {
	const small = cutSmall(search, suspects, checks);
	const exact = solveExactly(small, tries);
	const bits = new Map(small.members.flatMap((list, at) => list.map((suspect) => [suspect, 1 << at] as const)));
	const choose: Chooser = (left, here) => {
		let mask = 0;
		for (const suspect of left) mask |= bits.get(suspect) as number;
		const at = exact.choice(mask, here);
		return at < 0 ? null : (small.checks[at] as number);
	};
	choose(suspects, 0);
	return exact.over ? null : choose;
}

/** The first check of an order that parts those left. */
function orderChooser(search: TableSearch, order: readonly number[]): Chooser {
	const { cells, suspects: width } = search.table;
	return (left) => {
		const parts = (check: number) => {
			const first = cells[check * width + (left[0] as number)];
			return left.some((suspect) => cells[check * width + suspect] !== first);
		};
		return order.find(parts) ?? null;
	};
}

function requireOrder(order: readonly number[], checks: number): readonly number[] {
	const sorted = [...order].sort((a, b) => a - b);
	if (sorted.length !== checks || sorted.some((check, i) => check !== i)) {
		throw new InputError('sequence.order', 'order', { expected: 'each-check-once', checks });
	}
	return order;
}

const POLICIES: readonly Policy[] = ['exact', 'rollout', 'gain', 'order'];

function requirePolicy(policy: Policy, options: SequenceOptions): void {
	if (!POLICIES.includes(policy)) {
		throw new InputError('sequence.policy', 'policy', { expected: 'one-of', known: POLICIES, found: shown(policy) });
	}
	const limits = { exactAt: [0, MOST_EXACT], leafAt: [1, MOST_EXACT], tries: [1, 1e12], cells: [1, 1e12] } as const;
	for (const path of ['exactAt', 'leafAt', 'tries', 'cells'] as const) {
		const [lo, hi] = limits[path];
		if (options[path] !== undefined) requireWhole(options[path], { lo, hi, code: 'sequence.limit', path, of: 'limit' });
	}
}

/** How far the default policy looks with so many suspects left. */
function limitsFor(suspects: number, cells: number, leafAt?: number): PlanLimits {
	const leaves = suspects <= 64 ? 16 : suspects <= 256 ? 10 : 8;
	return { exactAt: 0, tries: 0, width: 14, leafAt: leafAt ?? leaves, cells };
}

/**
 * Finds which checks to make, in which order, so that the guilty suspect, or one repair that clears all who are left, is
 * found in the fewest expected seconds. Suspects that no check can part end in one leaf.
 *
 * @returns the tree and its expected cost, in the unit of the costs.
 * @throws InputError `sequence.*` for a problem that is none (see `checkProblem`), `sequence.exact-size` for `exact` over
 * more than 30 suspects that checks can part, or over fewer in too many ways, `sequence.policy`, `sequence.order` and `sequence.limit` for options that are none.
 */
export function sequence(problem: TestProblem, policy: Policy = 'rollout', options: SequenceOptions = {}): TestTree {
	requirePolicy(policy, options);
	const { search, members } = merge(checkProblem(problem));
	const { table, seconds, weights, repairs } = search;
	const { costs, places } = problem;
	const { exactAt = 30, tries = 2_000_000, cells = usualCells(table.cells.length) } = options;
	const checks = Int32Array.from(costs, (_, check) => check);
	const everyone = suspectsByRepair(search);
	const planner = new Planner(search);
	let cost = 0;

	function rootChooser(): Chooser {
		if (policy === 'gain') return (left, here) => planner.rank(left, checks, here)[0]?.check ?? null;
		if (policy === 'rollout')
			return (left, here) =>
				planner.plan(left, checks, here, limitsFor(left.length, cells, options.leafAt))?.check ?? null;
		if (policy === 'order') {
			const cheapest = [...checks].sort((a, b) => (costs[a] as number) - (costs[b] as number) || a - b);
			return orderChooser(search, requireOrder(options.order ?? cheapest, checks.length));
		}
		if (everyone.length > MOST_EXACT)
			throw new InputError('sequence.exact-size', 'policy', {
				trouble: 'too-many-suspects',
				limit: MOST_EXACT,
				suspects: everyone.length,
			});
		const chooser = exactChooser(search, everyone, checks, EXACT_TRIES);
		if (chooser) return chooser;
		throw new InputError('sequence.exact-size', 'policy', { trouble: 'not-through', tries: EXACT_TRIES });
	}

	const namesOf = (left: Int32Array) => [...left].flatMap((at) => members[at] as number[]).sort((a, b) => a - b);

	function build(left: Int32Array, here: number, chooser: Chooser): TestNode {
		const repair = repairs[left[0] as number];
		if (left.every((suspect) => repairs[suspect] === repair)) return { suspects: namesOf(left) };
		let choose = chooser;
		if (policy === 'rollout' && chooser === root && left.length <= exactAt) {
			choose = exactChooser(search, left, checks, tries) ?? chooser;
		}
		const check = choose(left, here);
		if (check === null) return { suspects: namesOf(left) };
		const takes = secondsFrom(seconds, here, check);
		const branches: TestBranch[] = [];
		for (let outcome = 0; outcome < (table.counts[check] as number); outcome++) {
			const part = left.filter((suspect) => table.cells[check * table.suspects + suspect] === outcome);
			if (part.length === 0) continue;
			const refund = seconds.refundOutcome[check] === outcome ? (seconds.refund[check] as number) : 0;
			cost += part.reduce((sum, suspect) => sum + (weights[suspect] as number), 0) * (takes - refund);
			branches.push({
				outcome: table.labels[check]?.[outcome] as Outcome,
				suspects: namesOf(part),
				...(refund > 0 ? { refund } : {}),
				node: build(part, seconds.place[check] as number, choose),
			});
		}
		return { check, cost: takes, branches };
	}

	const root = rootChooser();
	const tree = build(everyone, places?.at ?? 0, root);
	return { expectedCost: cost, tree };
}
