/** What tonight's rig does in the worker. */

import type { Plan, SlipFrom } from '../../../shared/plan/index.ts';
import { loadProfiles } from '../../../shared/sheet/index.ts';
import { type PanelAtRest, panelAtRest, type Slip, slipFor } from '../../../sim/slip/index.ts';

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
	/** What the panel of a row says once it stands as planned; null where there is no such row. @throws NotFetched */
	panel(asks: { readonly plan: Plan; readonly row: string }): Promise<PanelAtRest | null>;
}

export const routes: SlipRoutes = {
	async panel({ plan, row: id }) {
		const row = plan.rows.find((each) => each.id === id);
		if (!row) return null;
		await loadProfiles({ fixtures: [row] });
		return panelAtRest(plan, row);
	},
	async slips({ plan, from, before = null, only }) {
		await loadProfiles({ fixtures: [...plan.rows, ...(before?.rows ?? [])] });
		const rows = only ? plan.rows.filter(({ id }) => only.includes(id)) : plan.rows;
		return rows.map((row) =>
			slipFor(plan, from === 'shown' ? row : { ...row, shows: null }, from === 'before' ? before : null),
		);
	},
};
