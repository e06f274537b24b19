import { startWords } from '#words/plan/index.ts';
import { spread } from '../../../shared/dmx/index.ts';
import { emptyPlan, type Plan, rowFootprint, withRows } from '../../../shared/plan/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { nameOf } from './view.ts';

/** A plan with nothing in it. */
export const emptyOne = (): Plan => emptyPlan(startWords.newName);

/**
 * A row of like fixtures from a start address on, back to back; what goes past 512 goes on to the next universe.
 * @param own profiles that are not bundled, which the plan then carries
 */
export function rowOf(count: number, profile: string, first: number, own: readonly Profile[] = []): Plan {
	const plan = withRows(
		{ ...emptyOne(), profiles: [...own] },
		Array.from({ length: count }, () => ({ profile })),
		nameOf,
	);
	const spots = spread(
		{ universe: plan.rules.universe, slot: first },
		plan.rows.map((row) => rowFootprint(plan, row)),
	);
	const rows = plan.rows.map((row, i) => {
		const spot = spots[i];
		return spot ? { ...row, universe: spot.universe, address: spot.slot } : row;
	});
	return { ...plan, rows };
}
