import { startWords } from '#words/plan/index.ts';
import { emptyPlan, type Plan, profileOf, rowFootprint, withRows } from '../../../shared/plan/index.ts';
import { nameOf } from './view.ts';

/** A plan with nothing in it. */
export const emptyOne = (): Plan => emptyPlan(startWords.newName);

/** A row of like fixtures from a start address on, back to back; what goes past 512 goes on to the next universe. */
export function rowOf(count: number, profile: string, first: number): Plan {
	const plan = withRows(
		emptyOne(),
		Array.from({ length: count }, () => ({ profile })),
		nameOf,
	);
	const [row] = plan.rows;
	const width = row && profileOf(plan, profile) ? rowFootprint(plan, row) : 1;
	let universe = 1;
	let address = first;
	const rows = plan.rows.map((each) => {
		if (address + width - 1 > 512) {
			universe++;
			address = 1;
		}
		const placed = { ...each, universe, address };
		address += width;
		return placed;
	});
	return { ...plan, rows };
}
