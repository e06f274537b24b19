import type { Mark } from '../../../sim/drill/index.ts';
import { DEVICE } from '../../storage/index.ts';
import {
	changeProgress,
	type DrillResult,
	type KindRecord,
	type Progress,
	withAgain,
	withBegun,
	withDone,
	withMiss,
} from '../progress/index.ts';
import type { TaskName } from '../unfinished/index.ts';

/** How a drill has gone so far, over every start of it: starting again takes back neither hints nor wrong markings. */
export interface Attempt {
	readonly hints: number;
	/** Markings with something still wrong. */
	readonly misses: number;
	readonly done: boolean;
	/** Its seed was never begun before: a page loaded again in mid-try has begun it. */
	readonly fresh: boolean;
}

export const FRESH: Attempt = Object.freeze({ hints: 0, misses: 0, done: false, fresh: true });

/** The attempt of one who begins now. @param record what was kept before that */
export function attemptFrom(record: KindRecord | undefined, { seed }: TaskName): Attempt {
	const open = record?.open?.seed === seed ? record.open : null;
	const fresh = !record?.tried.includes(seed);
	return { hints: open?.hints ?? 0, misses: open?.misses ?? 0, done: false, fresh };
}

/** Logs that a drill is begun, before its first press, so that one that is left and begun anew does not count as new. */
export async function beginAttempt(under: TaskName): Promise<Attempt> {
	let attempt: Attempt = FRESH;
	await changeProgress(DEVICE, (own) => {
		attempt = attemptFrom(own.get(under.kind), under);
		return withBegun(own, under.kind, under.seed);
	});
	return attempt;
}

/** The attempt after a marking. */
export function markedAttempt(attempt: Attempt, { done }: Mark): Attempt {
	return done ? { ...attempt, done: true } : { ...attempt, misses: attempt.misses + 1 };
}

/** What a mark comes to, to be kept. */
export const resultOf = ({ seed }: TaskName, mark: Mark, { hints }: Attempt): DrillResult => ({
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
export function progressAfter(
	progress: Progress,
	under: TaskName,
	mark: Mark,
	attempt: Attempt,
	now: number,
): Progress {
	if (!mark.done) return attempt.misses === 0 && !attempt.done ? withMiss(progress, under.kind, now) : progress;
	const best = progress.get(under.kind)?.best;
	// a way with harm in it is never better than one without
	const result = mark.harm.length > 0 && best ? best : resultOf(under, mark, attempt);
	if (attempt.done) return withAgain(progress, under.kind, result);
	// another tab may have asked for a hint of the same drill
	const open = progress.get(under.kind)?.open;
	const isHelped = attempt.hints > 0 || (open?.seed === under.seed && open.hints > 0);
	const isClean = !isHelped && attempt.misses === 0 && mark.harm.length === 0;
	return withDone(progress, under.kind, result, isClean && !attempt.fresh ? 'again' : isClean, now);
}
