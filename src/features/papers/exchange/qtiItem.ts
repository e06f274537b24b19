import { locale } from '#words/locale/index.ts';
import { exportWords } from '#words/papers/index.ts';
import type { Item } from '../../../../shared/paper/index.ts';
import { askedLines, switchId, type WordedChoice, wordedOptions, wordedSwitches } from './asked.ts';

const RESPONSE = 'RESPONSE';
const RIGHT = { identifier: RESPONSE };
/** Most values that a range typed in hexadecimal is written out to. */
const MOST_WRITTEN = 4096;

/**
 * A question as an assessment item, in the names of QTI 2.2 (`qti.ts` turns them into those of 3.0); null for one that is done on
 * the bench, which no platform has.
 * @param title what it is called there
 */
export function qtiItem(item: Item, title: string): Element | null {
	const parts = partsOf(item);
	if (!parts) return null;
	const { declaration, interaction, processing } = parts;
	return element(
		'assessmentItem',
		{ identifier: item.id, title, adaptive: false, timeDependent: false, 'xml:lang': locale.tag },
		declaration,
		element(
			'outcomeDeclaration',
			{ identifier: 'SCORE', cardinality: 'single', baseType: 'float', normalMaximum: 1 },
			element('defaultValue', {}, element('value', {}, '0')),
		),
		element('itemBody', {}, ...askedLines(item).map((line) => element('p', {}, line)), interaction),
		processing,
	);
}

interface Parts {
	readonly declaration: Element;
	readonly interaction: Element;
	readonly processing: Element;
}

function partsOf(item: Item): Parts | null {
	const { ask, key } = item;
	if (ask.form === 'one' && key.form === 'one')
		return matched(declared('single', 'identifier', [key.right]), choice(wordedOptions(item, ask.options), 1));
	if (ask.form === 'several' && key.form === 'several')
		return matched(
			declared('multiple', 'identifier', key.right),
			choice(wordedOptions(item, ask.options), 0, exportWords.severalPrompt),
		);
	if (ask.form === 'switches' && key.form === 'switches')
		return matched(
			declared('multiple', 'identifier', key.up.map(switchId)),
			choice(wordedSwitches(ask), 0, exportWords.switchesPrompt),
		);
	if (ask.form === 'order' && key.form === 'order')
		return matched(
			declared('ordered', 'identifier', key.right),
			element(
				'orderInteraction',
				{ responseIdentifier: RESPONSE, shuffle: false },
				element('prompt', {}, exportWords.orderPrompt),
				...simple(wordedOptions(item, ask.options)),
			),
		);
	if (ask.form === 'match' && key.form === 'match') {
		const pairs = ask.left.map(({ id }) => `${LEFT}${id} ${RIGHT_SIDE}${key.right[id]}`);
		const sides = [wordedOptions(item, ask.left), wordedOptions(item, ask.right)] as const;
		return matched(declared('multiple', 'directedPair', pairs), matching(...sides));
	}
	if (ask.form === 'number' && key.form === 'number') return typed(ask.base, key.within);
	return null;
}

const declared = (cardinality: string, baseType: string, right: readonly string[]): Element =>
	element(
		'responseDeclaration',
		{ identifier: RESPONSE, cardinality, baseType },
		...(right.length === 0
			? []
			: [element('correctResponse', {}, ...right.map((value) => element('value', {}, value)))]),
	);

/** Right where the response is the declared one, or where none is and none was declared; `qtiVersion.ts` has the rule's address. */
const matched = (declaration: Element, interaction: Element): Parts => ({
	declaration,
	interaction,
	processing:
		declaration.inside.length === 0
			? scoredIf(element('isNull', {}, element('variable', RIGHT)))
			: element('responseProcessing', { template: MATCH_CORRECT }),
});

const scoredIf = (rule: Element): Element =>
	element(
		'responseProcessing',
		{},
		element(
			'responseCondition',
			{},
			element(
				'responseIf',
				{},
				rule,
				element('setOutcomeValue', { identifier: 'SCORE' }, element('baseValue', { baseType: 'float' }, '1')),
			),
		),
	);

export const MATCH_CORRECT = 'match_correct';

const simple = (options: readonly WordedChoice[]): Element[] =>
	options.map(({ id, text }) => element('simpleChoice', { identifier: id }, text));

const choice = (options: readonly WordedChoice[], maxChoices: number, prompt?: string): Element =>
	element(
		'choiceInteraction',
		{ responseIdentifier: RESPONSE, shuffle: false, maxChoices },
		...(prompt ? [element('prompt', {}, prompt)] : []),
		...simple(options),
	);

// the two sides letter their options alike, and ids are one set within an item
const LEFT = 'left-';
const RIGHT_SIDE = 'right-';

function matching(left: readonly WordedChoice[], right: readonly WordedChoice[]): Element {
	const side = (options: readonly WordedChoice[], before: string, matchMax: number): Element =>
		element(
			'simpleMatchSet',
			{},
			...options.map(({ id, text }) => element('simpleAssociableChoice', { identifier: before + id, matchMax }, text)),
		);
	return element(
		'matchInteraction',
		{ responseIdentifier: RESPONSE, shuffle: false, maxAssociations: left.length },
		element('prompt', {}, exportWords.matchPrompt),
		side(left, LEFT, 1),
		side(right, RIGHT_SIDE, left.length),
	);
}

type Ranges = readonly { readonly from: number; readonly to: number }[];

function typed(base: 10 | 16, within: Ranges): Parts {
	const first = within[0]?.from ?? 0;
	const right = base === 16 ? hexOf(first) : String(first);
	const rules = base === 16 ? within.flatMap(sameText) : within.map(inRange);
	const one = rules[0];
	return {
		declaration: declared('single', base === 16 ? 'string' : 'integer', [right]),
		interaction: element(
			'p',
			{},
			`${base === 16 ? exportWords.hexPrompt : exportWords.numberPrompt} `,
			element('textEntryInteraction', { responseIdentifier: RESPONSE, expectedLength: 6 }),
		),
		processing: scoredIf(rules.length === 1 && one ? one : element('or', {}, ...rules)),
	};
}

const inRange = ({ from, to }: Ranges[number]): Element =>
	element(
		'and',
		{},
		element('gte', {}, element('variable', RIGHT), element('baseValue', { baseType: 'integer' }, String(from))),
		element('lte', {}, element('variable', RIGHT), element('baseValue', { baseType: 'integer' }, String(to))),
	);

/** Text has no range: each value is written out, with and without its noughts, capitals or not. */
function sameText({ from, to }: Ranges[number]): Element[] {
	const values = Array.from({ length: Math.min(MOST_WRITTEN, to - from + 1) }, (_, i) => from + i);
	const texts = new Set(values.flatMap((value) => [hexOf(value), value.toString(16).toUpperCase()]));
	return [...texts].map((text) =>
		element(
			'stringMatch',
			{ caseSensitive: false },
			element('variable', RIGHT),
			element('baseValue', { baseType: 'string' }, text),
		),
	);
}

const hexOf = (value: number): string => value.toString(16).toUpperCase().padStart(2, '0');

/** An element of XML: name, attributes and what is in it. */
export interface Element {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string | number | boolean>>;
	readonly inside: readonly (Element | string)[];
}

/** An element; what is in it may be elements, text, or nothing. */
export const element = (
	name: string,
	attributes: Element['attributes'] = {},
	...inside: readonly (Element | string)[]
): Element => ({ name, attributes, inside });

/** A whole document of XML 1.0. */
export const xmlText = (root: Element): string => `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`;

function written({ name, attributes, inside }: Element, indent: string): string {
	const open = [name, ...Object.entries(attributes).map(([key, value]) => `${key}="${escaped(String(value))}"`)].join(
		' ',
	);
	if (inside.length === 0) return `${indent}<${open}/>`;
	// text is not laid out: a space more would be another answer
	if (inside.some((each) => typeof each === 'string')) {
		const text = inside.map((each) => (typeof each === 'string' ? escaped(each) : written(each, ''))).join('');
		return `${indent}<${open}>${text}</${name}>`;
	}
	const lines = inside.map((each) => written(each as Element, `${indent}\t`));
	return `${indent}<${open}>\n${lines.join('\n')}\n${indent}</${name}>`;
}

const NAMED: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Characters that XML 1.0 has no way to hold (its production 2, from memory), and halves of characters. */
const UNFIT = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const escaped = (text: string): string =>
	text
		.toWellFormed()
		.replace(UNFIT, ' ')
		.replace(/[&<>"]/g, (char) => NAMED[char] ?? char);
