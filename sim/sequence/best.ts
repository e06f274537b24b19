import { allowed, askNext, isSettled, USUAL_CELLS } from './ask.ts';
import { requireAsking } from './guard.ts';
import { type Plan, Planner } from './plan.ts';
import { type Search, suspectsByMend } from './search.ts';
import type { AskOptions } from './types.ts';
import { outcomesOf } from './weights.ts';

/** Whether every suspect predicts something of a check. */
function predictsAll({ table }: Search, check: number): boolean {
	return outcomesOf(table, check).every((outcome) => outcome !== table.counts[check]);
}

/**
 * The next check, whether answers may be wrong or not: where none ever is, and every suspect predicts every answer, by the planner
 * of `sequence`, which is exact with few suspects left; otherwise by `askNext`.
 * @returns null where the search is over: one mend holds the share `search.settled`, or no check left tells anything.
 * @throws InputError as `askNext`.
 */
export function bestCheck(search: Search, options: AskOptions): Plan | null {
	const { errors, here = 0, cells = USUAL_CELLS } = options;
	requireAsking(search, options);
	if (isSettled(search)) return null;
	const checks = allowed(search, options);
	if (checks.some((check) => errors[check] !== 0 || !predictsAll(search, check))) return askNext(search, options);
	const inPlay = [...search.weights.keys()].filter((suspect) => (search.weights[suspect] as number) > 0);
	const limits = { exactAt: 24, tries: cells / 20, width: 14, leafAt: 8, cells };
	return new Planner(search).plan(suspectsByMend(search, inPlay), checks, here, limits);
}
