import { type Node, nodesOf, xmlOf } from './xml-nodes.ts';

/** What may stand in an element at one place: names to choose from, and how often (once where nothing is said). */
export type Particle = readonly [names: string | readonly string[], occurs?: '?' | '*' | '+' | '2'];

/** What a schema says of an element. */
export interface Rule {
	/** Elements in their order; none where nothing is said. */
	readonly inside?: readonly Particle[];
	/** The type of its text, or `mixed` where text may stand between its elements; no text where nothing is said. */
	readonly text?: string;
	/** Type by name, a required one's name ending in `!`. */
	readonly attributes?: Readonly<Record<string, string>>;
	/** `xml:lang` may stand. */
	readonly language?: true;
}

export interface Rules {
	readonly namespace: string;
	/** Simple types of its own: the values in a list, or a restriction's inside. */
	readonly types: Readonly<Record<string, readonly string[] | string>>;
	readonly elements: Readonly<Record<string, Rule>>;
}

const OCCURS = {
	'?': 'minOccurs="0"',
	'*': 'minOccurs="0" maxOccurs="unbounded"',
	'+': 'maxOccurs="unbounded"',
	'2': 'minOccurs="2" maxOccurs="2"',
} as const;

/** The rules as an XML schema. */
export function schemaOf({ namespace, types, elements }: Rules): string {
	const typed = (type: string): string => (type in types ? `q:${type}` : `xs:${type}`);
	const attributes = ({ attributes: list = {}, language }: Rule): string =>
		[
			...Object.entries(list).map(
				([name, type]) =>
					`<xs:attribute name="${name.replace('!', '')}" type="${typed(type)}" ${name.endsWith('!') ? 'use="required"' : ''}/>`,
			),
			language ? '<xs:anyAttribute namespace="http://www.w3.org/XML/1998/namespace" processContents="skip"/>' : '',
		].join('');
	const element = ([name, rule]: [string, Rule]): string => {
		const { inside = [], text } = rule;
		const content =
			text && text !== 'mixed'
				? `<xs:simpleContent><xs:extension base="${typed(text)}">${attributes(rule)}</xs:extension></xs:simpleContent>`
				: `<xs:sequence>${inside.map(particle).join('')}</xs:sequence>${attributes(rule)}`;
		return `<xs:element name="${name}"><xs:complexType mixed="${text === 'mixed'}">${content}</xs:complexType></xs:element>`;
	};
	return `<?xml version="1.0"?><xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:q="${namespace}" targetNamespace="${namespace}" elementFormDefault="qualified">
${Object.entries(types).map(simple).join('\n')}
${Object.entries(elements).map(element).join('\n')}
</xs:schema>`;
}

function particle([names, occurs]: Particle): string {
	const list = [names].flat().map((name) => `<xs:element ref="q:${name}"/>`);
	return `<xs:choice ${occurs ? OCCURS[occurs] : ''}>${list.join('')}</xs:choice>`;
}

const simple = ([name, is]: [string, readonly string[] | string]): string =>
	`<xs:simpleType name="${name}">${typeof is === 'string' ? is : `<xs:restriction base="xs:string">${is.map((value) => `<xs:enumeration value="${value}"/>`).join('')}</xs:restriction>`}</xs:simpleType>`;

/** A document with one thing wrong. */
export interface Spoilt {
	readonly what: string;
	readonly xml: string;
}

/** No number, no list of the standard, no name and no truth is this. */
const NO_VALUE = '-no such value';
const ANYTHING = ['string', 'normalizedString', 'anyURI'];

/** Every way there is here to spoil the first element of each name in a document that keeps to the rules. */
export function spoilt(root: Node, { elements }: Rules): Spoilt[] {
	const all = nodesOf(root);
	const firsts = all.flatMap(({ name }, at) => (all.findIndex((each) => each.name === name) === at ? [at] : []));
	return firsts.flatMap((at) => {
		const { name, attributes, children } = all[at] as Node;
		const rule = elements[name];
		if (!rule) throw new Error(`no rule for ${name}`);
		const made: Spoilt[] = [];
		const spoil = (what: string, change: (node: Node) => void): void => {
			const copy = structuredClone(root);
			change(nodesOf(copy)[at] as Node);
			made.push({ what: `${name}: ${what}`, xml: xmlOf(copy) });
		};
		for (const [key, type] of Object.entries(rule.attributes ?? {})) {
			const plain = key.replace('!', '');
			if (attributes[plain] === undefined) continue;
			if (key !== plain) spoil(`no ${plain}`, (node) => Reflect.deleteProperty(node.attributes, plain));
			if (ANYTHING.includes(type)) continue;
			spoil(`${plain} of no such value`, (node) => Object.assign(node.attributes, { [plain]: NO_VALUE }));
		}
		spoil('an attribute of no schema', (node) => Object.assign(node.attributes, { madeUp: '1' }));
		spoil('an element of no schema', (node) =>
			node.children.push({ name: 'madeUp', attributes: {}, children: [], text: '' }),
		);
		if (!rule.text)
			spoil('text where none may stand', (node) => {
				node.text = 'stray';
			});
		const places = rule.inside ?? [];
		const placeOf = (child: Node): number => places.findIndex(([names]) => [names].flat().includes(child.name));
		for (const [i, child] of children.entries()) {
			const next = children[i + 1];
			if (next && placeOf(next) !== placeOf(child))
				spoil(`${next.name} before ${child.name}`, (node) => node.children.splice(i, 2, next, child));
		}
		for (const [place, [names, occurs]] of places.entries()) {
			const here = children.filter((child) => placeOf(child) === place);
			const [first] = here;
			if (!first) continue;
			const others = (node: Node): Node[] => node.children.filter((child) => placeOf(child) !== place);
			if (occurs !== '?' && occurs !== '*')
				spoil(`no ${names}`, (node) => node.children.splice(0, Infinity, ...others(node)));
			if (occurs !== '+' && occurs !== '*')
				spoil(`${names} once too often`, (node) =>
					node.children.splice(
						node.children.findIndex((child) => placeOf(child) === place),
						0,
						first,
					),
				);
			if (occurs === '2') spoil(`${names} once only`, (node) => node.children.splice(node.children.length - 1, 1));
		}
		return made;
	});
}
