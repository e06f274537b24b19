import type { Particle, Rule, Rules } from './xml-rules.ts';

/**
 * The part of QTI that our items and tests use, as rules of our own: names, order, attributes, values. Read type by type in the
 * schemas of 1EdTech and written from them, not copied. 2.2: `imsqti_v2p2.xsd` (QTI ASI 2.2, types named as `ItemBody.Type`; the
 * item, its parts and values again in 2.2.4). 3.0: `imsqti_asiv3p0_sbacv1p0_v1p0.xsd`, a profile of QTI ASI 3.0 (types named as
 * `ItemBodyDType`) that lists its changes to it, none in what we write. A type is called as its element is, unless a note says. What
 * we never write is not here: what keeps to this keeps to the schema, not the other way round.
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

// narrower than the schemas, which let any expression stand in any: a condition must be a truth (3.0, the words of ResponseIfDType);
// that what `and` and `or` join must be, too, is from memory
const TRUTHS = ['and', 'or', 'gte', 'lte', 'isNull', 'stringMatch'];
const VALUES = ['variable', 'baseValue', 'sum', 'testVariables'];

const named = { 'identifier!': 'name' };
/** Whole items, tests and their parts: any text in 2.2, a name in 3.0. */
const called = { 'identifier!': 'called' };
const asks = { 'responseIdentifier!': 'name', shuffle: 'boolean' };

const ELEMENTS: Readonly<Record<string, Rule>> = {
	assessmentItem: {
		inside: [
			['responseDeclaration', '*'],
			['outcomeDeclaration', '*'],
			['itemBody', '?'],
			['responseProcessing', '?'],
		],
		attributes: { ...called, 'title!': 'normalizedString', adaptive: 'boolean', 'timeDependent!': 'boolean' },
		language: true,
	},
	responseDeclaration: {
		inside: [['correctResponse', '?']],
		attributes: { 'identifier!': 'ID', 'cardinality!': 'cardinality', baseType: 'baseType' },
	},
	outcomeDeclaration: {
		inside: [['defaultValue', '?']],
		attributes: { ...named, 'cardinality!': 'cardinality', baseType: 'baseType', normalMaximum: 'notNegative' },
	},
	correctResponse: { inside: [['value', '+']] },
	defaultValue: { inside: [['value', '+']] },
	value: { text: 'normalizedString' },
	// blocks only, never bare text and never an entry for text: those stand in a block, as HTMLText has them
	itemBody: { inside: [[['p', 'choiceInteraction', 'orderInteraction', 'matchInteraction'], '+']], language: true },
	// HTMLText
	p: { inside: [['textEntryInteraction', '*']], text: 'mixed', language: true },
	prompt: { text: 'string', language: true },
	simpleChoice: { text: 'string', attributes: named, language: true },
	simpleAssociableChoice: {
		text: 'string',
		attributes: { ...named, 'matchMax!': 'nonNegativeInteger' },
		language: true,
	},
	// BasePromptInteraction, then its own
	choiceInteraction: {
		inside: [
			['prompt', '?'],
			['simpleChoice', '+'],
		],
		attributes: { ...asks, maxChoices: 'nonNegativeInteger' },
		language: true,
	},
	orderInteraction: {
		inside: [
			['prompt', '?'],
			['simpleChoice', '+'],
		],
		attributes: asks,
		language: true,
	},
	matchInteraction: {
		inside: [
			['prompt', '?'],
			['simpleMatchSet', '2'],
		],
		attributes: { ...asks, maxAssociations: 'nonNegativeInteger' },
		language: true,
	},
	simpleMatchSet: { inside: [['simpleAssociableChoice', '*']] },
	textEntryInteraction: {
		attributes: { 'responseIdentifier!': 'IDREF', expectedLength: 'nonNegativeInteger' },
		language: true,
	},
	responseProcessing: { inside: [['responseCondition', '*']], attributes: { template: 'anyURI' } },
	responseCondition: { inside: [['responseIf']] },
	responseIf: { inside: [[TRUTHS], ['setOutcomeValue', '*']] },
	// SetValue
	setOutcomeValue: { inside: [[VALUES]], attributes: named },
	// Logic1toMany
	and: { inside: [[TRUTHS, '+']] },
	or: { inside: [[TRUTHS, '+']] },
	// LogicPair
	gte: { inside: [[VALUES, '2']] },
	lte: { inside: [[VALUES, '2']] },
	// LogicSingle
	isNull: { inside: [[VALUES]] },
	stringMatch: { inside: [[VALUES, '2']], attributes: { 'caseSensitive!': 'boolean' } },
	variable: { attributes: named },
	baseValue: { text: 'string', attributes: { 'baseType!': 'baseType' } },
	assessmentTest: {
		inside: [
			['outcomeDeclaration', '*'],
			['timeLimits', '?'],
			['testPart', '+'],
			['outcomeProcessing', '?'],
		],
		attributes: { ...called, 'title!': 'normalizedString' },
	},
	timeLimits: { attributes: { maxTime: 'notNegative' } },
	testPart: {
		inside: [['assessmentSection', '+']],
		attributes: { ...called, 'navigationMode!': 'navigation', 'submissionMode!': 'submission' },
	},
	assessmentSection: {
		inside: [['assessmentItemRef', '*']],
		attributes: { ...called, 'title!': 'normalizedString', 'visible!': 'boolean' },
	},
	assessmentItemRef: { attributes: { ...called, 'href!': 'anyURI' } },
	outcomeProcessing: { inside: [['setOutcomeValue', '*']] },
	// NumericLogic1toMany
	sum: { inside: [[VALUES, '+']] },
	testVariables: { attributes: { 'variableIdentifier!': 'name' } },
};

const TYPES: Rules['types'] = {
	// Identifier: a name of XML without a colon
	name: '<xs:restriction base="xs:NCName"/>',
	notNegative: '<xs:restriction base="xs:double"><xs:minInclusive value="0.0"/></xs:restriction>',
	cardinality: ['multiple', 'ordered', 'record', 'single'],
	baseType: 'boolean directedPair duration file float identifier integer pair point string uri'.split(' '),
	navigation: ['linear', 'nonlinear'],
	submission: ['individual', 'simultaneous'],
};

/** The rules of one version, in its own names. */
export function rulesOf(version: Version): Rules {
	const n = (name: string): string => nameIn(version, name);
	const elements = Object.entries(ELEMENTS).map(([name, { inside = [], attributes = {}, ...rest }]) => {
		const places = inside.map(([names, ...occurs]): Particle => [[names].flat().map(n), ...occurs]);
		const list = Object.entries(attributes).map(([key, type]) => [
			key.endsWith('!') ? `${n(key.slice(0, -1))}!` : n(key),
			type === 'called' ? (version === '2.2' ? 'normalizedString' : 'name') : type,
		]);
		return [n(name), { ...rest, inside: places, attributes: Object.fromEntries(list) }] as const;
	});
	return { namespace: NAMESPACE[version], types: TYPES, elements: Object.fromEntries(elements) };
}
