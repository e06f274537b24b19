import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../../shared/paper/index.ts';
import type { ItemMark, PaperMark } from '../../../../shared/paper/types.ts';
import { runs } from '../../../runs.ts';
import { thrownBy } from '../../thrown.ts';

const TOPICS = ['levels', 'bands', 'addresses'] as const;
const KINDS = ['percent-of-value', 'value-function', 'nth-address'] as const;

/** A mark from the letters of the answers given: `a` is right, `-` not answered. */
function marked(gave: string, paper = 'p'): PaperMark {
	const items = [...gave].map((letter, at): ItemMark => {
		const right = letter === 'a';
		return {
			item: `q-${at}`,
			kind: KINDS[at % 3] ?? 'footprint',
			topic: TOPICS[at % 3] ?? 'levels',
			level: 'easy',
			answered: letter !== '-',
			right,
			score: right ? 1 : 0,
			share: right ? 1 : 0,
			looksLike: letter === 'b' ? 'off-by-one-low' : null,
			gave: letter === '-' ? null : letter,
			practical: null,
		};
	});
	const score = items.filter(({ right }) => right).length;
	const percent = Math.round((100 * score) / items.length);
	return { paper, items, score, of: items.length, percent, passed: percent >= 70, misfits: [] };
}

const papers = fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 12 })).chain(([people, questions]) =>
	fc.array(fc.string({ unit: fc.constantFrom('a', 'a', 'b', 'c', '-'), minLength: questions, maxLength: questions }), {
		minLength: people,
		maxLength: people,
	}),
);

describe('an analysis', () => {
	test('counts what it was given: by question, by answer, by topic, by person, the same sum every way', () => {
		fc.assert(
			fc.property(papers, (gave) => {
				const marks = gave.map((each) => marked(each));
				const found = analyse(marks);
				const right = marks.reduce((sum, { score }) => sum + score, 0);
				const total = (list: readonly { readonly right: number }[]) => list.reduce((sum, each) => sum + each.right, 0);
				expect(total(found.items)).toBe(right);
				expect(total(found.topics)).toBe(right);
				expect(total(found.kinds)).toBe(right);
				expect(found.persons.reduce((sum, { topics }) => sum + total(topics), 0)).toBe(right);
				expect(found.mean * marks.length).toBeCloseTo(right, 9);
				for (const [at, item] of found.items.entries()) {
					expect(item.given.reduce((sum, { count }) => sum + count, 0)).toBe(marks.length);
					expect(item.given.reduce((sum, each) => sum + (each.right ? each.count : 0), 0)).toBe(item.right);
					expect(item.answered).toBe(gave.filter((each) => each[at] !== '-').length);
					expect(item.interval.from).toBeLessThanOrEqual(item.difficulty + 1e-12);
					expect(item.interval.to).toBeGreaterThanOrEqual(item.difficulty - 1e-12);
				}
			}),
			{ numRuns: runs(150) },
		);
	});

	test('calls no score less certain than the spread of them all, however unsteady the paper', () => {
		const unsteady = analyse(['ab', 'ba', 'ab', 'ba', 'aa', 'ab'].map((gave) => marked(gave)));
		expect(unsteady.kr20).toBeLessThan(0);
		fc.assert(
			fc.property(papers, (gave) => {
				const { error, deviation } = analyse(gave.map((each) => marked(each)));
				if (error !== null) expect(error).toBeLessThanOrEqual(deviation + 1e-12);
			}),
			{ numRuns: runs(150) },
		);
	});

	test('does not hang on who came first', () => {
		fc.assert(
			fc.property(papers, (gave) => {
				const [forth, back] = [gave, gave.toReversed()].map((each) => analyse(each.map((one) => marked(one))));
				expect(back?.kr20).toSatisfy((figure: number | null) =>
					figure === null ? forth?.kr20 === null : Math.abs(figure - (forth?.kr20 ?? 9)) < 1e-9,
				);
				expect(back?.topics).toEqual(forth?.topics);
				for (const [at, item] of (forth?.items ?? []).entries()) {
					expect(back?.items[at]?.pointBiserial ?? 9).toBeCloseTo(item.pointBiserial ?? 9, 9);
					expect(back?.items[at]?.finding).toBe(item.finding);
				}
			}),
			{ numRuns: runs(60) },
		);
	});

	test('a question that those who know get right is sound; one that they get wrong is upside down', () => {
		const people = ['aaaab', 'aaaab', 'aaaab', 'aaaab', 'aaaab', 'abbba', 'bbaba', 'babba', 'bbbba', 'bbbba', 'abbba'];
		const { items } = analyse(people.map((each) => marked(each)));
		expect(items[1]).toMatchObject({ finding: 'sound', right: 6 });
		expect(items[1]?.discrimination).toBeGreaterThan(0.6);
		expect(items[4]?.finding).toBe('upside-down');
		expect(items[4]?.discrimination).toBe(-1);
		expect(items[4]?.given[0]).toMatchObject({ gave: 'a', count: 6, right: true });
		expect(items[4]?.given[1]).toMatchObject({
			gave: 'b',
			count: 5,
			right: false,
			looksLike: 'off-by-one-low',
			rest: 1,
		});
	});

	test('one person, one question, all alike: figures that cannot be had are null', () => {
		expect(analyse([marked('ab')])).toMatchObject({ kr20: null, kr20Interval: null, error: null });
		expect(analyse([marked('a'), marked('b')]).kr20).toBeNull();
		expect(analyse([marked('aa'), marked('aa')]).items[0]).toMatchObject({
			pointBiserial: null,
			discrimination: null,
			finding: 'too-few',
		});
	});

	test('what was missed comes weakest first, and nothing where nothing was', () => {
		const { missed } = analyse([marked('abb'), marked('aba')]);
		expect(missed.topics).toEqual(['bands', 'addresses']);
		expect(missed.kinds).toEqual(['value-function', 'nth-address']);
		expect(analyse([marked('aaa')]).missed).toEqual({ topics: [], kinds: [] });
	});

	test('a result whose questions come in another order is the same; another paper, or nothing, is refused', () => {
		const one = marked('abc');
		const two = { ...marked('aab'), items: marked('aab').items.toReversed() };
		expect(analyse([one, two])).toEqual(analyse([one, marked('aab')]));
		expect(thrownBy(() => analyse([])).code).toBe('analyse.none');
		expect(thrownBy(() => analyse([one, marked('abc', 'q')]))).toMatchObject({
			code: 'analyse.papers',
			path: 'marks[1]',
		});
		expect(
			thrownBy(() =>
				analyse([one, { ...one, items: [...one.items.slice(1), { ...one.items[0], item: 'x' } as ItemMark] }]),
			).code,
		).toBe('analyse.papers');
	});
});
