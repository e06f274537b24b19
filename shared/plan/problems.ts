import { EIA485, LAST_SLOT, LAST_UNIVERSE } from '../dmx/index.ts';
import type { Profile } from '../profile/index.ts';
import { type FeedProblem, fedBy, fedWithin, feedProblems, feedRepairs } from './feeds.ts';
import { offBy } from './found.ts';
import { leaderOf, linesOf } from './line.ts';
import { profileOf } from './make.ts';
import { packed, placed, rowFootprint } from './pack.ts';
import { canSet } from './panel.ts';
import type { Plan, PlanRow } from './types.ts';

/** Most outputs of a desk on a rig sheet, one universe each. */
export const DESK_OUTPUTS = 8;

/** What is wrong with a plan, or to be known of it; each names the rows it is about. */
export type PlanProblem =
	/** Two share some slots, which no crew means. */
	| { readonly is: 'clash'; readonly rows: readonly [string, string]; readonly from: number; readonly to: number }
	/** Two on one start address with one footprint: often meant, so that they move as one. */
	| { readonly is: 'same-address'; readonly rows: readonly [string, string] }
	| { readonly is: 'past-512'; readonly rows: readonly [string]; readonly last: number }
	/** The panel was seen to show another mode, or another start address, than the plan. */
	| { readonly is: 'panel-mode' | 'panel-address'; readonly rows: readonly [string] }
	/** The panel has no way to what the plan asks. */
	| { readonly is: 'no-such-address' | 'cannot-lead' | 'cannot-follow'; readonly rows: readonly [string] }
	/** A follower of another kind, or in another mode, than the leader: it reads the leader's slots as its own. */
	| { readonly is: 'follower-kind' | 'follower-mode'; readonly rows: readonly [string, string] }
	/** A follower that reads from its own start address stands at another than 1. */
	| { readonly is: 'follower-address'; readonly rows: readonly [string] }
	| FeedProblem
	/** More on the line behind a leader than a line takes: nothing behind one splits it. */
	| { readonly is: 'too-many-loads'; readonly rows: readonly []; readonly unitLoads: number; readonly most: number }
	/** More universes than a rig sheet's desk has outputs. */
	| { readonly is: 'universes'; readonly rows: readonly []; readonly universes: number; readonly outputs: number };

/** What one tap changes; a row that is `after` null is fed by the room again. */
export type RowChange = Partial<Pick<PlanRow, 'mode' | 'universe' | 'address' | 'labelled'>> & {
	readonly after?: string | null;
};

/** A repair of a problem, as data: what becomes of which rows. */
export interface Repair {
	/** `move`: to free slots; `mode`: to a mode that fits; `use-shown`: what the panel shows; `pack`: all that are not labelled, packed afresh; `feed`: fed from another; `along`: fed by the room. */
	readonly do: 'move' | 'mode' | 'use-shown' | 'pack' | 'feed' | 'along';
	readonly changes: readonly { readonly row: string; readonly change: RowChange }[];
}

/**
 * All that is wrong with a plan, in the order of its rows; of a heap on one spot each is told once, with the one that reaches
 * furthest over it. `repairsOf` says what can be done of each.
 */
export function problemsOf(plan: Plan): PlanProblem[] {
	const own = plan.rows.flatMap((row) => ofRow(plan, row));
	const overlapping = plan.source === 'desk' ? overlapsOf(plan) : [];
	const universes = new Set(plan.rows.map(({ universe }) => universe)).size;
	const many: PlanProblem[] =
		plan.source === 'desk' && universes > DESK_OUTPUTS
			? [{ is: 'universes', rows: [], universes, outputs: DESK_OUTPUTS }]
			: [];
	return [...overlapping, ...own, ...many, ...feedProblems(plan), ...ofLeaderLine(plan)];
}

/** One problem for each row that begins within another's slots. */
function overlapsOf(plan: Plan): PlanProblem[] {
	const placed = plan.rows
		.map((row) => ({ row, footprint: rowFootprint(plan, row) }))
		.toSorted((a, b) => a.row.universe - b.row.universe || a.row.address - b.row.address);
	const found: PlanProblem[] = [];
	let reach: (typeof placed)[number] | null = null;
	for (const each of placed) {
		if (reach && reach.row.universe !== each.row.universe) reach = null;
		const end = (it: typeof each): number => Math.min(LAST_SLOT, it.row.address + it.footprint - 1);
		if (reach && end(reach) >= each.row.address) {
			const rows = [reach.row.id, each.row.id] as const;
			const isSame = reach.row.address === each.row.address && reach.footprint === each.footprint;
			found.push(
				isSame
					? { is: 'same-address', rows }
					: { is: 'clash', rows, from: each.row.address, to: Math.min(end(reach), end(each)) },
			);
		}
		if (!reach || end(each) > end(reach)) reach = each;
	}
	return found;
}

function ofRow(plan: Plan, row: PlanRow): PlanProblem[] {
	const profile = profileOf(plan, row.profile);
	if (!profile) return [];
	const rows = [row.id] as const;
	const is = offBy(row);
	const shown: PlanProblem[] = is === null ? [] : [{ is, rows }];
	if (plan.source === 'leader') return [...ofFollower(plan, row, profile), ...shown];
	const last = row.address + rowFootprint(plan, row) - 1;
	return [
		...(last > LAST_SLOT ? [{ is: 'past-512', rows, last } as const] : []),
		...(canSet(profile, 'address', row.address) ? [] : [{ is: 'no-such-address', rows } as const]),
		...shown,
	];
}

function ofFollower(plan: Plan, row: PlanRow, profile: Profile): PlanProblem[] {
	const leader = leaderOf(plan);
	if (!leader) return [];
	if (leader.id === row.id) return canSet(profile, 'lead', 'on') ? [] : [{ is: 'cannot-lead', rows: [row.id] }];
	if (!canSet(profile, 'work', 'follow')) return [{ is: 'cannot-follow', rows: [row.id] }];
	const rows = [leader.id, row.id] as const;
	if (leader.profile !== row.profile) return [{ is: 'follower-kind', rows }];
	if (leader.mode !== row.mode) return [{ is: 'follower-mode', rows }];
	return profile.follows === 'own-address' && row.address !== 1 ? [{ is: 'follower-address', rows: [row.id] }] : [];
}

function ofLeaderLine(plan: Plan): PlanProblem[] {
	if (plan.source !== 'leader') return [];
	const { mostUnitLoads: most } = EIA485;
	return linesOf(plan).flatMap(({ runs }) =>
		runs.flatMap(({ unitLoads }): PlanProblem[] =>
			unitLoads > most ? [{ is: 'too-many-loads', rows: [], unitLoads, most }] : [],
		),
	);
}

/** What can be done of a problem by one tap, the least first; each clears it. Empty where a person must think. */
export function repairsOf(plan: Plan, problem: PlanProblem): Repair[] {
	return repairsFor(plan, problem).filter((repair) => clears(plan, problem, repair));
}

/** Whether nothing of a problem is left after a repair: two rows that share slots share none, another is not told again. */
function clears(plan: Plan, problem: PlanProblem, repair: Repair): boolean {
	const kind = ({ is }: PlanProblem): string => (is === 'same-address' ? 'clash' : is);
	const about = ({ rows }: PlanProblem): string => rows.toSorted().join(' ');
	const after = problemsOf(repaired(plan, repair));
	return !after.some((each) => kind(each) === kind(problem) && about(each) === about(problem));
}

function repairsFor(plan: Plan, problem: PlanProblem): Repair[] {
	const id = problem.rows.at(-1);
	const row = plan.rows.find((each) => each.id === id);
	if (!row) return [];
	const { shows } = row;
	switch (problem.is) {
		case 'clash':
		case 'same-address': {
			// one with no label on it yet is less work to move
			const other = plan.rows.find(({ id: each }) => each === problem.rows[0]);
			const mover = row.labelled && other?.labelled === false ? other : row;
			return [...moved(plan, mover), ...repacked(plan)];
		}
		case 'no-such-address':
			return [...moved(plan, row), ...repacked(plan)];
		case 'past-512':
			return [...moved(plan, row), ...otherModes(plan, row), ...repacked(plan)];
		case 'panel-mode':
		case 'panel-address':
			// the other way, to set the panel, is what the slip says; the problem stands until then
			return shows ? [{ do: 'use-shown', changes: [{ row: row.id, change: { ...shows } }] }] : [];
		case 'follower-mode': {
			const leader = leaderOf(plan);
			return leader ? [{ do: 'mode', changes: [{ row: row.id, change: { mode: leader.mode } }] }] : [];
		}
		case 'fed-twice':
		case 'fed-in-circle':
		case 'leader-fed':
			return feedRepairs(plan, problem).map(({ row: fed, from }) => ({
				do: from === null ? 'along' : 'feed',
				changes: [{ row: fed, change: { after: from } }],
			}));
		case 'follower-address':
			return [{ do: 'move', changes: [{ row: row.id, change: { address: 1 } }] }];
		default:
			return [];
	}
}

/** The row at the first free slots from its universe on, by the plan's rules, that its panel can be set to; its label is wrong then. */
function moved(plan: Plan, row: PlanRow): Repair[] {
	const profile = profileOf(plan, row.profile);
	if (!profile) return [];
	for (let from = row.universe; from <= LAST_UNIVERSE; ) {
		const spot = placed(plan, new Set([row.id]), from).rows.find(({ id }) => id === row.id);
		if (!spot) return [];
		const { universe, address } = spot;
		if (canSet(profile, 'address', address))
			return [{ do: 'move', changes: [{ row: row.id, change: { universe, address, labelled: false } }] }];
		// at the start of an empty universe there is no better
		if (address === 1) return [];
		from = universe + 1;
	}
	return [];
}

/** Modes of the row's fixture that end within 512 from where it stands, the largest first. */
function otherModes(plan: Plan, row: PlanRow): Repair[] {
	const profile = profileOf(plan, row.profile);
	if (!profile) return [];
	return profile.modes
		.map(({ id }) => ({ id, footprint: rowFootprint(plan, { profile: row.profile, mode: id }) }))
		.filter(({ footprint }) => row.address + footprint - 1 <= LAST_SLOT)
		.toSorted((a, b) => b.footprint - a.footprint)
		.slice(0, 1)
		.map(({ id }) => ({ do: 'mode', changes: [{ row: row.id, change: { mode: id } }] }));
}

function repacked(plan: Plan): Repair[] {
	const { rows } = packed(plan).plan;
	const changes = rows.flatMap(({ id, universe, address }, i) => {
		const before = plan.rows[i];
		return before && (before.universe !== universe || before.address !== address)
			? [{ row: id, change: { universe, address } }]
			: [];
	});
	return changes.length > 0 ? [{ do: 'pack', changes }] : [];
}

/** The plan with a repair done. Changes of rows that are gone are left out. */
export function repaired(plan: Plan, { changes }: Repair): Plan {
	const byRow = new Map(changes.map(({ row, change }) => [row, change]));
	const rows = plan.rows.map((row) => {
		const { after, ...change } = byRow.get(row.id) ?? {};
		return { ...(after === undefined ? row : fedBy(row, after)), ...change };
	});
	return fedWithin({ ...plan, rows });
}
