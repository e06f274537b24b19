import { readJson } from './json.ts';
import type { KeptThing } from './kept.ts';

type RecordValues = Readonly<Record<string, unknown>>;

/** One version's record as the next one's; its values are unread yet, and may be anything. */
export type Migrate = (old: RecordValues) => RecordValues;

/** What a kept text was found to be. */
export type FoundRecord =
	/** Of this version, or brought up to it; `before` is the same as it stood in the text. */
	| { readonly is: 'record'; readonly record: RecordValues; readonly before: RecordValues }
	/** A newer version of the site wrote it. */
	| { readonly is: 'newer' }
	| { readonly is: 'damaged' };

/**
 * A kept text as a record of the version that is written now, held to its bounds before anything is made of it. What its values are
 * is for a schema to say.
 * @param steps from one version to the next: the first makes 2 of 1
 */
export function readRecord(
	text: string,
	{ bounds, version }: Pick<KeptThing, 'bounds' | 'version'>,
	steps: readonly Migrate[] = [],
): FoundRecord {
	const found = readJson(text, bounds);
	if (typeof found === 'string' || !isRecord(found.value)) return { is: 'damaged' };
	const before = found.value;
	const said = before['version'];
	if (typeof said === 'number' && said > version) return { is: 'newer' };
	if (!Number.isSafeInteger(said) || Number(said) < 1) return { is: 'damaged' };
	return {
		is: 'record',
		record: steps.slice(Number(said) - 1, version - 1).reduce((old, step) => step(old), before),
		before,
	};
}

/** Whether a value is an object that is no list. */
export const isRecord = (value: unknown): value is RecordValues =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
