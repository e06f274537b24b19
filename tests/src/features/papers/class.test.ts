import { afterEach, expect, test } from 'vitest';
import type { Answers, PaperRecipeInput } from '../../../../shared/paper/index.ts';
import { makeRandom } from '../../../../shared/random/index.ts';
import { begin, handedIn } from '../../../../src/features/papers/learner/sitting.ts';
import { papersWork as work } from '../../../../src/features/papers/routes.ts';
import { rightAnswer } from './rightAnswer.ts';

// node has no database: what is kept here is kept in memory, and says so

const recipe: PaperRecipeInput = {
	version: 1,
	title: 'Friday',
	count: 10,
	kinds: ['percent-of-value', 'value-function', 'dip-to-address', 'last-slot', 'match-slots'],
};
const page = 'https://hall.example/papers/';

afterEach(() => work.removeAll(null));

/** Links of a class: the later in the alphabet, the more is right; who errs makes a mistake that is known. */
async function classLinks(names: readonly string[], seed = 5): Promise<string[]> {
	const ref = await work.set({ recipe, seed });
	const { items } = await work.paper(ref);
	const chance = makeRandom(seed);
	return Promise.all(
		names.map(async (name, at) => {
			const answers: Answers = Object.fromEntries(
				items.flatMap((item, i) => {
					const [known] = item.mistakes;
					if (i < at % 11 || !known) return [[item.id, rightAnswer(item)] as const];
					return chance.chance(0.2) ? [] : [[item.id, known.answer] as const];
				}),
			);
			const attempt = `00000000000000${(at + 16).toString(16)}`;
			const sitting = handedIn({ ...begin(ref.view, attempt, 1000), answers }, ref.view, name, 61_000 * (at + 1));
			return (await work.handResult({ ...ref, sitting, page })).link;
		}),
	);
}

const take = async (text: string) => work.takeIn({ handed: await work.readText({ text }) });

test('a class comes in, is marked from its answers, and says what to go over again', async () => {
	const names = ['Ash', 'Bo', 'Cam', 'Dee', 'Eli', 'Fern', 'Gus', 'Hana', 'Ivo', 'Jo', 'Kit', 'ash'];
	const links = await classLinks(names);
	const taken = await take(`${links.join('\n')}\n${links[0]}\n#result=1.abc`);
	expect(taken).toMatchObject({ fresh: 12, again: 1 });
	expect(taken.refused.count).toBe(1);
	const hold = await work.hold(null);
	expect(hold).toMatchObject({ keeps: false, results: 12, unset: { count: 0 }, asides: { count: 0 } });
	expect(hold.papers).toMatchObject([{ title: 'Friday', seed: 5, questions: 10, results: 12, mark: taken.paper }]);

	const mark = taken.paper ?? '';
	const { rows, learn, questions } = await work.classOf({ mark });
	expect(questions).toHaveLength(10);
	expect(rows.map(({ tryNo }) => tryNo).filter((n) => n > 1)).toEqual([2]);
	for (const row of rows) {
		expect(row.flags).toEqual([]);
		expect(row.cells.filter(({ state }) => state === 'right')).toHaveLength(row.score);
		expect(row.cells.filter(({ state }) => state === 'open').every(({ gave }) => gave === '')).toBe(true);
	}
	expect(learn?.people).toBe(11);
	expect(learn?.leftOut).toBe(1);
	expect(learn?.tenths.reduce((sum, n) => sum + n, 0)).toBe(11);
	for (const item of learn?.items ?? []) {
		expect(item.low).toBeLessThanOrEqual(item.share);
		expect(item.high).toBeGreaterThanOrEqual(item.share);
		for (const says of item.says) expect(says).toMatch(/^[A-Z0-9].*\.$/);
		const wrong = rows.filter(({ tryNo, cells }) => tryNo === 1 && cells[item.at - 1]?.state !== 'right');
		expect(item.drew.map(({ says }) => Number(/: (\d+) \(/.exec(says)?.[1])).reduce((a, b) => a + b, 0)).toBe(
			wrong.length,
		);
	}
	// the next paper can be set as it stands
	expect(learn?.next).not.toBeNull();
	const next = await work.set({ recipe: learn?.next?.recipe ?? recipe, seed: 6 });
	expect(next.view.questions.length).toBeGreaterThanOrEqual(5);
	expect(next.recipe.kinds.length).toBeGreaterThan(0);
});

test('a trainer’s name goes over the learner’s, what does not fit is left out of the figures, and delete means gone', async () => {
	const [one = '', two = ''] = await classLinks(['Ash', 'Bo']);
	const { paper } = await take(`${one}\n${two}`);
	const mark = paper ?? '';
	const first = (await work.classOf({ mark })).rows[0];
	await work.rename({ attempt: first?.attempt ?? '', name: 'Zoe' });
	expect((await work.classOf({ mark })).rows.map(({ name }) => name)).toEqual(['Bo', 'Zoe']);

	const [handed] = await work.readText({ text: two });
	if (handed?.is !== 'result') throw new Error('no result');
	const altered = { ...handed, result: { ...handed.result, attempt: '00000000000000ff', claimed: 9 } };
	await work.takeIn({ handed: [altered] });
	const again = await work.classOf({ mark });
	expect(again.rows.filter(({ flags }) => flags.length > 0)).toHaveLength(1);
	expect(again.learn?.people).toBe(2);

	for (const as of ['csv', 'qti-3', 'qti-2', 'xapi'] as const) {
		const { name, content } = await work.exportClass({ mark, as });
		expect(name).toMatch(/^prep-bay-friday.*\.(csv|zip|json)$/);
		expect(content.length).toBeGreaterThan(100);
	}
	const all = await work.exportAll(null);
	await work.removeResult({ attempt: first?.attempt ?? '' });
	expect((await work.classOf({ mark })).rows).toHaveLength(2);
	await work.removePaper({ mark });
	expect(await work.hold(null)).toMatchObject({ papers: [], results: 0 });
	await expect(work.classOf({ mark })).rejects.toMatchObject({ code: 'papers.gone' });
	// and what was saved brings it all back, names too
	await take(String(all.content));
	expect((await work.classOf({ mark })).rows.map(({ name }) => name).toSorted()).toEqual(['Bo', 'Bo', 'Zoe']);
});

test('a paper that cannot be set here is told by name, and the rest is taken in', async () => {
	const { recipe: whole, seed } = await work.set({ recipe, seed: 2 });
	const broken = { is: 'paper' as const, from: 'old.json', recipe: { ...whole, profiles: ['gone'] }, seed };
	const taken = await work.takeIn({ handed: [broken, { ...broken, from: 'new.json', recipe: whole }] });
	expect(taken).toMatchObject({ fresh: 0, papers: ['Friday'], paper: null });
	expect(taken.refused.lines).toMatchObject([
		{ from: 'old.json', sentence: expect.stringMatching(/^No bundled fixture/) },
	]);
});

test('a paper with no results has an empty class and nothing to learn from', async () => {
	const ref = await work.set({ recipe, seed: 8 });
	await work.keepPaper(ref);
	expect(await work.classOf({ mark: ref.view.mark })).toMatchObject({ rows: [], learn: null, title: 'Friday' });
	expect(await work.keptPaper({ mark: ref.view.mark })).toEqual({ recipe: ref.recipe, seed: 8 });
	await expect(work.keptPaper({ mark: '0000000000000000' })).rejects.toMatchObject({ code: 'papers.gone' });
});
