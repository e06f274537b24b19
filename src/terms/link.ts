import { finderOf } from './find.ts';

/** A node of the tree, as far as it is looked at. */
export interface Node {
	type: string;
	tagName?: string;
	value?: string;
	properties?: Record<string, unknown>;
	children?: Node[];
}

/** Only lessons are linked. */
const LESSON = /[\\/]content[\\/]lessons[\\/]/;
const LEFT_ALONE = new Set(['a', 'code', 'pre', 'h1', 'h2', 'h3', 'h4']);

/** A plugin for the tree of an MDX file: each term of the glossary is a link where it first stands. */
export function linkTerms(): (tree: Node, file: { readonly path?: string }) => void {
	return (tree, { path = '' }) => {
		if (LESSON.test(path)) link(tree, finderOf());
	};
}

function link(node: Node, find: ReturnType<typeof finderOf>): void {
	if (!node.children || (node.tagName !== undefined && LEFT_ALONE.has(node.tagName))) return;
	// what a component holds is its own
	if (node.type.startsWith('mdxJsx')) return;
	node.children = node.children.flatMap((child) => {
		if (child.type === 'text') return linked(child.value ?? '', find);
		link(child, find);
		return child;
	});
}

function linked(text: string, find: ReturnType<typeof finderOf>): Node[] {
	const nodes: Node[] = [];
	let at = 0;
	for (const { id, from, to } of find(text)) {
		if (from > at) nodes.push({ type: 'text', value: text.slice(at, from) });
		nodes.push({
			type: 'element',
			tagName: 'a',
			properties: { href: `/glossary/#${id}`, className: ['term'] },
			children: [{ type: 'text', value: text.slice(from, to) }],
		});
		at = to;
	}
	if (at < text.length) nodes.push({ type: 'text', value: text.slice(at) });
	return nodes;
}
