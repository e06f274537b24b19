import { InputError } from '../../../../shared/error/index.ts';
import { murmur3Text } from '../../../../shared/random/index.ts';
import { type JsonBounds, LINK_BOUNDS, MOST_READ, endOfJson as measured, readJson } from '../../../storage/index.ts';
import { errorText } from '../../../wording/index.ts';
import type { Refusal } from './types.ts';

/** What a file may come to: the results of a school year are some three million things. */
const FILE_BOUNDS: JsonBounds = Object.freeze({ ...LINK_BOUNDS, characters: MOST_READ.handedIn, things: 8_000_000 });

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

/**
 * Eight hex digits over a text (MurmurHash3): shows that something was changed or hurt on its way. It is no seal: whoever means
 * to forge a result can work it out again, and an answer changed with it is then simply another answer.
 */
export const checkOf = (text: string): string => murmur3Text(text, 0x70617072).toString(16).padStart(8, '0');

/** A value as JSON with the keys of every object in order, so that a file that was only laid out anew still fits its check. */
export function inKeyOrder(value: unknown): string {
	if (Array.isArray(value)) return `[${value.map(inKeyOrder).join(',')}]`;
	if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
	const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
	return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${inKeyOrder(held)}`).join(',')}}`;
}

type Old = Readonly<Record<string, unknown>>;
/** One version's record as the next one's; it is unread yet, and may be anything. */
export type Migration = (old: Old) => Old;

/** From one version to the next: the first makes 2 of 1. None yet: nothing but version 1 was ever written. */
const STEPS: readonly Migration[] = Object.freeze([]);

/**
 * A record as this version has it. What says no version of itself, or none that there is, is left for the schema to judge.
 * @param steps for the tests; those of this version unless told
 * @throws InputError `handed.version` where a newer version wrote it
 */
export function migrated(input: unknown, steps: readonly Migration[] = STEPS): unknown {
	const said: unknown = typeof input === 'object' && input !== null ? Reflect.get(input, 'version') : undefined;
	if (typeof said !== 'number') return input;
	if (said > steps.length + 1) throw otherVersion();
	if (!Number.isSafeInteger(said) || said < 1) return input;
	return steps.slice(said - 1).reduce<Old>((old, step, i) => ({ ...step(old), version: said + i + 1 }), input as Old);
}

/** Longest path that is shown. */
const LONGEST_PATH = 60;

/** Codes of what a schema or the parts of a paper refuse: where a shape is off, the place says more than the schema would. */
const OFF = /^(handed\.shape|paper\.(recipe|answers|seed)|profile\.|sheet\.|event\.|log\.)/;

/** An error as whoever handed the thing in is told of it. */
export function handedError(error: InputError): InputError {
	const { code, path } = error;
	if (!OFF.test(code) || ('trouble' in error.facts && error.facts.trouble === 'no-list')) return error;
	const place = path.length > LONGEST_PATH ? `${path.slice(0, LONGEST_PATH)}…` : path;
	const what = code === 'paper.answers' ? 'answers' : code === 'handed.shape' ? '' : 'paper';
	const where = [what, place].filter(Boolean).join(', ');
	return new InputError<InputError['code']>('handed.altered', path, { trouble: 'altered', code, where });
}

/** What could not be read, told plainly. */
export const refusedFor = (from: string, error: InputError): Refusal => ({
	from,
	code: error.code,
	sentence: errorText(handedError(error)),
});
