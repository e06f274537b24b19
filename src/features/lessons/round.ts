import type { PaperRecipeInput } from '../../../shared/paper/index.ts';
import type { LessonCheck } from './checks.ts';

/** A question to be set. */
export interface SetQuestion {
	readonly recipe: PaperRecipeInput;
	readonly seed: number;
}

/** So many questions of a lesson's kinds, each kind as often as the others as far as that goes, in turn from one drawn by the seeds. */
export function asksOf(checks: readonly LessonCheck[], count: number, seeds: ArrayLike<number>): SetQuestion[] {
	const first = seeds[0] ?? 0;
	return Array.from({ length: count }, (_, i) => {
		const check = checks[(first + i) % checks.length] as LessonCheck;
		return { recipe: check.recipe, seed: seeds[i] ?? i };
	});
}
