/** A parsed element. Its text is all of its own, run together. */
export interface Node {
	readonly name: string;
	readonly attributes: Record<string, string>;
	readonly children: Node[];
	text: string;
}

/** Reads XML that is known to be well formed. */
export function parseXml(xml: string): Node {
	const top: Node = { name: '', attributes: {}, children: [], text: '' };
	const open = [top];
	for (const [, close, name = '', list = '', empty, text] of xml.matchAll(
		/<(\/?)([\w:-]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>|([^<]+)/g,
	)) {
		const inner = open.at(-1) ?? top;
		if (text !== undefined) inner.text += plain(text);
		else if (close) open.pop();
		else {
			const attributes = Object.fromEntries(
				[...list.matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, plain(value)]),
			);
			const node: Node = { name, attributes, children: [], text: '' };
			inner.children.push(node);
			if (!empty) open.push(node);
		}
	}
	return top.children[0] ?? top;
}

const plain = (text: string): string =>
	text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** The node as XML again, its text before its children. */
export function xmlOf({ name, attributes, children, text }: Node): string {
	const list = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
	return `<${name}${list.join('')}>${escaped(text)}${children.map(xmlOf).join('')}</${name}>`;
}

const escaped = (text: string): string =>
	text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** Every node of that name, in order; of any name where none is given. */
export const nodesOf = (node: Node, name?: string): Node[] => [
	...(name === undefined || node.name === name ? [node] : []),
	...node.children.flatMap((child) => nodesOf(child, name)),
];
