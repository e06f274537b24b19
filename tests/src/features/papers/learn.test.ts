import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse, markPaper, setPaper } from '../../../../shared/paper/index.ts';
import { settingOnce } from '../../../../src/features/papers/engine.ts';
import { sortResults } from '../../../../src/features/papers/exchange/index.ts';
import { learnFrom } from '../../../../src/features/papers/trainer/learn.ts';
import { runs } from '../../../runs.ts';
import { plainPaper, sat } from './exchange/class.ts';

const paper = plainPaper(31, 10);
const by = { set: settingOnce(setPaper), mark: markPaper };

/** What is learnt of a class that answered by chance, and its figures. */
async function byChance(people: number, seed: number) {
	const results = Array.from({ length: people }, (_, at) => sat(paper, seed + at, `Hand ${at}`));
	const marks = results.map(({ answers }) => markPaper(paper, answers));
	const pile = results.map((result, at) => ({ result: { ...result, claimed: marks[at]?.score ?? 0 }, whole: true }));
	const [table] = (await sortResults(pile, by)).tables;
	const learn = table && learnFrom(table);
	if (!learn) throw new Error('nothing learnt');
	return { learn, figures: analyse(marks) };
}

test('a KR-20 below nought is said in words that can be acted on; one above keeps its interval', async () => {
	let below = 0;
	await fc.assert(
		fc.asyncProperty(fc.integer({ min: 4, max: 14 }), fc.nat(1_000_000), async (people, seed) => {
			const { learn, figures } = await byChance(people, seed);
			const [first = ''] = learn.steady;
			if (figures.kr20 === null || figures.kr20 >= 0) {
				expect(first).toMatch(/^KR-20 (is \d|can’t be told yet)/);
				return;
			}
			below++;
			expect(first).toMatch(/^People who did well on one half did no better on the other \(KR-20 −\d+\.\d\d\)\./);
			const chance = !figures.kr20Interval || figures.kr20Interval.to > 0;
			expect(first.endsWith(` With ${people} people it may be chance.`)).toBe(chance);
		}),
		{ numRuns: runs(40) },
	);
	expect(below).toBeGreaterThan(0);
});

test('what is said of a question is called a hint wherever a class is judged by and small', async () => {
	for (const people of [2, 9, 10, 30]) {
		const { learn } = await byChance(people, 7);
		if (people < 10) expect(learn.hint).toBeNull();
		else expect(learn.hint).toMatch(new RegExp(`^With ${people} people, .* a hint, not a verdict`));
	}
	expect((await byChance(272, 7)).learn.hint).toBeNull();
});
