import { describe, expect, it } from 'vitest';
import {
	type Answer,
	type AnswerKey,
	type Answers,
	type Item,
	KIND_TOPICS,
	LEVELS,
	MISTAKE_IDS,
	type PaperRecipeInput,
	RIG_KIND_IDS,
	type RigKindId,
	readPaper,
} from '../../../shared/paper/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { markRigPaper, RIG_SOURCES, setRigPaper } from '../../../sim/paper/index.ts';
import { runs } from '../../runs.ts';
import { throughJson } from '../../shared/json.ts';
import { groundFor, unseenGround } from '../../shared/paper/grounds.ts';
import { itemOf, itemsOf } from './items.ts';

const recipe = (count: number, kinds: readonly RigKindId[] = RIG_KIND_IDS): PaperRecipeInput => ({
	version: 1,
	title: 'From the rig',
	count,
	kinds: [...kinds],
});

function rightAnswer(key: AnswerKey): Answer | null {
	if (key.form === 'one') return { form: 'one', chose: key.right };
	if (key.form === 'several') return { form: 'several', chose: key.right };
	return key.form === 'match' ? { form: 'match', pairs: key.right } : null;
}

describe('the kinds that are read from a rig', () => {
	it('are all there, at every level, about their topics, and fit every bundled fixture alone', () => {
		expect(RIG_SOURCES.kinds.map(({ id }) => id).sort()).toEqual([...RIG_KIND_IDS].sort());
		for (const kind of RIG_SOURCES.kinds) {
			expect(kind.topic).toBe(KIND_TOPICS[kind.id]);
			expect(kind.levels).toEqual(LEVELS);
			for (const profile of BUNDLED) expect(kind.fits({ profiles: [profile], sheet: null })).toBe(true);
		}
	});

	it.each(RIG_KIND_IDS)('%s: whole as JSON, the same again, its options and mistakes distinct and wrong', (id) => {
		for (const [number, item] of itemsOf(id, runs(12, 600)).entries()) {
			expect(throughJson(item)).toEqual(item);
			expect(itemOf(id, number)).toEqual(item);
			if (item.bench) expect(readSheet(throughJson(item.bench))).toEqual(item.bench);
			const { ask } = item;
			const groups = ask.form === 'match' ? [ask.left, ask.right] : 'options' in ask ? [ask.options] : [];
			for (const options of groups) {
				expect(new Set(options.map((option) => option.id)).size).toBe(options.length);
				expect(new Set(options.map(({ label }) => JSON.stringify(label))).size).toBe(options.length);
			}
			if (ask.form === 'one') {
				expect(ask.options.length).toBeGreaterThanOrEqual(3);
				expect(item.mistakes).toHaveLength(ask.options.length - 1);
			}
			const answers = [rightAnswer(item.key), ...item.mistakes.map(({ answer }) => answer)];
			expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(answers.length);
			for (const { mistake, answer } of item.mistakes) {
				expect(MISTAKE_IDS).toContain(mistake);
				expect(answer.form).toBe(ask.form);
			}
		}
	});

	it('can be set on fixtures that nobody has seen', () => {
		for (let number = 0; number < runs(4, 200); number++) {
			const ground = unseenGround(number);
			for (const kind of RIG_SOURCES.kinds) {
				if (!kind.fits(ground)) continue;
				const item = itemOf(kind.id as RigKindId, number, ground, LEVELS[number % LEVELS.length] ?? 'easy');
				if (item.bench) expect(readSheet(throughJson(item.bench))).toEqual(item.bench);
			}
		}
	});

	it('can be set on every sort of ground that they fit, fixtures of nobody’s among them', () => {
		for (let number = 0; number < runs(8, 300); number++) {
			const ground = groundFor(number);
			for (const kind of RIG_SOURCES.kinds) {
				if (!kind.fits(ground)) continue;
				const level = LEVELS[number % LEVELS.length] ?? 'easy';
				expect(() => itemOf(kind.id as RigKindId, number, ground, level)).not.toThrow();
			}
		}
	});
});

describe('a paper of them', () => {
	it('is the same from the same seed, whole as JSON, and another seed asks as much of each', () => {
		const paper = setRigPaper(recipe(14), 7);
		expect(setRigPaper(recipe(14), 7)).toEqual(paper);
		expect(readPaper(throughJson(paper))).toEqual(paper);
		const asks = ({ items }: { readonly items: readonly Item[] }) =>
			items.map(({ kind, topic, level }) => `${kind} ${topic} ${level}`).sort();
		const other = setRigPaper(recipe(14), 8);
		expect(asks(other)).toEqual(asks(paper));
		expect(other.mark).not.toBe(paper.mark);
	});

	it('is all right by its own key, and each mistake is wrong and looks like itself', () => {
		for (let seed = 0; seed < runs(2, 60); seed++) {
			const paper = setRigPaper(recipe(12, RIG_KIND_IDS.slice(0, 6)), seed);
			const right = Object.fromEntries(paper.items.map(({ id, key }) => [id, rightAnswer(key)])) as Answers;
			expect(markRigPaper(paper, right)).toMatchObject({ score: 12, percent: 100, passed: true, misfits: [] });
			for (const item of paper.items) {
				for (const { mistake, answer } of item.mistakes) {
					const [mark] = markRigPaper(paper, { [item.id]: answer }).items.filter((each) => each.item === item.id);
					expect(mark).toMatchObject({ answered: true, right: false, score: 0, looksLike: mistake });
				}
			}
		}
	});
});
