import {
	type Answers,
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
import { type PaperMarker, type PaperSetter, settingOnce } from './exchange/index.ts';

/** What kinds of the rig are made with; fetched with the first recipe that asks for one, and not before. */
async function sourcesFor(recipe: Pick<PaperRecipe, 'kinds' | 'topics'>): Promise<PaperSources | undefined> {
	return needsRig(recipe) ? rigSources() : undefined;
}

export const rigSources = async (): Promise<PaperSources> => (await import('../../../sim/paper/index.ts')).RIG_SOURCES;

/** Sets a paper once, for as long as it is among the last few. @throws InputError as `setPaper` does */
export const setAny: PaperSetter = settingOnce(async (input: PaperRecipeInput, seed: number): Promise<Paper> => {
	const recipe = readRecipe(input);
	return setPaper(recipe, seed, await sourcesFor(recipe));
});

/** Marks a paper, whatever its kinds. @throws InputError as `markPaper` does */
export const markAny: PaperMarker = async (paper: Paper, answers: Answers): Promise<PaperMark> =>
	markPaper(paper, answers, await sourcesFor(paper.recipe));
