import type { CautionId } from '#words/cautions/index.ts';
import { figureWords, planWords, problemText, repairText, rowWords } from '#words/plan/index.ts';
import { LAST_SLOT, slotsTaken } from '../../../shared/dmx/index.ts';
import {
	type Figure,
	fedBy,
	fedWithin,
	type NewRow,
	type Plan,
	type PlanProblem,
	type PlanRow,
	placed,
	profileOf,
	type Repair,
	rowFootprint,
	UNKNOWN_CIRCUIT,
	withRows,
} from '../../../shared/plan/index.ts';
import { PROFILE_IDS, type Profile, profileAtHand } from '../../../shared/profile/index.ts';
import { freshId } from '../../storage/index.ts';
import { modeName } from '../../wording/index.ts';

/** A start address as it is read at arm's length: three digits. */
export const threeDigits = (address: number): string => String(address).padStart(3, '0');

/** What a new fixture is called: its kind and a number. */
export const nameOf = ({ shape }: Profile, n: number): string => rowWords.names[shape](n);

/** A mode's own name and its footprint as a choice says it. */
export const modeTitle = (profile: Profile | null, mode: string): string => (profile ? modeName(profile, mode) : mode);

/** One stretch of a universe's ruler, in slots. */
export interface RulerBlock {
	readonly row: string;
	readonly name: string;
	readonly from: number;
	readonly to: number;
	readonly clashes: boolean;
}

export interface RulerView {
	readonly universe: number;
	readonly blocks: readonly RulerBlock[];
	/** Slots that somebody listens to. */
	readonly used: number;
}

/** The rulers of a plan, a universe each; with none where no desk sends. */
export function rulersOf(plan: Plan, problems: readonly PlanProblem[]): RulerView[] {
	if (plan.source === 'leader') return [];
	const clashing = new Set(problems.flatMap((it) => (it.is === 'clash' || it.is === 'past-512' ? it.rows : [])));
	const taken = plan.rows.map((row) => ({
		universe: row.universe,
		start: row.address,
		footprint: rowFootprint(plan, row),
	}));
	const byUniverse = new Map<number, RulerBlock[]>();
	for (const row of plan.rows) {
		const footprint = rowFootprint(plan, row);
		const block = {
			row: row.id,
			name: row.name,
			from: row.address,
			to: Math.min(LAST_SLOT, row.address + footprint - 1),
			clashes: clashing.has(row.id),
		};
		byUniverse.set(row.universe, [...(byUniverse.get(row.universe) ?? []), block]);
	}
	return [...byUniverse]
		.sort(([a], [b]) => a - b)
		.map(([universe, blocks]) => ({ universe, blocks, used: slotsTaken(taken, universe) }));
}

/** A problem in words. */
export function saysOf(plan: Plan, problem: PlanProblem): string {
	const names = problem.rows.map((id) => plan.rows.find((row) => row.id === id)?.name ?? id);
	return problemText(problem.is, { ...problem, names });
}

/** What one tap does, in words. */
export function repairSays(plan: Plan, repair: Repair): string {
	const [first] = repair.changes;
	const row = plan.rows.find(({ id }) => id === first?.row);
	const { universe = row?.universe ?? 1, address = row?.address ?? 1, mode = row?.mode ?? '' } = first?.change ?? {};
	return repairText(repair.do, {
		name: row?.name ?? '',
		address: `${planWords.universe(universe)}, ${threeDigits(address)}`,
		mode: modeTitle(row ? profileOf(plan, row.profile) : null, mode),
		count: repair.changes.length,
		from: plan.rows.find(({ id }) => id === first?.change.after)?.name ?? '',
		after: plan.rows.find(({ id }) => id === row?.after)?.name ?? '',
		isLabelled: row?.labelled === true,
	});
}

/** What a figure is about, in words. */
export function ofWhat(plan: Plan, { id, of }: Figure): string {
	if (id === 'battery-hours' || id === 'hours-spare' || id === 'charge-hours') return profileOf(plan, of)?.name ?? of;
	if (id === 'unit-loads' || id === 'cable-metres') {
		const [universe = '', run = ''] = of.split('.');
		return plan.source === 'leader' ? figureWords.leaderLine : figureWords.line(universe, run);
	}
	if (id === 'charge-amperes') return '';
	return figureWords.circuit(of);
}

/** What a circuit is called; of one that nobody knows, that. */
export const circuitSays = (circuit: string): string =>
	circuit.trim() === UNKNOWN_CIRCUIT ? rowWords.circuitUnknown : circuit;

/** Rows with one changed. One that goes to another universe is fed from none there, and feeds none. */
export const withRow = (plan: Plan, id: string, change: Partial<PlanRow>): Plan =>
	fedWithin({ ...plan, rows: plan.rows.map((row) => (row.id === id ? { ...row, ...change } : row)) });

/** Rows with one at another place along the room, on a wall that is long enough for it. @param x m, 0 to 200 */
export function movedTo(plan: Plan, id: string, x: number): Plan {
	const row = plan.rows.find((each) => each.id === id);
	if (!row || row.place.x === x) return plan;
	const width = Math.max(plan.hall.width, Math.min(200, Math.ceil(x)));
	return { ...withRow(plan, id, { place: { ...row.place, x } }), hall: { ...plan.hall, width } };
}

/** Rows with one fed from another; from none in particular where that is empty. */
export const fedFrom = (plan: Plan, id: string, from: string): Plan => ({
	...plan,
	rows: plan.rows.map((row) => (row.id === id ? fedBy(row, from === '' ? null : from) : row)),
});

/**
 * The plan with fixtures added: one that comes with a start address keeps it, the others are placed from their own universe on. Ids
 * are drawn by chance: rows may have been taken off, here or on another phone, and their ticks are kept.
 */
export function withMore(plan: Plan, added: readonly NewRow[]): Plan {
	const next = withRows(plan, added, nameOf, freshId(4));
	if (next.source === 'leader') return next;
	const loose = next.rows.slice(plan.rows.length).filter(({ labelled }) => !labelled);
	const universes = [...new Set(loose.map(({ universe }) => universe))].sort((a, b) => a - b);
	return universes.reduce((so, universe) => {
		const ids = loose.flatMap((row) => (row.universe === universe ? [row.id] : []));
		return placed(so, new Set(ids), universe);
	}, next);
}

/** Fixtures that a pasted list may name: the plan's own first. */
export const pasteProfiles = (plan: Plan): Profile[] => [
	...plan.profiles,
	...PROFILE_IDS.flatMap((id) => profileAtHand(id) ?? []),
];

/** Rows with one moved up or down the list. */
export function movedRow(plan: Plan, id: string, by: -1 | 1): Plan {
	const at = plan.rows.findIndex((row) => row.id === id);
	const row = plan.rows[at];
	const other = plan.rows[at + by];
	if (!row || !other) return plan;
	return { ...plan, rows: plan.rows.map((each, i) => (i === at ? other : i === at + by ? row : each)) };
}

/** The plan with a row taken off. What was fed by it goes by the room again. */
export const withoutRow = (plan: Plan, id: string): Plan =>
	fedWithin({ ...plan, rows: plan.rows.filter((row) => row.id !== id) });

/** Which cautions go with handling these fixtures, by where they go and what they give. */
export function cautionsOf(plan: Plan, rows: readonly PlanRow[]): CautionId[] {
	const profiles = rows.map((row) => profileOf(plan, row.profile));
	return [
		...(rows.some(({ place }) => place.overhead) ? (['hanging', 'height'] as const) : []),
		// one that runs on its battery is plugged in to be charged
		...(rows.length > 0 ? (['mains', 'hot'] as const) : []),
		...(profiles.some((profile) => profile?.power.battery) ? (['batteries'] as const) : []),
		...(profiles.some((profile) => profile?.emitters.some(({ ultraviolet }) => ultraviolet))
			? (['ultraviolet'] as const)
			: []),
		...(rows.length > 0 ? (['staring', 'flashing'] as const) : []),
	];
}
