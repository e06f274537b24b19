import type { Paper } from '../../../../shared/paper/index.ts';
import { deflateText, toBase64url } from '../../../storage/index.ts';
import { checkOf } from './check.ts';
import { leanRecipe, packAnswers } from './pack.ts';
import type { PaperSlip, Result } from './types.ts';

/** The version that new links have; a newer one is refused with a sentence. */
export const LINK_VERSION = 1;

/** The fragment, with its `#`, that opens a paper to be sat: recipe and seed, and nothing that is right. */
export async function paperFragment({ recipe, seed }: PaperSlip): Promise<string> {
	return fragment('paper', [leanRecipe(recipe), seed]);
}

/**
 * The fragment, with its `#`, that hands a result in: answers by where the questions stand, logs whole.
 * @param paper the paper that was sat
 */
export async function resultFragment(result: Result, paper: Paper): Promise<string> {
	const { packed, strays } = packAnswers(paper, result.answers);
	const { recipe, seed, name, attempt, started, ended, claimed } = result;
	const parts = [leanRecipe(recipe), seed, result.paper, name, attempt, started, ended, claimed, packed];
	return fragment('result', Object.keys(strays).length > 0 ? [...parts, strays] : parts);
}

async function fragment(what: 'paper' | 'result', parts: readonly unknown[]): Promise<string> {
	const text = JSON.stringify(parts);
	return `#${what}=${LINK_VERSION}.${toBase64url(await deflateText(text))}.${checkOf(text)}`;
}
