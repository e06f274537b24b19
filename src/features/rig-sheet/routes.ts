/** What tonight's rig does in the worker. */

import type { Plan, SlipFrom } from '../../../shared/plan/index.ts';
import { loadProfiles } from '../../../shared/sheet/index.ts';
import { type Slip, slipFor } from '../../../sim/slip/index.ts';

export interface SlipsAsked {
	/** As the page has read or made it. */
	readonly plan: Plan;
	readonly from: SlipFrom;
	/** The plan that the lights were set by, where slips begin from that. */
	readonly before?: Plan | null;
	/** Row ids; all where they are left out. */
	readonly only?: readonly string[];
}

/** The presses of every row asked for, null for one whose panel cannot be brought there. */
export interface SlipRoutes {
	/** @throws NotFetched */
	slips(asks: SlipsAsked): Promise<readonly (Slip | null)[]>;
}

export const routes: SlipRoutes = {
	async slips({ plan, from, before = null, only }) {
		await loadProfiles({ fixtures: [...plan.rows, ...(before?.rows ?? [])] });
		const rows = only ? plan.rows.filter(({ id }) => only.includes(id)) : plan.rows;
		return rows.map((row) =>
			slipFor(plan, from === 'shown' ? row : { ...row, shows: null }, from === 'before' ? before : null),
		);
	},
};
