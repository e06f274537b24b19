import { cautions, siteFirst } from '#words/cautions/index.ts';
import type { TreeNode, TreeView } from './view.ts';

/** Causes and mends said at one end before the rest is only counted: paper is short. */
export const MOST_SAID = 3;

/** Characters that a line of a column holds on A4, and of those that each level takes; tried out on paper, no source. */
const WIDE = 72;
const LEVEL = 1.6;

/** Lines that both columns hold together, cautions under them not counted. Tried out on paper, no source. */
export const PAGE_LINES = 172;

/** Lines that a tree takes on paper, in the columns' lines: a line right across counts as two. */
export const linesOf = ({ root, cautions: ids }: TreeView): number =>
	nodeLines(root, 0) + 2 * (2 + ids.reduce((sum, id) => sum + across(noteOf(id)), across(siteFirst)));

const noteOf = (id: TreeView['cautions'][number]): string => {
	const { title, harm, care } = cautions[id];
	return `A. ${title}. ${harm} ${care[0]}`;
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
	const { causes, mends } = node;
	const said = causes.slice(0, MOST_SAID).reduce((sum, { name }) => sum + name.length + 2, 0);
	const more = causes.length > MOST_SAID ? BESIDE / 2 : 0;
	return (
		down(said + more, depth) +
		mends.slice(0, MOST_SAID).reduce((sum, { title }) => sum + down(title.length + BESIDE, depth), 0) +
		(mends.length > MOST_SAID ? 1 : 0)
	);
}
