import fc from 'fast-check';
import {
	type Answer,
	type Answers,
	type Item,
	type Paper,
	PLAIN_KIND_IDS,
	setPaper,
} from '../../../../../shared/paper/index.ts';
import { makeRandom, type Random } from '../../../../../shared/random/index.ts';
import type { PaperResult } from '../../../../../src/features/papers/exchange/index.ts';
import { rightAnswer } from '../rightAnswer.ts';

export { rightAnswer };

/** Plain kinds, so that no rig is needed. */
export const PLAIN = {
	version: 1 as const,
	title: 'Levels and addresses, the yard crew',
	kinds: [...PLAIN_KIND_IDS],
	count: 40,
};

/** Some answer of an item's own form: often right, else a known mistake, else anything its form holds. */
function someAnswer(item: Item, chance: Random): Answer {
	const roll = chance.int(0, 9);
	if (roll < 6) return rightAnswer(item);
	const mistake = item.mistakes[chance.int(0, Math.max(0, item.mistakes.length - 1))];
	return mistake?.answer ?? rightAnswer(item);
}

/** A learner's result of a paper, all by chance from one seed. */
export function sat(paper: Paper, seed: number, name = `Hand ${seed}`): PaperResult {
	const chance = makeRandom(seed);
	const answers: Answers = Object.fromEntries(
		paper.items.filter(() => chance.int(0, 19) > 0).map((item) => [item.id, someAnswer(item, chance)]),
	);
	return {
		version: 1,
		recipe: paper.recipe,
		seed: paper.seed,
		paper: paper.mark,
		name,
		answers,
		claimed: 0,
		started: 1_790_000_000_000 + seed * 1000,
		ended: 1_790_000_900_000 + seed * 1000,
		attempt: `${seed.toString(16).padStart(8, '0')}${chance.int(0, 0x7fffffff).toString(16).padStart(8, '0')}`,
	};
}

/** A paper of the plain kinds. */
export const plainPaper = (seed: number, count = 40): Paper => setPaper({ ...PLAIN, count }, seed);

export const seeds = fc.integer({ min: 0, max: 0xffffffff });
