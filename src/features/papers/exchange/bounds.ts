import { InputError } from '../../../../shared/error/index.ts';
import { type JsonBounds, LINK_BOUNDS, endOfJson as measured, readJson } from '../../../storage/index.ts';

/** Characters of anything handed in at once: 5,000 results of 40 questions stay under it. */
export const LONGEST_TEXT = 40_000_000;
/** What a file may come to: the results of a school year are some three million things. */
const FILE_BOUNDS: JsonBounds = Object.freeze({ ...LINK_BOUNDS, characters: LONGEST_TEXT, things: 8_000_000 });

/**
 * Where the JSON object or list that opens at `from` ends: the place after its last bracket. Text in quotes is passed over.
 * @returns null where it is cut short
 * @throws InputError `handed.deep` or `handed.many` where it is nested deeper, or holds more, than anything of ours: it is not
 *   parsed then
 */
export function endOfJson(text: string, from: number): number | null {
	const end = measured(text, from, FILE_BOUNDS);
	if (end === 'deep') throw tooDeep();
	if (end === 'many') throw tooMany();
	return end;
}

/**
 * JSON out of a link, held to its bounds before it is parsed.
 * @throws InputError `handed.deep`, `handed.many`, `handed.damaged`
 */
export function parsed(text: string): unknown {
	const found = readJson(text);
	if (typeof found !== 'string') return found.value;
	throw found === 'deep' ? tooDeep() : found === 'damaged' ? damaged() : tooMany();
}

const tooDeep = (): InputError => new InputError('handed.deep', '', { trouble: 'too-deep' });

const tooMany = (): InputError => new InputError('handed.many', '', { trouble: 'too-much' });

export const damaged = (): InputError => new InputError('handed.damaged', '', { trouble: 'damaged' });

export const otherVersion = (): InputError => new InputError('handed.version', 'version', { trouble: 'other-version' });
