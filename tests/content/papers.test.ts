import { describe, expect, it } from 'vitest';
import { levelNames, mistakes, questions, topicNames } from '#words/papers/index.ts';
import {
	type ItemMark,
	LEVELS,
	MISTAKE_IDS,
	markPaper,
	PLAIN_KIND_IDS,
	type PlainKindId,
	setPaper,
	TOPIC_IDS,
} from '../../shared/paper/index.ts';
import { RIG_IDS } from '../../shared/sheet/index.ts';
import {
	answerText,
	keyText,
	kindName,
	mistakeText,
	optionText,
	questionAsk,
	questionChart,
	questionText,
	whyText,
	workingText,
} from '../../src/wording/papers.ts';
import { runs } from '../runs.ts';
import { oddProfile } from '../shared/paper/grounds.ts';

describe('words of the papers', () => {
	it('are there for every plain kind, topic, level and mistake, and for no other', () => {
		expect(Object.keys(questions).sort()).toEqual([...PLAIN_KIND_IDS].sort());
		expect(Object.keys(topicNames)).toEqual([...TOPIC_IDS]);
		expect(Object.keys(levelNames)).toEqual([...LEVELS]);
		expect(Object.keys(mistakes)).toEqual([...MISTAKE_IDS]);
	});

	it('name kinds, topics and mistakes apart', () => {
		for (const names of [PLAIN_KIND_IDS.map(kindName), Object.values(topicNames), MISTAKE_IDS.map(mistakeText)]) {
			expect(new Set(names).size).toBe(names.length);
		}
	});

	it.each(MISTAKE_IDS)('%s is one sentence', (id) => {
		expect(mistakeText(id)).toMatch(/^[A-Z][^.!?]*\.$/);
	});

	it.each(PLAIN_KIND_IDS)('%s: fills on every ground and level, as sentences with nothing left open', (kind) => {
		for (let seed = 0; seed < runs(5, 200); seed++) wordsOf(kind, seed);
	});

	it('a label that no option says is not kept, and none is missing', () => {
		const said = new Set<string>();
		for (let seed = 0; seed < 20; seed++) {
			for (const { ask } of setPaper(recipeFor([...PLAIN_KIND_IDS], seed), seed).items) {
				if ('options' in ask) for (const { label } of ask.options) said.add(label.say);
				if (ask.form === 'match') for (const { label } of [...ask.left, ...ask.right]) said.add(label.say);
			}
		}
		const own = Object.values(questions).flatMap((each) => ('labels' in each ? Object.keys(each.labels) : []));
		for (const label of own) expect(said, label).toContain(label);
	});
});

const recipeFor = (kinds: PlainKindId[], seed: number) => ({
	version: 1 as const,
	title: 'Words',
	count: Math.max(12, 2 * kinds.length),
	kinds,
	...(seed % 2 === 0 ? { rig: RIG_IDS[seed % RIG_IDS.length] ?? null } : {}),
	profiles: seed % 3 === 1 ? [] : ['tallow-6', 'cobble'],
	...(seed % 3 === 0 ? { own: [oddProfile(seed)] } : {}),
});

/** What a sentence must not have: a hole, a number that is none, a blank too many, or no end. */
function holdSentence(text: string, what: string): void {
	expect(text, what).not.toMatch(/[{}[\]]|undefined|null|NaN|Infinity| {2}|\d\.\d{3,}/);
	expect(text, what).toMatch(/^[\p{Lu}\d“].*[.?]$/su);
}

function wordsOf(kind: PlainKindId, seed: number): void {
	const paper = setPaper(recipeFor([kind], seed), seed);
	const { items: marks } = markPaper(paper, {});
	for (const [i, item] of paper.items.entries()) {
		const what = `${item.id} ${JSON.stringify(item.facts)}`;
		for (const line of questionText(item).split('\n')) expect(line.trim(), what).not.toBe('');
		holdSentence(questionAsk(item), what);
		holdSentence(whyText(item, marks[i] as ItemMark), what);
		const working = workingText(item).split('\n');
		for (const line of working) holdSentence(line, what);
		const chart = questionChart(item);
		if (chart) {
			expect(chart.over, what).toMatch(/:$/);
			expect(chart.lines.length, what).toBeGreaterThan(0);
			for (const line of chart.lines) expect(line, what).not.toMatch(/[{}[\]]|undefined|null|NaN/);
		}
		if ('options' in item.ask)
			for (const option of item.ask.options) expect(optionText(item, option), what).not.toMatch(/[{}[\]]|undefined/);
		for (const text of [keyText(item), ...item.mistakes.map(({ answer }) => answerText(item, answer))]) {
			expect(text, what).not.toMatch(/[{}[\]]|undefined|null|not there/);
			expect(text.length, what).toBeGreaterThan(0);
		}
		// a question must not say its own answer, unless its chart does
		if (item.key.form === 'number' && item.ask.form === 'number' && item.ask.unit === 'address') {
			const right = item.key.within[0]?.from ?? 0;
			// small numbers and 256 stand in it for other things
			if (right > 60 && right !== 256) expect(questionAsk(item).split(/\D+/), what).not.toContain(String(right));
		}
	}
}
