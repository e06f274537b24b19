import { stepShort } from '#words/plan/index.ts';
import {
	alongRoom,
	boardOf,
	linksOf,
	nextOf,
	type Plan,
	planSays,
	type RigTicks,
	walkOf,
} from '../../../shared/plan/index.ts';
import { stepDetail } from './ticksView.ts';

/** How far tonight's rig has come. */
export interface Tonight {
	readonly name: string;
	/** Along the room. */
	readonly lights: readonly { readonly id: string; readonly name: string; readonly isLit: boolean }[];
	readonly lit: number;
	/** Whether anything was ticked yet. */
	readonly isBegun: boolean;
	/** What is to be done now; null where all of it is done. */
	readonly next: { readonly step: string; readonly name: string; readonly detail: string } | null;
}

/** A plan and its ticks as the home page tells them. */
export function tonightOf(plan: Plan, ticks: RigTicks): Tonight {
	const board = boardOf(planSays(plan), ticks);
	const links = linksOf(plan);
	const lights = alongRoom(plan.rows).map(({ id, name }) => ({ id, name, isLit: board.isDone(id, 'lit') }));
	const at = nextOf(walkOf(plan), board);
	const row = plan.rows.find(({ id }) => id === at?.row);
	return {
		name: plan.name,
		lights,
		lit: lights.filter(({ isLit }) => isLit).length,
		isBegun: ticks.ticks.length > 0,
		next:
			at && row
				? {
						step: stepShort[at.step],
						name: row.name,
						detail: stepDetail(plan, row, links.get(row.id) ?? null, at.step),
					}
				: null,
	};
}
