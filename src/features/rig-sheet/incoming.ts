import { mergedTicks, newIn, type Plan, type RigTicks } from '../../../shared/plan/index.ts';
import type { BrowserStore } from '../../storage/index.ts';
import { keepRig, leanPlan, type RigHold, rigText } from './keep.ts';
import { type PlanReading, readPlanText } from './reading.ts';
import { ticksKeeper } from './ticksKeep.ts';

/** What a link or a file brought to a rig that is on the device already. */
export interface Came {
	/** Ticks and notes that were not known here; null where the device took none of them. */
	readonly count: number | null;
	readonly by: readonly string[];
	/** The plan it brought, where the one here is another. */
	readonly plan: Plan | null;
}

/** A plan on the page, and where it stands on the device. */
export interface Opened {
	readonly plan: Plan;
	readonly hold: RigHold | null;
	readonly before: Plan | null;
	readonly came: Came | null;
}

/** Merges ticks into those of a rig on the device. @returns how many were new, and whose */
function bringTicks(store: BrowserStore, id: string, ticks: RigTicks, now: number): Pick<Came, 'count' | 'by'> {
	const keeper = ticksKeeper(store, id, () => now);
	const fresh = newIn(keeper.look(), ticks);
	if (fresh.count > 0) keeper.change((all) => mergedTicks(all, ticks));
	return keeper.kept === 'kept' ? fresh : { count: null, by: fresh.by };
}

/**
 * What was read from a link or a file, as it is opened: a rig that this device has is opened as it is here, with the ticks merged
 * in and the other plan offered; one that it has not is kept under its own id, so that it is known again.
 * @param now ms since 1970 @throws NotFetched
 */
export async function openedFrom(
	store: BrowserStore,
	found: PlanReading & { readonly is: 'plan' },
	now: number,
): Promise<Opened> {
	const { plan, id, ticks, before = null } = found;
	if (id === undefined) return { plan, hold: null, before, came: null };
	const text = rigText(store, id);
	const here = text === null ? null : await readPlanText(text);
	// what stands under its id cannot be read, or not by this version: it stays, and this is a rig of its own
	if (here !== null && here.is !== 'plan') return { plan, hold: null, before, came: null };
	const fresh = ticks ? bringTicks(store, id, ticks, now) : { count: 0, by: [] };
	if (here === null)
		return { plan, hold: { id, from: null }, before, came: fresh.count === 0 ? null : { ...fresh, plan: null } };
	const isSame = JSON.stringify(leanPlan(here.plan)) === JSON.stringify(leanPlan(plan));
	// what sheets elsewhere were printed from is known here too from now on
	const hold =
		here.before === undefined && before
			? keepRig(store, { id, from: text }, here.plan, now, { before }).hold
			: { id, from: text };
	return {
		plan: here.plan,
		hold,
		before: here.before ?? before,
		came: { ...fresh, plan: isSame ? null : plan },
	};
}
