import { InputError } from '../../../shared/error/index.ts';
import {
	type Answers,
	type ChartSource,
	markPaper,
	needsRig,
	type Paper,
	type PaperMark,
	type PaperRecipe,
	type PaperRecipeInput,
	type PaperSources,
	readRecipe,
	setPaper,
} from '../../../shared/paper/index.ts';
import { plainName } from '../../storage/index.ts';
import type { PaperMarker, PaperSetter } from './exchange/index.ts';

/** Papers kept at once. */
const MOST = 32;

/** A setter that sets each paper once, for as long as the last few papers: a class hands in one paper many times. */
export function settingOnce(set: PaperSetter): PaperSetter {
	const papers = new Map<string, Paper | Promise<Paper>>();
	return (recipe, seed) => {
		const key = JSON.stringify([recipe, seed]);
		const known = papers.get(key) ?? set(recipe, seed);
		// what failed may do the next time: a part that was not to be fetched, say
		if (known instanceof Promise) known.catch(() => papers.delete(key));
		papers.delete(key);
		papers.set(key, known);
		if (papers.size > MOST) for (const oldest of [...papers.keys()].slice(0, 1)) papers.delete(oldest);
		return known;
	};
}

/** What kinds of the rig are made with, and charts that nobody has seen: each fetched with the first recipe that asks for it. */
async function sourcesFor(
	recipe: Pick<PaperRecipe, 'kinds' | 'topics' | 'version' | 'unseen'>,
): Promise<PaperSources | undefined> {
	const rig = needsRig(recipe) ? await rigSources() : undefined;
	return recipe.unseen === undefined ? rig : { ...(rig ?? NO_RIG), charts: await charts() };
}

export const rigSources = async (): Promise<PaperSources> => (await import('../../../sim/paper/index.ts')).RIG_SOURCES;

/** For quizzes that ask nothing of a rig. */
const NO_RIG: PaperSources = Object.freeze({
	kinds: [],
	practical: () => {
		throw new InputError('paper.needs-rig', 'kinds', { trouble: 'no-rig-at-hand' });
	},
});

/** What makes up fixtures in this language's words. */
async function charts(): Promise<ChartSource> {
	const { inventFixture, inventNames } = await import('./invented.ts');
	return { list: inventNames.id, invent: (seed, level, without) => inventFixture(seed, level, inventNames, without) };
}

/** Sets a paper once, for as long as it is among the last few. @throws InputError as `setPaper` does */
export const setAny: PaperSetter = settingOnce(async (input: PaperRecipeInput, seed: number): Promise<Paper> => {
	const recipe = readRecipe(input);
	return setPaper(recipe, seed, await sourcesFor(recipe));
});

/** Marks a paper, whatever its kinds. @throws InputError as `markPaper` does */
export const markAny: PaperMarker = async (paper: Paper, answers: Answers): Promise<PaperMark> =>
	markPaper(paper, answers, await sourcesFor(paper.recipe));

/** A file's name out of a title: letters, digits and dashes, whatever the title has. */
export const fileNameOf = (title: string, end = '.json'): string => `prep-bay-${plainName(title) || 'paper'}${end}`;
