import { sequence, type TestNode } from '../sequence/index.ts';
import type { Check } from './checks/index.ts';
import { idOf, isMend } from './layout.ts';
import { groundOf, mendSecondsFromFloor } from './route.ts';
import { type Bench, mendFor } from './table.ts';
import type { PlacedMend } from './types.ts';

/** A fault tree to print: what to check, and what each thing seen leads to. */
export type FaultTree =
	| {
			readonly kind: 'check';
			readonly check: Check;
			readonly seconds: number;
			readonly branches: readonly { readonly outcome: string; readonly share: number; readonly tree: FaultTree }[];
	  }
	| {
			readonly kind: 'end';
			readonly suspects: readonly { readonly id: string; readonly share: number }[];
			readonly mends: readonly PlacedMend[];
	  };

export interface PrintedTree {
	/** Expected seconds to the cause if no answer is wrong. */
	readonly expected: number;
	/** How many ends it has: about as many lines as it takes to print. */
	readonly ends: number;
	readonly tree: FaultTree;
}

/**
 * The whole tree for a rig and a complaint, for the lid of the flight case: looks and tries, and at each end what is left and its
 * mends in the order of weight over seconds. Worked out for answers that are never wrong: paper cannot weigh.
 * @param share ends lighter than this share of all are left with their branch's suspects together, so that it fits a page; 0 leaves none out
 */
export function faultTree(bench: Bench, share = 0.004): PrintedTree {
	const ground = groundOf(bench.sheet);
	const asked = bench.checks.flatMap((check, at) => (isMend(check) ? [] : [at]));
	const weights = bench.candidates.map(({ weight }) => weight);
	const all = weights.reduce((sum, weight) => sum + weight, 0);
	const solved = sequence({
		weights,
		costs: asked.map((at) => bench.checks[at]?.seconds ?? 0),
		outcomes: asked.map((at) => bench.outcomes[at] ?? []),
		mends: bench.candidates.map(({ mend }) => mend),
		places: {
			at: ground.indexOf(bench.complaint.fixture),
			of: asked.map((at) => ground.indexOf(bench.checks[at]?.at ?? 'hand')),
			walk: ground.places.map((_, from) =>
				ground.places.map((__, to) => ground.walk[from * ground.places.length + to] ?? 0),
			),
		},
	});
	const shareOf = (list: readonly number[]): number => list.reduce((sum, at) => sum + (weights[at] ?? 0), 0) / all;
	// a fault that came while the rig ran and the same one from before are one on paper
	const suspectsAt = (list: readonly number[]): { readonly id: string; readonly share: number }[] => {
		const shares = new Map<string, number>();
		for (const at of list) shares.set(nameOf(bench, at), (shares.get(nameOf(bench, at)) ?? 0) + shareOf([at]));
		return [...shares].map(([id, share]) => ({ id, share })).sort((a, b) => b.share - a.share);
	};
	let ends = 0;
	const end = (list: readonly number[]): FaultTree => {
		ends++;
		return {
			kind: 'end',
			suspects: suspectsAt(list),
			mends: mendsOf(bench, list, weights),
		};
	};
	const print = (node: TestNode, list: readonly number[]): FaultTree => {
		if (!('check' in node) || shareOf(list) < share) return end(list);
		return {
			kind: 'check',
			check: bench.checks[asked[node.check] ?? 0] as Check,
			seconds: node.cost,
			branches: [...node.branches]
				.sort((a, b) => shareOf(b.suspects) - shareOf(a.suspects))
				.map((branch) => ({
					outcome: `${branch.outcome}`,
					share: shareOf(branch.suspects),
					tree: print(branch.node, branch.suspects),
				})),
		};
	};
	const tree = print(
		solved.tree,
		weights.map((_, at) => at),
	);
	return { expected: solved.expectedCost, ends, tree };
}

const nameOf = (bench: Bench, at: number): string => {
	const candidate = bench.candidates[at];
	return candidate ? idOf(candidate) : '';
};

function mendsOf(bench: Bench, list: readonly number[], weights: readonly number[]): PlacedMend[] {
	const mends = new Map<string, PlacedMend & { weight: number }>();
	for (const at of list) {
		for (const fault of bench.candidates[at]?.faults ?? []) {
			const { id, place } = mendFor(bench.sheet, fault);
			const known = mends.get(`${id}@${place}`) ?? {
				id,
				place,
				seconds: mendSecondsFromFloor(bench.sheet, { id, place }),
				weight: 0,
			};
			mends.set(`${id}@${place}`, { ...known, weight: known.weight + (weights[at] ?? 0) });
		}
	}
	return [...mends.values()]
		.sort((a, b) => b.weight / b.seconds - a.weight / a.seconds)
		.map(({ id, place, seconds }) => ({ id, place, seconds }));
}
