import type { CautionId } from '#words/cautions/index.ts';
import type { CheckSort, ComplaintKind } from '../../../sim/finder/index.ts';

/** What the worker hands the page: words and numbers. */

/** The rig that the finder stands at on this device. */
export const FINDERS = 'finder';

/** Which tree: a bundled rig or the finder's own, one of its fixtures, and what is wrong with it. */
export interface TreeOf {
	readonly rig: string;
	readonly fixture: string;
	readonly complaint: ComplaintKind;
}

export interface NamedView {
	readonly id: string;
	readonly name: string;
}

/** A check with what each thing seen leads to. */
export interface CheckNode {
	readonly kind: 'check';
	readonly title: string;
	readonly sort: CheckSort;
	/** The walk there and the doing. */
	readonly seconds: number;
	readonly cautions: readonly CautionId[];
	readonly branches: readonly {
		readonly seen: string;
		/** Of all suspects by weight, 0 to 1. */
		readonly share: number;
		readonly node: TreeNode;
	}[];
}

/** What is left, and what to do about it in order. */
export interface EndNode {
	readonly kind: 'end';
	/** Heaviest first; those alike in words are one. */
	readonly causes: readonly { readonly name: string; readonly share: number }[];
	readonly mends: readonly {
		readonly title: string;
		readonly seconds: number;
		readonly cautions: readonly CautionId[];
	}[];
}

export type TreeNode = CheckNode | EndNode;

export interface TreeView {
	readonly rig: string;
	/** With no full stop. */
	readonly complaint: string;
	readonly suspects: number;
	/** Expected seconds to the cause. */
	readonly expected: number;
	readonly ends: number;
	/** Of all that the tree names, in the catalogue's order. */
	readonly cautions: readonly CautionId[];
	readonly root: TreeNode;
}
