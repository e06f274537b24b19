/**
 * The part of QTI that our items and tests use, as an XML schema of our own. The schemas of 1EdTech are in no registry we may use,
 * so this holds to their published structure: the order within an item, and items of match, order, choice and the test, as in the
 * public examples of 1EdTech (read); text entry, rules and the names of 2.2 (from memory).
 */
export type Version = '2.2' | '3.0';

/** Names in 2.2 and in 3.0, written out, so that nothing here is worked out as it is in the code that is checked. */
const NAMES: Readonly<Record<string, string>> = {
	assessmentItem: 'qti-assessment-item',
	responseDeclaration: 'qti-response-declaration',
	correctResponse: 'qti-correct-response',
	value: 'qti-value',
	outcomeDeclaration: 'qti-outcome-declaration',
	defaultValue: 'qti-default-value',
	itemBody: 'qti-item-body',
	prompt: 'qti-prompt',
	choiceInteraction: 'qti-choice-interaction',
	orderInteraction: 'qti-order-interaction',
	simpleChoice: 'qti-simple-choice',
	matchInteraction: 'qti-match-interaction',
	simpleMatchSet: 'qti-simple-match-set',
	simpleAssociableChoice: 'qti-simple-associable-choice',
	textEntryInteraction: 'qti-text-entry-interaction',
	responseProcessing: 'qti-response-processing',
	responseCondition: 'qti-response-condition',
	responseIf: 'qti-response-if',
	setOutcomeValue: 'qti-set-outcome-value',
	baseValue: 'qti-base-value',
	variable: 'qti-variable',
	and: 'qti-and',
	or: 'qti-or',
	gte: 'qti-gte',
	lte: 'qti-lte',
	isNull: 'qti-is-null',
	stringMatch: 'qti-string-match',
	assessmentTest: 'qti-assessment-test',
	timeLimits: 'qti-time-limits',
	testPart: 'qti-test-part',
	assessmentSection: 'qti-assessment-section',
	assessmentItemRef: 'qti-assessment-item-ref',
	outcomeProcessing: 'qti-outcome-processing',
	sum: 'qti-sum',
	testVariables: 'qti-test-variables',
	p: 'p',
	timeDependent: 'time-dependent',
	baseType: 'base-type',
	normalMaximum: 'normal-maximum',
	responseIdentifier: 'response-identifier',
	maxChoices: 'max-choices',
	maxAssociations: 'max-associations',
	matchMax: 'match-max',
	expectedLength: 'expected-length',
	caseSensitive: 'case-sensitive',
	maxTime: 'max-time',
	navigationMode: 'navigation-mode',
	submissionMode: 'submission-mode',
	variableIdentifier: 'variable-identifier',
};

export const nameIn = (version: Version, name: string): string => (version === '2.2' ? name : (NAMES[name] ?? name));

export const NAMESPACE: Readonly<Record<Version, string>> = {
	'2.2': 'http://www.imsglobal.org/xsd/imsqti_v2p2',
	'3.0': 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
};

type Attribute = readonly [name: string, type: string, required?: 'required'];

/** The schema of one version. */
export function schemaOf(version: Version): string {
	const n = (name: string): string => nameIn(version, name);
	const ref = (name: string, occurs = ''): string => `<xs:element ref="q:${n(name)}" ${occurs}/>`;
	const many = 'minOccurs="0" maxOccurs="unbounded"';
	const some = 'maxOccurs="unbounded"';
	const maybe = 'minOccurs="0"';
	const attributes = (list: readonly Attribute[]): string =>
		list
			.map(([name, type, use]) =>
				name === 'xml:lang' ? '' : `<xs:attribute name="${n(name)}" type="${type}" ${use ? 'use="required"' : ''}/>`,
			)
			.join('');
	const held = (name: string, inside: string, list: readonly Attribute[] = [], mixed = ''): string =>
		`<xs:element name="${n(name)}"><xs:complexType ${mixed}>${inside}${attributes(list)}<xs:anyAttribute namespace="##other" processContents="skip"/></xs:complexType></xs:element>`;
	const seq = (...parts: string[]): string => `<xs:sequence>${parts.join('')}</xs:sequence>`;
	const either = (...parts: string[]): string => `<xs:choice>${parts.join('')}</xs:choice>`;
	const text = (name: string, list: readonly Attribute[] = []): string =>
		`<xs:element name="${n(name)}"><xs:complexType><xs:simpleContent><xs:extension base="xs:string">${attributes(list)}</xs:extension></xs:simpleContent></xs:complexType></xs:element>`;
	const id: Attribute = ['identifier', 'q:id', 'required'];
	const response: Attribute = ['responseIdentifier', 'q:id', 'required'];
	const shuffle: Attribute = ['shuffle', 'xs:boolean', 'required'];
	const rules = ['and', 'or', 'gte', 'lte', 'isNull', 'stringMatch'].map((rule) => ref(rule));
	const values = either(ref('variable'), ref('baseValue'), ref('sum'), ref('testVariables'));
	const two = seq(values, values);
	return `<?xml version="1.0"?><xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:q="${NAMESPACE[version]}" targetNamespace="${NAMESPACE[version]}" elementFormDefault="qualified">
<xs:simpleType name="id"><xs:restriction base="xs:string"><xs:pattern value="[A-Za-z_][A-Za-z0-9_.\\-]*"/><xs:maxLength value="64"/></xs:restriction></xs:simpleType>
${choiceOf('cardinality', ['single', 'multiple', 'ordered', 'record'])}
${choiceOf('baseType', ['identifier', 'boolean', 'integer', 'float', 'string', 'point', 'pair', 'directedPair', 'duration', 'file', 'uri'])}
${choiceOf('navigation', ['linear', 'nonlinear'])}${choiceOf('submission', ['individual', 'simultaneous'])}
${held('assessmentItem', seq(ref('responseDeclaration', many), ref('outcomeDeclaration', many), ref('itemBody', maybe), ref('responseProcessing', maybe)), [id, ['title', 'xs:string', 'required'], ['adaptive', 'xs:boolean', 'required'], ['timeDependent', 'xs:boolean', 'required']])}
${held('responseDeclaration', seq(ref('correctResponse', maybe)), [id, ['cardinality', 'q:cardinality', 'required'], ['baseType', 'q:baseType']])}
${held('outcomeDeclaration', seq(ref('defaultValue', maybe)), [id, ['cardinality', 'q:cardinality', 'required'], ['baseType', 'q:baseType'], ['normalMaximum', 'xs:double']])}
${held('correctResponse', seq(ref('value', some)))}${held('defaultValue', seq(ref('value', some)))}${text('value')}
${held('itemBody', `<xs:choice ${many}>${['p', 'choiceInteraction', 'orderInteraction', 'matchInteraction'].map((each) => ref(each)).join('')}</xs:choice>`)}
${held('p', `<xs:choice ${many}>${ref('textEntryInteraction')}</xs:choice>`, [], 'mixed="true"')}
${text('prompt')}${text('simpleChoice', [id])}${text('simpleAssociableChoice', [id, ['matchMax', 'xs:nonNegativeInteger', 'required']])}
${held('choiceInteraction', seq(ref('prompt', maybe), ref('simpleChoice', some)), [response, shuffle, ['maxChoices', 'xs:nonNegativeInteger', 'required']])}
${held('orderInteraction', seq(ref('prompt', maybe), ref('simpleChoice', some)), [response, shuffle])}
${held('matchInteraction', seq(ref('prompt', maybe), ref('simpleMatchSet', 'minOccurs="2" maxOccurs="2"')), [response, shuffle, ['maxAssociations', 'xs:nonNegativeInteger', 'required']])}
${held('simpleMatchSet', seq(ref('simpleAssociableChoice', many)))}
${held('textEntryInteraction', '', [response, ['expectedLength', 'xs:nonNegativeInteger']])}
${held('responseProcessing', `<xs:sequence>${ref('responseCondition', many)}</xs:sequence>`, [['template', 'xs:anyURI']])}
${held('responseCondition', seq(ref('responseIf')))}
${held('responseIf', seq(either(...rules), ref('setOutcomeValue', many)))}
${held('setOutcomeValue', values, [id])}
${held('and', `<xs:choice ${some}>${rules.join('')}</xs:choice>`)}${held('or', `<xs:choice ${some}>${rules.join('')}</xs:choice>`)}
${held('gte', two)}${held('lte', two)}${held('isNull', values)}${held('stringMatch', two, [['caseSensitive', 'xs:boolean', 'required']])}
${held('variable', '', [id])}${text('baseValue', [['baseType', 'q:baseType', 'required']])}
${held('assessmentTest', seq(ref('outcomeDeclaration', many), ref('timeLimits', maybe), ref('testPart', some), ref('outcomeProcessing', maybe)), [id, ['title', 'xs:string', 'required']])}
${held('timeLimits', '', [['maxTime', 'xs:double']])}
${held('testPart', seq(ref('assessmentSection', some)), [id, ['navigationMode', 'q:navigation', 'required'], ['submissionMode', 'q:submission', 'required']])}
${held('assessmentSection', seq(ref('assessmentItemRef', many)), [id, ['title', 'xs:string', 'required'], ['visible', 'xs:boolean', 'required']])}
${held('assessmentItemRef', '', [id, ['href', 'xs:anyURI', 'required']])}
${held('outcomeProcessing', seq(ref('setOutcomeValue', many)))}
${held('sum', `<xs:choice ${some}>${ref('testVariables')}${ref('variable')}</xs:choice>`)}${held('testVariables', '', [['variableIdentifier', 'q:id', 'required']])}
</xs:schema>`;
}

const choiceOf = (name: string, values: readonly string[]): string =>
	`<xs:simpleType name="${name}"><xs:restriction base="xs:string">${values.map((value) => `<xs:enumeration value="${value}"/>`).join('')}</xs:restriction></xs:simpleType>`;

/** A parsed element. */
export interface Node {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
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

/** Every node of that name, in order. */
export const nodesOf = (node: Node, name: string): Node[] => [
	...(node.name === name ? [node] : []),
	...node.children.flatMap((child) => nodesOf(child, name)),
];
