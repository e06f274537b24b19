import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInputError } from '../../../shared/error/index.ts';
import {
	markPaper,
	type PaperRecipeInput,
	PLAIN_KIND_IDS,
	readAnswers,
	readPaper,
	readRecipe,
	setPaper,
} from '../../../shared/paper/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { changed, changes, throughJson, withPut } from '../json.ts';
import { thrownBy } from '../thrown.ts';
import { oddProfile } from './grounds.ts';

const recipe: PaperRecipeInput = {
	version: 1,
	title: 'Prep night',
	count: 23,
	kinds: [...PLAIN_KIND_IDS],
	own: [oddProfile(3)],
	profiles: ['cobble'],
};
const paper = setPaper(recipe, 2);
const answers = Object.fromEntries(paper.items.map(({ id, mistakes }) => [id, mistakes[0]?.answer]));

/** A list in a list in a list ... */
const deep = (levels: number): unknown => JSON.parse('['.repeat(levels) + ']'.repeat(levels));

describe('papers, answers and recipes from outside', () => {
	it('come through unchanged where they are sound', () => {
		expect(readPaper(throughJson(paper))).toEqual(paper);
		expect(readAnswers(throughJson(answers))).toEqual(answers);
		expect(readRecipe(throughJson(paper.recipe))).toEqual(paper.recipe);
	});

	it.each<[string, unknown]>([
		['nothing', null],
		['a text', 'paper'],
		['a list', []],
		['another version', withPut(paper, { version: 2 })],
		['no mark', withPut(paper, { mark: undefined })],
		['a mark that is none', withPut(paper, { mark: '<script>' })],
		['no questions', withPut(paper, { items: [] })],
		['a seed too high', withPut(paper, { seed: 2 ** 32 })],
		['an id of another shape', withPut(paper, { 'items[0].id': '__proto__' })],
		['a kind of its own', withPut(paper, { 'items[0].kind': 'trick' })],
		['depth', withPut(paper, { 'items[0].facts': { deep: deep(40) } })],
		['great depth', deep(20_000)],
		['one thing more', withPut(paper, { extra: 1 })],
		['a long text', withPut(paper, { 'recipe.title': 'x'.repeat(1e6) })],
	])('a paper with %s is refused with a place and a sentence', (_, input) => {
		const error = thrownBy(() => readPaper(input));
		expect(error.code).toBe('paper.shape');
		expect(errorText(error)).toMatch(/^The quiz .*\.$/s);
		expect(errorText(error).length).toBeLessThan(800);
	});

	it.each<[string, string]>([
		['a barred name', '{"__proto__": {"form": "number", "value": 1}}'],
		['a barred name', '{"constructor": {"form": "number", "value": 1}}'],
		['a barred name within', '{"match-slots-01234567": {"form": "match", "pairs": {"__proto__": "a"}}}'],
		['a number too great', '{"last-slot-01234567": {"form": "number", "value": 1e300}}'],
		['no finite number', '{"last-slot-01234567": {"form": "number", "value": 1e999}}'],
		['half a number', '{"last-slot-01234567": {"form": "number", "value": 1.5}}'],
		['a text for a number', '{"last-slot-01234567": {"form": "number", "value": "7"}}'],
		['an option that is no id', '{"slot-does-01234567": {"form": "one", "chose": "<img>"}}'],
		['another form', '{"slot-does-01234567": {"form": "essay", "text": "a"}}'],
		['an id that is none', '{"slot does": {"form": "one", "chose": "a"}}'],
		['depth in a log', `{"on-the-bench-01234567": {"form": "practical", "log": [${'['.repeat(60)}${']'.repeat(60)}]}}`],
		['a list', '[]'],
	])('answers with %s (%s) are refused', (_, text) => {
		const error = thrownBy(() => readAnswers(JSON.parse(text)));
		expect(error.code).toBe('paper.answers');
		expect(errorText(error)).toMatch(/^The answers .*\.$/s);
		expect({}).not.toHaveProperty('form');
	});

	it('too many answers are refused', () => {
		const many = Object.fromEntries(
			Array.from({ length: 101 }, (_, i) => [`last-slot-${String(i).padStart(8, '0')}`, { form: 'number', value: 1 }]),
		);
		expect(thrownBy(() => readAnswers(many)).code).toBe('paper.answers');
	});

	it('however they were changed, they are read and marked, or refused by a sentence: nothing else is thrown', () => {
		fc.assert(
			fc.property(changes, changes, (onPaper, onAnswers) => {
				try {
					const read = readPaper(changed(paper, onPaper));
					const { score, of } = markPaper(read, readAnswers(changed(answers, onAnswers)));
					expect(score).toBeLessThanOrEqual(of);
				} catch (error) {
					if (!isInputError(error)) throw error;
					expect(errorText(error)).toMatch(/\.$/);
				}
			}),
			{ numRuns: runs(60, 3000) },
		);
	});
});
