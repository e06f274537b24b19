import type { Mark } from '../../sim/drill/index.ts';
import { type Progress, type Result, withAgain, withDone, withMiss } from '../progress/index.ts';

/** How a drill has gone so far, over every start of it: starting again takes back neither hints nor wrong markings. */
export interface Attempt {
	readonly hints: number;
	/** Markings with something still wrong. */
	readonly misses: number;
	readonly done: boolean;
}

/** The name under which results are kept, and the seed that is kept with them: a drill's own, or a lesson's. */
export interface Under {
	readonly kind: string;
	readonly seed: number;
}

export const FRESH: Attempt = Object.freeze({ hints: 0, misses: 0, done: false });

/** The attempt after a marking. */
export function markedAttempt(attempt: Attempt, { done }: Mark): Attempt {
	return done ? { ...attempt, done: true } : { ...attempt, misses: attempt.misses + 1 };
}

/** What a mark comes to, to be kept. */
export const resultOf = ({ seed }: Under, mark: Mark, { hints }: Attempt): Result => ({
	presses: mark.presses,
	fewest: mark.fewest,
	hints,
	milliseconds: Math.round(mark.milliseconds),
	seed,
});

/**
 * Progress after a marking. A miss counts once a drill, and after it is done no more; done once more, only a better result counts.
 * @param attempt as it stood before this marking
 * @param now ms since 1970
 */
export function progressAfter(progress: Progress, under: Under, mark: Mark, attempt: Attempt, now: number): Progress {
	if (!mark.done) return attempt.misses === 0 && !attempt.done ? withMiss(progress, under.kind, now) : progress;
	const result = resultOf(under, mark, attempt);
	if (attempt.done) return withAgain(progress, under.kind, result);
	return withDone(progress, under.kind, result, attempt.hints === 0 && attempt.misses === 0, now);
}
