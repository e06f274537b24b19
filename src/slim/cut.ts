/** What is to go from the code of one file. */
export interface Cut {
	/** Functions, classes, constants and members of objects, by name: they stay, with nothing in them. */
	readonly empty: readonly string[];
	/** Statements and members of classes, by the words they open with: they go. */
	readonly leaveOut: readonly string[];
	/** Expressions, word for word, and what is put in their place. */
	readonly instead: Readonly<Record<string, string>>;
}

/** A node of parsed code (ESTree), as much of it as is looked at. */
interface Node {
	readonly type: string;
	readonly start: number;
	readonly end: number;
	readonly id?: { readonly name?: string } | null;
	/** Of a member of an object. */
	readonly key?: { readonly name?: string };
	/** Of a function or a class. */
	readonly body?: Node;
	/** Of a constant. */
	readonly init?: Node | null;
}

interface Edit {
	readonly start: number;
	readonly end: number;
	readonly put: string;
}

/**
 * Code without what is named.
 * @param program the code, parsed
 * @throws Error where something named is not in it
 */
export function cutCode(code: string, program: object, cut: Cut): string {
	const edits: Edit[] = [];
	const missing = new Set([...cut.empty, ...cut.leaveOut, ...Object.keys(cut.instead)]);
	const edit = (named: string, { start, end }: Node, put: string): true => {
		missing.delete(named);
		edits.push({ start, end, put });
		return true;
	};
	const isCut = (node: Node): boolean => {
		const text = code.slice(node.start, node.end);
		const name = node.id?.name ?? node.key?.name ?? '';
		if (cut.empty.includes(name)) {
			if (node.type === 'Property') return edit(name, node, `${name}: null`);
			if (node.type === 'VariableDeclarator' && node.init) return edit(name, node.init, 'null');
			if (node.type.endsWith('Declaration') && node.body) return edit(name, node.body, '{}');
		}
		const isMember = node.type === 'MethodDefinition';
		const opening =
			isMember || /(Statement|Declaration)$/.test(node.type)
				? cut.leaveOut.find((each) => text.startsWith(each))
				: undefined;
		if (opening !== undefined) return edit(opening, node, isMember ? '' : ';');
		const put = Object.hasOwn(cut.instead, text) ? cut.instead[text] : undefined;
		return put !== undefined && edit(text, node, put);
	};
	const walk = (node: unknown): void => {
		if (typeof node !== 'object' || node === null) return;
		if ('start' in node && isCut(node as Node)) return;
		for (const each of Object.values(node)) walk(each);
	};
	walk(program);
	if (missing.size > 0) throw new Error(`Not in the code, and so not to be left out: ${[...missing].join(' | ')}`);
	return edits
		.toSorted((a, b) => b.start - a.start)
		.reduce((text, { start, end, put }) => text.slice(0, start) + put + text.slice(end), code);
}
