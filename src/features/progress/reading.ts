import * as v from 'valibot';
import { InputError } from '../../../shared/error/index.ts';
import { isRecord, KEPT, type Migrate, readRecord } from '../../storage/index.ts';
import { FIRM, type KindRecord, MOST_TRIED, type Progress } from './result.ts';

/** What was read: what could be, and what could not, by the name it stood under. */
export interface ReadProgress {
	readonly progress: Progress;
	readonly damaged: Readonly<Record<string, unknown>>;
}

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
// presses may be fewer than the fewest that are sure to do: a hold can end well by luck
const resultSchema = v.object({ presses: count, fewest: count, hints: count, milliseconds: count, seed: count });
const recordSchema = v.pipe(
	v.object({
		done: count,
		best: v.nullable(resultSchema),
		streak: count,
		longest: count,
		last: count,
		tried: v.pipe(v.array(count), v.maxLength(MOST_TRIED)),
		open: v.nullable(v.object({ seed: count, hints: count, misses: count })),
	}),
	v.check(({ streak, longest }) => longest >= streak, 'longest-row'),
	v.check(({ done, best, longest }) => done > 0 === (best !== null) && longest <= done, 'row-of-drills'),
);
const KIND = /^[a-z0-9]+(-[a-z0-9]+)*$/;
/** Longest name of a kind, and most of them: a file from elsewhere is not trusted with more. */
const LONGEST_KIND = 60;
const MOST_KINDS = 500;

/**
 * Progress as it is kept or exported, from text. Each entry is read by itself: one that is damaged does not take the others along.
 * @param steps for the tests, as is `version`; those of this version unless told
 * @throws InputError `progress.damaged` where the whole cannot be read, `progress.newer` where a newer version wrote it
 */
export function readProgress(
	text: string,
	steps: readonly Migrate[] = STEPS,
	version: number = KEPT.progress.version,
): ReadProgress {
	const { kinds, found: before } = kindsOf(text, steps, version);
	const progress = new Map<string, KindRecord>();
	const damaged: [string, unknown][] = [];
	for (const [kind, found] of Object.entries(kinds)) {
		const read = v.safeParse(recordSchema, found);
		if (KIND.test(kind) && kind.length <= LONGEST_KIND && progress.size < MOST_KINDS && read.success)
			progress.set(kind, read.output);
		// as it was found: a migration may have written into it
		else damaged.push([kind, Object.hasOwn(before, kind) ? before[kind] : found]);
	}
	return { progress, damaged: Object.fromEntries(damaged) };
}

/**
 * From one version to the next: the first makes 2 of 1.
 *
 * 1 to 2: seeds begun are kept. A row of version 1 may have been one drill done over and over, and nothing tells: it is kept up to one
 * short of firm, so that one drill not met before makes it firm again. All else stays.
 */
const STEPS: readonly Migrate[] = Object.freeze<Migrate[]>([
	(old) => {
		const { kinds } = old;
		if (!isRecord(kinds)) return old;
		return {
			...old,
			kinds: Object.fromEntries(Object.entries(kinds).map(([kind, record]) => [kind, withTries(record)])),
		};
	},
]);

function withTries(record: unknown): unknown {
	if (!isRecord(record)) return record;
	const { best, streak } = record;
	return {
		...record,
		streak: typeof streak === 'number' ? Math.min(streak, FIRM - 1) : streak,
		tried: isRecord(best) ? [best['seed']] : [],
		open: null,
	};
}

interface ResultsByKind {
	readonly kinds: Readonly<Record<string, unknown>>;
	/** The same as they stood in the text. */
	readonly found: Readonly<Record<string, unknown>>;
}

function kindsOf(text: string, steps: readonly Migrate[], version: number): ResultsByKind {
	const found = readRecord(text, { ...KEPT.progress, version }, steps);
	if (found.is === 'newer') throw new InputError('progress.newer', 'version', { trouble: 'newer' });
	const kinds = found.is === 'record' ? found.record['kinds'] : null;
	if (found.is !== 'record' || !isRecord(kinds)) throw new InputError('progress.damaged', '', { trouble: 'damaged' });
	const { kinds: before } = found.before;
	return { kinds, found: isRecord(before) ? before : {} };
}
