/** What tonight's rig does in the worker. */

import type { Plan } from '../../../shared/plan/index.ts';
import { loadProfiles } from '../../../shared/sheet/index.ts';
import { type Slip, slipFor } from '../../../sim/slip/index.ts';

/** The presses of every row, null for one whose panel cannot be brought there. */
export interface SlipRoutes {
	/** @param plan as the page has read or made it @throws NotFetched */
	slips(asks: { readonly plan: Plan; readonly fromDefaults: boolean }): Promise<readonly (Slip | null)[]>;
}

export const routes: SlipRoutes = {
	async slips({ plan, fromDefaults }) {
		await loadProfiles({ fixtures: plan.rows });
		return plan.rows.map((row) => slipFor(plan, fromDefaults ? { ...row, shows: null } : row));
	},
};
