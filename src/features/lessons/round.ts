import type { PaperRecipeInput } from '../../../shared/paper/index.ts';
import type { Check } from './checks.ts';

/** A question to be set. */
export interface Asked {
	readonly recipe: PaperRecipeInput;
	readonly seed: number;
}

/** So many questions of a lesson's kinds, each kind as often as the others as far as that goes, in turn from one drawn by the seeds. */
export function asksOf(checks: readonly Check[], count: number, seeds: ArrayLike<number>): Asked[] {
	const first = seeds[0] ?? 0;
	return Array.from({ length: count }, (_, i) => {
		const check = checks[(first + i) % checks.length] as Check;
		return { recipe: check.recipe, seed: seeds[i] ?? i };
	});
}
