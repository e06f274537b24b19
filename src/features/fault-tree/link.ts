import type { TreeOf } from './view.ts';

/** What a fragment asks for. */
export type Asked =
	| { readonly is: 'tree'; readonly of: TreeOf }
	| { readonly is: 'nothing' }
	/** Not of the right form, or of a rig not known; whether rig, fixture and complaint go together the worker says. */
	| { readonly is: 'bad' };

/** Reads a fragment, with or without its `#`. @param rigs ids that are known */
export function readTreeLink(fragment: string, rigs: readonly string[]): Asked {
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
