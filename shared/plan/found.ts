import { LAST_SLOT } from '../dmx/index.ts';
import { rowFootprint } from './pack.ts';
import type { Plan, PlanRow } from './types.ts';

/*
 * The rig against the desk: what panels were found to show beside what the patch says, and the walk from one to the next.
 */

/**
 * The shortest walk along the room past all of these fixtures, each looked at as it is passed: first to the end that is nearer,
 * then to the other.
 * @param from metres along the room where one stands
 */
export function shortestWalk(rows: readonly PlanRow[], from: number): PlanRow[] {
	const along = rows.toSorted((a, b) => a.place.x - b.place.x);
	const left = along.filter(({ place }) => place.x < from).reverse();
	const right = along.filter(({ place }) => place.x >= from);
	const leftFirst = from - (left.at(-1)?.place.x ?? from) <= (right.at(-1)?.place.x ?? from) - from;
	return leftFirst ? [...left, ...right] : [...right, ...left];
}

/** What one light does at the desk while its panel shows something else than the patch. */
export interface FoundOff {
	readonly row: PlanRow;
	readonly shows: NonNullable<PlanRow['shows']>;
	/** Channels of its universe that it answers to; they end at 512. */
	readonly from: number;
	readonly to: number;
	/** Its mode takes more channels than there are from there. */
	readonly runsOut: boolean;
	/** Of the channels that the desk has for it, those that reach it: all, some, or none of them. */
	readonly own: 'all' | 'some' | 'none';
	/** Row ids of the lights whose channels on the desk move it too. */
	readonly movedBy: readonly string[];
}

/** What somebody saw a row's panel show; null where nobody looked: what a bench showed is no look at the real one. */
export const seenOn = ({ shows, unseen }: PlanRow): PlanRow['shows'] => (unseen ? null : shows);

/** Whether somebody looked at the panel itself. */
export const isSeen = (row: PlanRow): boolean => seenOn(row) !== null;

/** What of a panel was seen to be otherwise than the patch has it, its mode before its start address; null where nothing was. */
export function offBy(row: PlanRow): 'panel-mode' | 'panel-address' | null {
	const shows = seenOn(row);
	if (shows === null || (shows.mode === row.mode && shows.address === row.address)) return null;
	return shows.mode === row.mode ? 'panel-address' : 'panel-mode';
}

/** Whether a panel was found to show something else than the patch has. */
export const isOff = (row: PlanRow): boolean => offBy(row) !== null;

/** The plan with what panels of some rows were seen to show; null where they are to be looked at again. */
export const sawPanels = (plan: Plan, ids: ReadonlySet<string>, shows: PlanRow['shows']): Plan => ({
	...plan,
	rows: plan.rows.map((row) => {
		if (!ids.has(row.id)) return row;
		const { unseen: _, ...rest } = row;
		return { ...rest, shows };
	}),
});

interface Channels {
	readonly from: number;
	readonly to: number;
}

const channelsAt = (plan: Plan, row: PlanRow, { mode, address }: { mode: string; address: number }): Channels => ({
	from: address,
	to: address + rowFootprint(plan, { profile: row.profile, mode }) - 1,
});
const meet = (one: Channels, other: Channels): boolean => one.from <= other.to && other.from <= one.to;

/** Every light whose panel was found to show something else, in the order of the plan, and what that does at the desk. Which output it hangs on is taken as planned. */
export function foundOff(plan: Plan): FoundOff[] {
	const desk = plan.rows.map((row) => ({ row, channels: channelsAt(plan, row, row) }));
	return plan.rows.flatMap((row): FoundOff[] => {
		const { shows } = row;
		if (!shows || !isOff(row)) return [];
		const heard = channelsAt(plan, row, shows);
		const its = channelsAt(plan, row, row);
		const covers = heard.from <= its.from && heard.to >= its.to;
		return [
			{
				row,
				shows,
				from: heard.from,
				to: Math.min(LAST_SLOT, heard.to),
				runsOut: heard.to > LAST_SLOT,
				own: covers ? 'all' : meet(heard, its) ? 'some' : 'none',
				movedBy: desk.flatMap((other) =>
					other.row.id !== row.id && other.row.universe === row.universe && meet(heard, other.channels)
						? [other.row.id]
						: [],
				),
			},
		];
	});
}
