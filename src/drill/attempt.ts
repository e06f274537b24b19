import type { Drill, Mark } from '../../sim/drill/index.ts';
import { type Progress, type Result, withAgain, withDone, withMiss } from '../progress/index.ts';

/** How a drill has gone so far, over every start of it: starting again takes back neither hints nor wrong markings. */
export interface Attempt {
	readonly hints: number;
	/** Markings with something still wrong. */
	readonly misses: number;
	readonly done: boolean;
}

export const FRESH: Attempt = Object.freeze({ hints: 0, misses: 0, done: false });

/** The attempt after a marking. */
export function markedAttempt(attempt: Attempt, { done }: Mark): Attempt {
	return done ? { ...attempt, done: true } : { ...attempt, misses: attempt.misses + 1 };
}

/** What a mark comes to, to be kept. */
export const resultOf = ({ seed }: Drill, mark: Mark, { hints }: Attempt): Result => ({
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
export function progressAfter(progress: Progress, drill: Drill, mark: Mark, attempt: Attempt, now: number): Progress {
	if (!mark.done) return attempt.misses === 0 && !attempt.done ? withMiss(progress, drill.kind, now) : progress;
	const result = resultOf(drill, mark, attempt);
	if (attempt.done) return withAgain(progress, drill.kind, result);
	return withDone(progress, drill.kind, result, attempt.hints === 0 && attempt.misses === 0, now);
}
