import { type Bench, type FaultTree, faultTree, type PrintedTree } from '../../../sim/finder/index.ts';

/** Ends that an A4 page holds in small type and two columns, with the checks that lead to them. Tried out, no source. */
export const MOST_ENDS = 40;

/** Share below which a branch is kept together whatever the room. */
const LEAST_SHARE = 0.004;

/** A tree of at most `most` ends: branches are kept together from the lightest up until it fits. */
export function fittingTree(bench: Bench, most: number = MOST_ENDS): PrintedTree {
	const whole = faultTree(bench, LEAST_SHARE);
	if (whole.ends <= most) return whole;
	const shares = [...new Set(sharesIn(whole.tree, 1))].sort((a, b) => a - b);
	// a branch is kept together where it is lighter: a hair over its own share
	const share = shares.map((each) => each * (1 + 1e-9)).find((each) => endsAt(whole.tree, 1, each) <= most);
	return share === undefined ? whole : faultTree(bench, share);
}

function sharesIn(tree: FaultTree, share: number): number[] {
	if (tree.kind === 'end') return [];
	return [share, ...tree.branches.flatMap((branch) => sharesIn(branch.tree, branch.share))];
}

function endsAt(tree: FaultTree, share: number, least: number): number {
	if (tree.kind === 'end' || share < least) return 1;
	return tree.branches.reduce((sum, branch) => sum + endsAt(branch.tree, branch.share, least), 0);
}
