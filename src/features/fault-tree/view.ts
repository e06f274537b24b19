import { type CautionId, cautions, siteFirst } from '#words/cautions/index.ts';
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
export interface TreeCheck {
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
	readonly repairs: readonly {
		readonly title: string;
		readonly seconds: number;
		readonly cautions: readonly CautionId[];
	}[];
}

export type TreeNode = TreeCheck | EndNode;

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

/** Causes and repairs said at one end before the rest is only counted: paper is short. */
export const MOST_SAID = 3;

/** Characters that a line of a column holds on A4 in 10 pt, and of those that each level takes; tried out on paper, no source. */
const WIDE = 50;
const LEVEL = 1.1;

/** Lines that two columns of two sheets hold together, cautions counted, on the shorter paper. Tried out on paper, no source. */
export const PAGE_LINES = 232;

/** Lines that a tree takes on paper, in the columns' lines: a line right across counts as two. */
export const linesOf = ({ root, cautions: ids }: TreeView): number =>
	nodeLines(root, 0) + 2 * (2 + ids.reduce((sum, id) => sum + across(noteOf(id)), across(siteFirst)));

const noteOf = (id: TreeView['cautions'][number]): string => {
	const { title, harm, care } = cautions[id];
	return `overhead: ${title}. ${harm} ${care[0]}`;
};

const across = (text: string): number => Math.ceil(text.length / (2 * WIDE));

const down = (length: number, depth: number): number => Math.max(1, Math.ceil(length / (WIDE - LEVEL * depth)));

/** Room for a check's sort, its seconds and its cautions, and for a share or a number. */
const BESIDE = 16;

function nodeLines(node: TreeNode, depth: number): number {
	if (node.kind === 'check')
		return (
			down(node.title.length + BESIDE, depth) +
			node.branches.reduce(
				(sum, { seen, node: next }) => sum + down(seen.length + BESIDE / 4, depth + 1) + nodeLines(next, depth + 1),
				0,
			)
		);
	const { causes, repairs } = node;
	const said = causes.slice(0, MOST_SAID).reduce((sum, { name }) => sum + name.length + 2, 0);
	const more = causes.length > MOST_SAID ? BESIDE / 2 : 0;
	return (
		down(said + more, depth) +
		repairs.slice(0, MOST_SAID).reduce((sum, { title }) => sum + down(title.length + BESIDE, depth), 0) +
		(repairs.length > MOST_SAID ? 1 : 0)
	);
}

/** What a fragment asks for. */
export type TreeRequest =
	| { readonly is: 'tree'; readonly of: TreeOf }
	| { readonly is: 'nothing' }
	/** Not of the right form, or of a rig not known; whether rig, fixture and complaint go together the worker says. */
	| { readonly is: 'bad' };

/** Reads a fragment, with or without its `#`. @param rigs ids that are known */
export function readTreeLink(fragment: string, rigs: readonly string[]): TreeRequest {
	const text = fragment.replace(/^#/, '');
	if (text === '') return { is: 'nothing' };
	const [, rig = '', fixture = '', complaint = ''] =
		/^rig=([a-z0-9-]{1,40})&fixture=([a-z0-9-]{1,40})&complaint=([a-z-]{1,40})$/.exec(text) ?? [];
	if (!rigs.includes(rig)) return { is: 'bad' };
	return { is: 'tree', of: { rig, fixture, complaint: complaint as TreeOf['complaint'] } };
}

/** The fragment, with its `#`, that asks for a tree. */
export const treeLink = ({ rig, fixture, complaint }: TreeOf): string =>
	`#rig=${rig}&fixture=${fixture}&complaint=${complaint}`;
