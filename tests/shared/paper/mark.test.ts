import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	type Answer,
	type Answers,
	type Item,
	markPaper,
	type Paper,
	type PaperRecipeInput,
	PLAIN_KIND_IDS,
	readAnswers,
	readPaper,
	setPaper,
	TOP_SEED,
} from '../../../shared/paper/index.ts';
import { misfitText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { throughJson, withPut } from '../json.ts';

const COUNT = PLAIN_KIND_IDS.length;
const recipe: PaperRecipeInput = { version: 2, title: 'Prep night', count: COUNT, kinds: [...PLAIN_KIND_IDS] };
const seeds = fc.integer({ min: 0, max: TOP_SEED });

/** The answer a question's own key gives. */
function keyed({ key }: Item): Answer {
	switch (key.form) {
		case 'one':
			return { form: 'one', chose: key.right };
		case 'several':
			return { form: 'several', chose: [...key.right].reverse() };
		case 'number':
			return { form: 'number', value: key.within[0]?.from ?? 0 };
		case 'order':
			return { form: 'order', order: key.right };
		case 'switches':
			return { form: 'switches', up: [...key.up].reverse() };
		case 'match':
			return { form: 'match', pairs: key.right };
		default:
			return { form: 'practical', log: [] };
	}
}
const solved = ({ items }: Paper): Answers => Object.fromEntries(items.map((item) => [item.id, keyed(item)]));

const paper = setPaper(recipe, 11);
const itemOf = (form: Item['ask']['form']): Item => paper.items.find(({ ask }) => ask.form === form) as Item;

describe('marking', () => {
	it('gives the whole to a paper solved by its own key, in any order of its parts, after a journey', () => {
		fc.assert(
			fc.property(seeds, (seed) => {
				const set = setPaper(recipe, seed);
				const mark = markPaper(readPaper(throughJson(set)), readAnswers(throughJson(solved(set))));
				expect(mark).toMatchObject({
					paper: set.mark,
					score: COUNT,
					of: COUNT,
					percent: 100,
					passed: true,
					misfits: [],
				});
				for (const { right, share, looksLike, answered } of mark.items)
					expect({ right, share, looksLike, answered }).toEqual({
						right: true,
						share: 1,
						looksLike: null,
						answered: true,
					});
			}),
			{ numRuns: runs(15, 500) },
		);
	});

	it('takes each known mistake for wrong, and says which it looks like', () => {
		fc.assert(
			fc.property(seeds, (seed) => {
				const set = setPaper(recipe, seed);
				for (const item of set.items) {
					for (const { mistake, answer } of item.mistakes) {
						const mark = markPaper(set, { ...solved(set), [item.id]: answer });
						expect(mark.score).toBe(COUNT - 1);
						const one = mark.items.find((each) => each.item === item.id);
						expect(one).toMatchObject({ right: false, score: 0, looksLike: mistake, answered: true });
						expect(one?.share).toBeLessThan(1);
					}
				}
			}),
			{ numRuns: runs(5, 100) },
		);
	});

	it('counts what is not answered as wrong, and looks for no mistake in it', () => {
		const mark = markPaper(paper, {});
		expect(mark).toMatchObject({ score: 0, of: COUNT, percent: 0, passed: false, misfits: [] });
		for (const each of mark.items)
			expect(each).toMatchObject({ answered: false, gave: null, looksLike: null, share: 0 });
	});

	it('passes by the percent of the recipe, half up', () => {
		const three = setPaper({ ...recipe, count: 3, pass: 67 }, 1);
		const [, ...two] = Object.entries(solved(three));
		expect(markPaper(three, Object.fromEntries(two))).toMatchObject({ score: 2, percent: 67, passed: true });
		const eight = setPaper({ ...recipe, count: 8, pass: 14 }, 1);
		expect(markPaper(eight, Object.fromEntries(Object.entries(solved(eight)).slice(0, 1)))).toMatchObject({
			percent: 13,
			passed: false,
		});
	});

	it('gives a share for part of several, an order or a match', () => {
		const several = itemOf('several');
		const key = several.key.form === 'several' ? several.key.right : [];
		const share = (id: string, answer: Answer) =>
			markPaper(paper, { [id]: answer }).items.find((each) => each.item === id);
		expect(share(several.id, { form: 'several', chose: key.slice(1) })).toMatchObject({
			share: (key.length - 1) / key.length,
		});
		expect(share(several.id, { form: 'several', chose: [] })).toMatchObject({ share: 0, right: false });
		const match = itemOf('match');
		const pairs = match.key.form === 'match' ? match.key.right : {};
		const first = Object.fromEntries(Object.entries(pairs).slice(0, 1));
		expect(share(match.id, { form: 'match', pairs: first })).toMatchObject({ share: 1 / 3, score: 0 });
		const order = itemOf('order');
		const right = order.key.form === 'order' ? order.key.right : [];
		const swapped = [right[1], right[0], ...right.slice(2)] as string[];
		expect(share(order.id, { form: 'order', order: swapped })).toMatchObject({
			share: (right.length - 2) / right.length,
			looksLike: expect.stringMatching(/order|percent|hex/),
		});
	});
});

describe('what does not fit', () => {
	const codesOf = (answers: Answers): string[] =>
		markPaper(paper, answers).misfits.map((misfit) => {
			expect(misfitText(misfit)).toMatch(/^[A-Z].*\.$/);
			expect(misfit.sentence).toMatch(/^[A-Z].*\.$/);
			return `${misfit.code} ${misfit.item}`;
		});
	const [one, several, number, order, switches, match] = (
		['one', 'several', 'number', 'order', 'switches', 'match'] as const
	).map((form) => itemOf(form).id) as [string, string, string, string, string, string];

	it.each<[string, string, Answer]>([
		['answer-form', one, { form: 'number', value: 1 }],
		['answer-option', one, { form: 'one', chose: 'z' }],
		['answer-option', one, { form: 'one', chose: 'constructor' }],
		['answer-option', several, { form: 'several', chose: ['a', 'a'] }],
		['answer-option', several, { form: 'several', chose: ['a', 'z'] }],
		['answer-option', order, { form: 'order', order: ['a'] }],
		['answer-option', order, { form: 'order', order: ['a', 'a', 'b', 'c'] }],
		['answer-range', number, { form: 'number', value: 123456 }],
		['answer-range', number, { form: 'number', value: -1 }],
		['answer-range', number, { form: 'number', value: 0.5 }],
		['answer-range', switches, { form: 'switches', up: [10] }],
		['answer-range', switches, { form: 'switches', up: [1, 1] }],
		['answer-option', match, { form: 'match', pairs: { z: 'a' } }],
		['answer-option', match, { form: 'match', pairs: { a: 'toString' } }],
		['unknown-item', 'last-slot-00000000', { form: 'number', value: 1 }],
	])('%s at %s: told, and not answered', (code, id, answer) => {
		expect(codesOf({ [id]: answer })).toEqual([`${code} ${id}`]);
		expect(markPaper(paper, { ...solved(paper), [id]: answer }).score).toBe(
			paper.items.some((item) => item.id === id) ? COUNT - 1 : COUNT,
		);
	});

	it.each<[string, Readonly<Record<string, unknown>>]>([
		['another key', { 'items[0].key': { form: 'one', right: 'a' } }],
		['another mark', { mark: '0123456789abcdef' }],
		['a question less', { 'items[3]': undefined }],
		['other facts', { 'items[2].facts.fixture': 'Nobody' }],
		['another seed', { seed: 12 }],
		['an easier pass', { 'recipe.pass': 1 }],
	])('a paper altered by %s is marked as it was set, and told', (_, puts) => {
		const altered = readPaper(withPut(paper, puts));
		const mark = markPaper(altered, {});
		expect(mark.misfits.map(({ code }) => code)).toEqual(['paper-altered']);
	});

	it('has no say in the marks: a key put right for a wrong answer changes nothing', () => {
		const at = paper.items.findIndex(({ key }) => key.form === 'number');
		const { id } = paper.items[at] as Item;
		const forged = readPaper(withPut(paper, { [`items[${at}].key.within`]: [{ from: 7777, to: 7777 }] }));
		const unit = forged.items[at]?.ask;
		const value = unit?.form === 'number' && unit.most >= 7777 ? 7777 : 777;
		expect(markPaper(forged, { [id]: { form: 'number', value } })).toMatchObject({ score: 0 });
	});
});
