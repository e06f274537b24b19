import { locale } from '#words/locale/index.ts';
import {
	answers,
	bondWords,
	flagWords,
	labels,
	mistakes,
	type QuestionSays,
	questions,
	settingFound,
	units,
} from '#words/papers/index.ts';
import type { Says } from '#words/rig/index.ts';
import { hexOf } from '../../shared/dmx/index.ts';
import type {
	Answer,
	AnswerKey,
	Item,
	ItemMark,
	KindId,
	Misfit,
	MistakeId,
	Option,
	Say,
} from '../../shared/paper/index.ts';
import { errorText } from './error.ts';
import { type FactWords, fill, sentence, type TemplateFacts } from './fill.ts';
import { listed, plainKinds } from './kinds.ts';
import { modeCalled } from './names.ts';
import { rigChartLines, rigPaperKinds, rigQuestions } from './rigPapers.ts';

const all: Readonly<Record<string, QuestionSays>> = { ...questions, ...rigQuestions };

/** Kinds that papers word facts as, beside the rig's. */
const kinds: FactWords = {
	...plainKinds,
	...rigPaperKinds,
	hex: (n: number) => (n > 255 ? n.toString(16).toUpperCase() : hexOf(n)),
	sum: (numbers: readonly number[]) => numbers.join(answers.plus),
	/** Stretches of values as a flat list: from, to, and so on. */
	stretches: (flat: FlatTable) =>
		listed(inRows(flat, 2).map(([from, to]) => (from === to ? String(from) : fill(answers.upTo, { from, to })))),
	/** Who shares what as a flat list: one, another, from, to, and so on. */
	sharings: (flat: FlatTable) =>
		inRows(flat, 4)
			.map(([first, second, from, to]) => fill(answers.shares, { first, second, from, to, single: from === to }))
			.join(' '),
	inTurn: (names: readonly string[]) => names.join(`${answers.semicolon} `),
	every: (things: readonly (string | number)[]) => everyOne(things.map(String)),
	quotedList: (names: readonly string[]) => everyOne(names.map((name) => fill(answers.quoted, { name }))),
	settingsFound: (flat: FlatTable) =>
		inRows(flat, 3)
			.map(([name, address, mode]) => fill(settingFound, { name, address, mode }))
			.join(' '),
	bondAround: (around: keyof typeof bondWords.around) => bondWords.around[around],
	bondTo: (to: keyof typeof bondWords.to) => bondWords.to[to],
	bondTag: (rated: number) => fill(bondWords.tag, { rated }),
	bondLink: (closed: boolean) => (closed ? bondWords.link.closed : bondWords.link.open),
	bondState: (state: keyof typeof bondWords.state) => bondWords.state[state],
	flawList: (flaws: readonly (keyof typeof bondWords.flaws)[]) => flaws.map((flaw) => bondWords.flaws[flaw]).join(' '),
};

/** A table as a plain fact holds it. */
type FlatTable = (string | number)[];

const inRows = (flat: FlatTable, width: number): FlatTable[] =>
	Array.from({ length: Math.floor(flat.length / width) }, (_, i) => flat.slice(i * width, (i + 1) * width));

/** A list in full, however long. */
const everyOne = (things: readonly string[]): string => locale.list(things);

/** Facts in words, modes among them by what the floor calls them. */
const said = (says: Says, facts: TemplateFacts): string => {
	const called = (fact: unknown) => (typeof fact === 'string' ? modeCalled(fact) : fact);
	const spoken = Object.entries(facts).map(([id, fact]) => [id, Array.isArray(fact) ? fact.map(called) : called(fact)]);
	return sentence(says, Object.fromEntries(spoken), kinds);
};

/** @throws InputError never for an item that `setPaper` set: a test fills every kind. */
const wordsOf = (kind: KindId): QuestionSays => all[kind] as QuestionSays;

/** What a kind of question is called in a list. */
export const kindName = (kind: KindId): string => wordsOf(kind).name;

/** What is asked, in a sentence or two, without the chart it prints. */
export const questionAsk = ({ kind, facts }: Item): string => said(wordsOf(kind).ask, facts);

/** The chart a question prints: what is said over it and its lines; null where it prints none. */
export function questionChart({
	kind,
	facts,
}: Item): { readonly over: string; readonly lines: readonly string[] } | null {
	const { chart } = wordsOf(kind);
	const lines = chart === undefined ? [] : chartLines(facts);
	return chart === undefined || lines.length === 0 ? null : { over: said(chart, facts), lines };
}

/** The whole question: what is asked, then the chart, a line for each; lines are parted by line breaks and read on without them. */
export function questionText(item: Item): string {
	const chart = questionChart(item);
	if (!chart) return questionAsk(item);
	const last = chart.lines.length - 1;
	const lines = chart.lines.map((line, i) => line + (i === last ? answers.stop : answers.semicolon));
	return [questionAsk(item), chart.over, ...lines].join('\n');
}

/** One of a question's options. */
export const optionText = (item: Item, option: Option): string => sayText(item.kind, option.label);

function sayText(kind: KindId, { say, facts }: Say): string {
	const own = wordsOf(kind).labels?.[say] ?? (labels as Readonly<Record<string, Says>>)[say];
	return own === undefined ? say : said(own, facts);
}

/** How the right answer is come by, a line for each step; lines are parted by line breaks and read on without them. */
export const workingText = ({ kind, facts }: Item): string =>
	wordsOf(kind)
		.working.map((step) => said(step, facts))
		.filter((line) => line !== '')
		.join('\n');

/** Why it is so, for who answered so. The mistake has a sentence of its own: `mistakeText`. */
export const whyText = ({ kind, facts }: Item, { right, answered, looksLike }: ItemMark): string =>
	said(wordsOf(kind).why, { ...facts, right, answered, looksLike });

/** What a wrong answer looks like, in a sentence. */
export const mistakeText = (id: MistakeId): string => mistakes[id];

/** An answer in words; undefined is no answer. */
export function answerText(item: Item, answer: Answer | undefined): string {
	if (answer === undefined) return answers.nothing;
	switch (answer.form) {
		case 'one':
			return named(item, answer.chose);
		case 'several':
			return answer.chose.length === 0
				? answers.nothing
				: listed([...answer.chose].sort().map((id) => named(item, id)));
		case 'order':
			return ordered(item, answer.order);
		case 'match':
			return matched(item, answer.pairs);
		case 'switches':
			return switched(answer.up);
		case 'number':
			return numbered(item, answer.value);
		default:
			return answers.done;
	}
}

/** What is right, in words. */
export function keyText(item: Item): string {
	const { key }: { key: AnswerKey } = item;
	if (key.form !== 'number') return answerText(item, asAnswer(key));
	return key.within
		.map(({ from, to }) =>
			from === to ? numbered(item, from) : fill(answers.upTo, { from: typed(item, from), to: numbered(item, to) }),
		)
		.join(answers.or);
}

function asAnswer(key: Exclude<AnswerKey, { form: 'number' }>): Answer {
	switch (key.form) {
		case 'one':
			return { form: 'one', chose: key.right };
		case 'several':
			return { form: 'several', chose: key.right };
		case 'order':
			return { form: 'order', order: key.right };
		case 'match':
			return { form: 'match', pairs: key.right };
		case 'switches':
			return key;
		default:
			return { form: 'practical', log: [] };
	}
}

function optionsOf({ ask }: Item): readonly Option[] {
	if ('options' in ask) return ask.options;
	return [];
}

function named(item: Item, id: string, options = optionsOf(item)): string {
	const option = options.find((each) => each.id === id);
	return option ? optionText(item, option) : answers.unknownOption;
}

const ordered = (item: Item, ids: readonly string[]): string =>
	ids.map((id, i) => fill(answers.numbered, { n: i + 1, text: named(item, id) })).join(' ');

function matched(item: Item, pairs: Readonly<Record<string, string>>): string {
	const { ask } = item;
	if (ask.form !== 'match') return answers.unknownOption;
	const given = new Map(Object.entries(pairs));
	const lines = ask.left.flatMap(({ id, label }) => {
		const right = given.get(id);
		if (right === undefined) return [];
		return [fill(answers.arrow, { left: sayText(item.kind, label), right: named(item, right, ask.right) })];
	});
	return lines.length === 0 ? answers.nothing : lines.join(`${answers.semicolon} `);
}

const switched = (up: readonly number[]): string => fill(answers.switchesUp, { up, none: up.length === 0 }, kinds);

/** A number as it is typed: base 16 with an x before it. */
function typed({ ask }: Item, n: number): string {
	return ask.form === 'number' && ask.base === 16 ? `x${n.toString(16).toUpperCase().padStart(2, '0')}` : String(n);
}

function numbered(item: Item, n: number): string {
	const unit = item.ask.form === 'number' ? item.ask.unit : 'value';
	const says = (units as Readonly<Record<string, Says>>)[unit] ?? units.value;
	return item.ask.form === 'number' && item.ask.base === 16 ? typed(item, n) : fill(says, { n });
}

/** A chart in lines, from the facts that hold one: flat lists, so that they are plain. */
function chartLines(facts: TemplateFacts): string[] {
	const rows = (fact: string, width: number): FlatTable[] => {
		const flat = facts[fact];
		return Array.isArray(flat) ? inRows(flat, width) : [];
	};
	const hex = facts['hex'] === true;
	return [
		...rows('chart', 3).map(([from, to, name]) => fill(answers.bandLine, { from, to, name, single: from === to })),
		...rows('starts', 2).map(([from, name]) => fill(answers.startLine, { from, name, hex }, kinds)),
		...rows('ends', 2).map(([to, name]) => fill(answers.endLine, { to, name, hex }, kinds)),
		...rows('slotChart', 3).map(([n, part, name]) => fill(answers.slotLine, { n, part, name })),
		...rows('slotNames', 2).map(([width, name]) => fill(answers.nameLine, { name, pair: width === 2 })),
		...rows('placed', 3).map(([name, start, footprint]) => fill(answers.placeLine, { name, start, footprint })),
		...rows('draws', 2).map(([name, watts]) => fill(answers.drawLine, { name, watts })),
		...rows('cables', 2).map(([from, to]) => fill(answers.cableLine, { from, to })),
		...rows('modeNames', 2).map(([mode, label]) => fill(answers.modeLine, { mode: modeCalled(String(mode)), label })),
		...rows('patched', 6).map(([name, address, mode, shown, label, shows]) =>
			fill(answers.patchLine, { name, address, mode: modeCalled(String(mode)), shown, label, shows }),
		),
		...rigChartLines(facts),
	];
}

/** Why something of a result does not fit its paper. */
export function misfitText({ code, facts }: Misfit): string {
	if ('error' in facts) return errorText(facts.error);
	const kinds = { list: (known: readonly string[]) => known.join(', ') };
	return sentence(flagWords[code], { expected: null, trouble: null, ...facts }, kinds);
}
