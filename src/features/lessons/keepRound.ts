import { DEVICE } from '../../storage/index.ts';
import { keepLearnt } from '../deck/index.ts';
import { changeProgress, withDone } from '../progress/index.ts';
import type { LessonCheck } from './checks.ts';

/** How a round went. */
export interface Went {
	readonly right: number;
	readonly of: number;
}

/**
 * Keeps a round of checks on the device, among the drills' results and under the lesson's own name (each wrong answer is a press
 * more than there had to be), and gives what was asked to the review.
 */
export async function keepRound(under: string, checks: readonly LessonCheck[], { right, of }: Went): Promise<void> {
	const now = Date.now();
	const result = { presses: 2 * of - right, fewest: of, hints: 0, milliseconds: 0, seed: 0 };
	await changeProgress(DEVICE, (progress) => withDone(progress, under, result, right === of, now));
	await keepLearnt(checks.map(({ skill }) => skill));
}
