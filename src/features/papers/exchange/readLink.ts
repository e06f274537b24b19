import { InputError } from '../../../../shared/error/index.ts';
import { fromBase64url, inflateText, LINK_BOUNDS } from '../../../storage/index.ts';
import { damaged, otherVersion, parsed } from './bounds.ts';
import { checkOf } from './check.ts';
import { fromColumns } from './columns.ts';
import { LINK_VERSION } from './link.ts';
import { unpackAnswers } from './pack.ts';
import { readResult, readSlip } from './schema.ts';
import type { PaperSetter, PaperSlip, Taken } from './types.ts';

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
export async function readResultLink(fragment: string, set: PaperSetter): Promise<Taken> {
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
