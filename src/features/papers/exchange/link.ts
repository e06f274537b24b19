import { InputError } from '../../../../shared/error/index.ts';
import type { Paper } from '../../../../shared/paper/index.ts';
import { deflateText, fromBase64url, inflateText, LINK_BOUNDS, toBase64url } from '../../../storage/index.ts';
import { checkOf, damaged, otherVersion, parsed } from './bounds.ts';
import { fromColumns, leanRecipe, packAnswers, unpackAnswers } from './pack.ts';
import { readResult, readSlip } from './schema.ts';
import type { PaperResult, PaperSetter, PaperSlip, TakenResult } from './types.ts';

/** The version that new links have; a newer one is refused with a sentence. */
const LINK_VERSION = 1;

/** The fragment, with its `#`, that opens a paper to be sat: recipe and seed, and nothing that is right. */
export async function paperFragment({ recipe, seed }: PaperSlip): Promise<string> {
	return fragment('paper', [leanRecipe(recipe), seed]);
}

/**
 * The fragment, with its `#`, that hands a result in: answers by where the questions stand, logs whole.
 * @param paper the paper that was sat
 */
export async function resultFragment(result: PaperResult, paper: Paper): Promise<string> {
	const { packed, strays } = packAnswers(paper, result.answers);
	const { recipe, seed, name, attempt, started, ended, claimed } = result;
	const parts = [leanRecipe(recipe), seed, result.paper, name, attempt, started, ended, claimed, packed];
	return fragment('result', Object.keys(strays).length > 0 ? [...parts, strays] : parts);
}

async function fragment(what: 'paper' | 'result', parts: readonly unknown[]): Promise<string> {
	const text = JSON.stringify(parts);
	return `#${what}=${LINK_VERSION}.${toBase64url(await deflateText(text))}.${checkOf(text)}`;
}

/** Characters of a link. A paper of practical questions with long logs stays under it. */
const LONGEST_LINK = 1_000_000;

/** A link to a paper or to a result, wherever it stands in a text. */
export const PAPER_LINK = /(?:^|[#\s&])(paper|result)=(\d{1,6})\.([\w-]*)(?:\.([\w-]*))?/;

/**
 * Reads a fragment that `paperFragment` wrote.
 * @throws InputError `handed.damaged`, `handed.long`, `handed.version`, `handed.deep`, `handed.shape`, and what `readRecipe` throws
 */
export async function readPaperLink(fragment: string): Promise<PaperSlip> {
	const { parts, whole } = await partsOf(fragment, 'paper');
	if (!whole || parts.length !== 2) throw damaged();
	return readSlip({ recipe: fromColumns(parts[0]), seed: parts[1] });
}

/**
 * Reads a fragment that `resultFragment` wrote. The paper is set anew, since the questions say what the answers belong to.
 * @throws as `readPaperLink`, and what `readAnswers` and `set` throw
 */
export async function readResultLink(fragment: string, set: PaperSetter): Promise<TakenResult> {
	const { parts, whole } = await partsOf(fragment, 'result');
	const [lean, seed, paper, name, attempt, started, ended, claimed, packed, strays = {}] = parts;
	if (parts.length < 9 || parts.length > 10 || !Array.isArray(packed) || typeof strays !== 'object' || !strays)
		throw damaged();
	const slip = readSlip({ recipe: fromColumns(lean), seed });
	const { items } = await set(slip.recipe, slip.seed);
	if (packed.length > items.length) throw damaged();
	const answers = unpackAnswers(items, packed, strays);
	const rest = { paper, name, answers, claimed, started, ended, attempt };
	const result = readResult({ version: 1, ...slip, ...rest });
	return { result, whole };
}

async function partsOf(fragment: string, what: 'paper' | 'result'): Promise<{ parts: unknown[]; whole: boolean }> {
	const [, found, version, packed = '', check = ''] = PAPER_LINK.exec(fragment) ?? [];
	if (found !== what) throw damaged();
	if (Number(version) !== LINK_VERSION) throw otherVersion();
	if (packed.length > LONGEST_LINK) throw new InputError('handed.long', '', { trouble: 'link-too-long' });
	const bytes = fromBase64url(packed);
	const text = bytes && (await inflateText(bytes, LINK_BOUNDS.characters));
	if (!text) throw damaged();
	const parts = parsed(text);
	if (!Array.isArray(parts)) throw damaged();
	return { parts, whole: check === checkOf(text) };
}
