import { parseXml, XmlDocumentType, XmlElement, XmlError } from '@rgrove/parse-xml';
import { InputError } from '../error/index.ts';
import { LIMITS, megabytes } from './limits.ts';

/** An element, with what is text in it left out: GDTF keeps everything in attributes. */
export interface XmlNode {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly children: readonly XmlNode[];
}

/**
 * Reads a text as XML. A document type is refused: it is where entities come from, and GDTF has none.
 * @returns the root
 * @throws InputError `gdtf.xml`
 */
export function readXml(text: string): XmlNode {
	if (text.length > LIMITS.descriptionBytes)
		throw new InputError('gdtf.archive', '', {
			trouble: 'too-large',
			what: 'description',
			megabytes: megabytes(LIMITS.descriptionBytes),
		});
	const whole = parsed(text);
	if (whole.children.some((child) => child instanceof XmlDocumentType))
		throw new InputError('gdtf.xml', '', { trouble: 'document-type' });
	return nodeOf(whole.root as XmlElement, 1);
}

function parsed(text: string): ReturnType<typeof parseXml> {
	try {
		return parseXml(text, { preserveDocumentType: true });
	} catch (error) {
		if (error instanceof XmlError)
			throw new InputError('gdtf.xml', '', { trouble: 'malformed', line: error.line, column: error.column });
		// the parser calls itself for each element in another
		if (error instanceof RangeError) throw tooDeep();
		throw error;
	}
}

const tooDeep = () => new InputError('gdtf.xml', '', { trouble: 'too-deep', limit: LIMITS.depth });

function nodeOf(element: XmlElement, depth: number): XmlNode {
	if (depth > LIMITS.depth) throw tooDeep();
	return {
		name: element.name,
		attributes: element.attributes,
		children: element.children.filter((child) => child instanceof XmlElement).map((child) => nodeOf(child, depth + 1)),
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
