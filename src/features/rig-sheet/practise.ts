import { alongRoom, canSet, leaderOf, type Plan, planSheet, profileOf } from '../../../shared/plan/index.ts';

/** Most fixtures that are practised on at once: with more, a phone hides a fault for half a minute. */
export const MOST_PRACTISED = 24;

/** The part of a plan that is practised on: all of it, or its first fixtures along the room. */
export const practised = (plan: Plan): Plan =>
	plan.rows.length <= MOST_PRACTISED ? plan : { ...plan, rows: alongRoom(plan.rows).slice(0, MOST_PRACTISED) };

/** Whether a panel of the part practised on can be set wrong and put right: behind a leader only one that can be told to follow, and to play by itself. */
export function hasPanelTasks(plan: Plan): boolean {
	const part = practised(plan);
	if (part.source === 'desk') return part.rows.length > 0;
	return part.rows.some((row) => {
		const profile = row === leaderOf(part) ? null : profileOf(plan, row.profile);
		const can = (work: 'follow' | 'held' | 'programme'): boolean => profile !== null && canSet(profile, 'work', work);
		return can('follow') && (can('held') || can('programme'));
	});
}

/** Address of a hidden fault on this rig, the fault not drawn yet. @throws InputError `rig-plan.universes`, NotFetched */
export const faultAddress = async (plan: Plan): Promise<string> =>
	`/finder/practise/#rig=tonight&count=1&on=${await packed(plan)}`;

/** Address of a task at the panels of this rig. @param seed 0 to 2^32 - 1 @throws as `faultAddress` */
export const taskAddress = async (plan: Plan, seed: number): Promise<string> =>
	`/drills/own/#seed=${seed}&rig=${await packed(plan)}`;

/** The rig as a bench's link has it. */
async function packed(plan: Plan): Promise<string> {
	const { linkOf } = await import('../rig/index.ts');
	return (await linkOf({ sheet: planSheet(practised(plan)), log: [] })).replace('#rig=', '');
}
