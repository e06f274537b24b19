import { sequence, type TestNode } from '../sequence/index.ts';
import type { Check } from './checks/index.ts';
import { idOf } from './layout.ts';
import { groundOf, repairSecondsFromFloor } from './route.ts';
import { type RigOutcomes, repairFor } from './table.ts';
import { isRepair, repairAtText } from './tried.ts';
import type { PlacedRepair } from './types.ts';

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
			readonly repairs: readonly PlacedRepair[];
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
 * repairs in the order of weight over seconds. Worked out for answers that are never wrong: paper cannot weigh.
 * @param share ends lighter than this share of all are left with their branch's suspects together, so that it fits a page; 0 leaves none out
 */
export function faultTree(table: RigOutcomes, share = 0.004): PrintedTree {
	const ground = groundOf(table.sheet);
	const asked = table.checks.flatMap((check, at) => (isRepair(check) ? [] : [at]));
	const weights = table.candidates.map(({ weight }) => weight);
	const all = weights.reduce((sum, weight) => sum + weight, 0);
	const solved = sequence({
		weights,
		costs: asked.map((at) => table.checks[at]?.seconds ?? 0),
		outcomes: asked.map((at) => table.outcomes[at] ?? []),
		repairs: table.candidates.map(({ repair }) => repair),
		places: {
			at: ground.indexOf(table.complaint.fixture),
			of: asked.map((at) => ground.indexOf(table.checks[at]?.at ?? 'hand')),
			walk: ground.places.map((_, from) =>
				ground.places.map((__, to) => ground.walk[from * ground.places.length + to] ?? 0),
			),
		},
	});
	const shareOf = (list: readonly number[]): number => list.reduce((sum, at) => sum + (weights[at] ?? 0), 0) / all;
	// a fault that came while the rig ran and the same one from before are one on paper
	const suspectsAt = (list: readonly number[]): { readonly id: string; readonly share: number }[] => {
		const shares = new Map<string, number>();
		for (const at of list) shares.set(nameOf(table, at), (shares.get(nameOf(table, at)) ?? 0) + shareOf([at]));
		return [...shares].map(([id, share]) => ({ id, share })).sort((a, b) => b.share - a.share);
	};
	let ends = 0;
	const end = (list: readonly number[]): FaultTree => {
		ends++;
		return {
			kind: 'end',
			suspects: suspectsAt(list),
			repairs: repairsOf(table, list, weights),
		};
	};
	const print = (node: TestNode, list: readonly number[]): FaultTree => {
		if (!('check' in node) || shareOf(list) < share) return end(list);
		return {
			kind: 'check',
			check: table.checks[asked[node.check] ?? 0] as Check,
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

const nameOf = (table: RigOutcomes, at: number): string => {
	const candidate = table.candidates[at];
	return candidate ? idOf(candidate) : '';
};

function repairsOf(table: RigOutcomes, list: readonly number[], weights: readonly number[]): PlacedRepair[] {
	const repairs = new Map<string, PlacedRepair & { weight: number }>();
	for (const at of list) {
		for (const fault of table.candidates[at]?.faults ?? []) {
			const { id, place } = repairFor(table.sheet, fault);
			const text = repairAtText({ id, place });
			const known = repairs.get(text) ?? {
				id,
				place,
				seconds: repairSecondsFromFloor(table.sheet, { id, place }),
				weight: 0,
			};
			repairs.set(text, { ...known, weight: known.weight + (weights[at] ?? 0) });
		}
	}
	return [...repairs.values()]
		.sort((a, b) => b.weight / b.seconds - a.weight / a.seconds)
		.map(({ id, place, seconds }) => ({ id, place, seconds }));
}
