import { parseXml, XmlDocumentType, XmlElement, XmlError, XmlText } from '@rgrove/parse-xml';
import { InputError } from '../error/index.ts';
import { LIMITS } from './limits.ts';
import { tooLarge } from './zip.ts';

/** Whose text is read: each has its own sentences. */
export type XmlCode = 'gdtf.xml' | 'mvr.xml';

/** An element. GDTF keeps everything in attributes; MVR keeps values as text. */
export interface XmlNode {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly children: readonly XmlNode[];
	/** What is text right within it, with the space around it cut off. */
	readonly text: string;
}

/**
 * Reads a text as XML. A document type is refused: it is where entities come from, and neither GDTF nor MVR has one.
 * @returns the root
 * @throws InputError of that code; of its archive's for a text that is too large
 */
export function readXml(text: string, code: XmlCode = 'gdtf.xml'): XmlNode {
	if (text.length > LIMITS.descriptionBytes)
		throw tooLarge(code === 'gdtf.xml' ? 'gdtf.archive' : 'mvr.archive', 'description', LIMITS.descriptionBytes);
	const whole = parsed(text, code);
	if (whole.children.some((child) => child instanceof XmlDocumentType))
		throw new InputError(code, '', { trouble: 'document-type' });
	return nodeOf(whole.root as XmlElement, 1, code);
}

function parsed(text: string, code: XmlCode): ReturnType<typeof parseXml> {
	try {
		return parseXml(text, { preserveDocumentType: true });
	} catch (error) {
		if (error instanceof XmlError)
			throw new InputError(code, '', { trouble: 'malformed', line: error.line, column: error.column });
		// the parser calls itself for each element in another
		if (error instanceof RangeError) throw tooDeep(code);
		throw error;
	}
}

const tooDeep = (code: XmlCode) => new InputError(code, '', { trouble: 'too-deep', limit: LIMITS.depth });

function nodeOf(element: XmlElement, depth: number, code: XmlCode): XmlNode {
	if (depth > LIMITS.depth) throw tooDeep(code);
	return {
		name: element.name,
		attributes: element.attributes,
		children: element.children
			.filter((child) => child instanceof XmlElement)
			.map((child) => nodeOf(child, depth + 1, code)),
		text: element.children
			.map((child) => (child instanceof XmlText ? child.text : ''))
			.join('')
			.trim(),
	};
}

/** The children of that name. */
export const childrenOf = (node: XmlNode | undefined, name: string): XmlNode[] =>
	node?.children.filter((child) => child.name === name) ?? [];

/** The first child of that name. */
export const childOf = (node: XmlNode | undefined, name: string): XmlNode | undefined =>
	node?.children.find((child) => child.name === name);

/** The elements in a collect, which is a child that holds a list: `Wheels` of `FixtureType`. */
export const listOf = (node: XmlNode | undefined, collect: string, name: string): XmlNode[] =>
	childrenOf(childOf(node, collect), name);

/** An attribute with the space around it cut off; null where it is not given, or empty. */
export function given(node: XmlNode, attribute: string): string | null {
	const text = node.attributes[attribute]?.trim();
	return text ? text : null;
}
