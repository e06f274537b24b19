import { EIA485 } from '../dmx/index.ts';
import { profileOf } from './make.ts';
import type { Plan, PlanRow } from './types.ts';

/** Metres of a line at most. Common practice, no source for the number. */
const LINE_METRES = 300;
/** Metres of each cable for drops and going round things. Assumed; common practice, no source. */
export const CABLE_SLACK = 2;
/** Metres of the cable from the desk to a splitter beside it. Assumed; common practice, no source. */
const FEED = 2;
/** Lengths that data cables come in, metres. Common practice, no source. */
const LENGTHS = [1, 2, 3, 5, 10, 15, 20, 25, 30, 50, 75, 100, 150, 200, 300];

/** One cable of the plan. */
export interface PlanCable {
	/** The row it comes from; null for the desk or a splitter beside it. */
	readonly from: string | null;
	readonly to: string;
	/** Metres along the room and up or down, with slack. */
	readonly metres: number;
	/** The shortest cable made that is as long, metres. */
	readonly length: number;
}

/** A line from a source or a splitter's output through fixtures to a terminator. */
export interface LineRun {
	readonly universe: number;
	/** Row ids in the order of the line. */
	readonly rows: readonly string[];
	readonly cables: readonly PlanCable[];
	readonly unitLoads: number;
	/** Metres of its cables. */
	readonly metres: number;
	/** Row id of the fixture whose data out takes the terminator; null where no cable comes to any. */
	readonly terminator: string | null;
}

/** The runs of one universe; more than one takes a splitter. */
export interface LinePlan {
	readonly universe: number;
	readonly runs: readonly LineRun[];
	/** Metres of the cable from the desk to the splitter; null where there is none. */
	readonly feed: number | null;
}

/** Rows in the order a line goes through them: along the room, those of one place in the order of the plan. */
export const alongRoom = (rows: readonly PlanRow[]): PlanRow[] => rows.toSorted((a, b) => a.place.x - b.place.x);

/**
 * Rows of one universe in the order its line goes through them: along the room, but one that is fed from another comes right after
 * it, with all that is fed on from there. Where two are fed from one the first along the room is; a row that is fed from one of
 * another universe, or from itself round a circle, stands where the room has it.
 */
export function lineOrder(rows: readonly PlanRow[]): PlanRow[] {
	const along = alongRoom(rows);
	const byId = new Map(along.map((row) => [row.id, row]));
	const next = new Map<string, PlanRow>();
	for (const row of along) {
		const { after } = row;
		if (after !== undefined && byId.has(after) && !next.has(after)) next.set(after, row);
	}
	const fed = new Set([...next.values()].map(({ id }) => id));
	const order = new Set<PlanRow>();
	const follow = (head: PlanRow): void => {
		for (let row: PlanRow | undefined = head; row && !order.has(row); row = next.get(row.id)) order.add(row);
	};
	for (const row of along) if (!fed.has(row.id)) follow(row);
	// what is left goes round in circles
	for (const row of along) follow(row);
	return [...order];
}

/**
 * How the rows are linked: universe by universe along the room, or as somebody said ({@link lineOrder}), a new run where the line would hold more than 32 unit loads
 * (EIA-485) or more than {@link LINE_METRES}. The desk stands at the start of the wall. Behind a leader all is one run.
 */
export function linesOf(plan: Plan): LinePlan[] {
	const universes = plan.source === 'leader' ? [1] : [...new Set(plan.rows.map(({ universe }) => universe))];
	return universes
		.sort((a, b) => a - b)
		.map((universe) => {
			const rows = plan.source === 'leader' ? plan.rows : plan.rows.filter((row) => row.universe === universe);
			const runs = runsOf(plan, universe, leaderFirst(plan, lineOrder(rows)));
			return { universe, runs, feed: plan.source === 'desk' && runs.length > 1 ? FEED : null };
		});
}

/** The row that leads: the first along the room. */
export const leaderOf = (plan: Plan): PlanRow | null =>
	plan.source === 'leader' ? (alongRoom(plan.rows)[0] ?? null) : null;

const leaderFirst = (plan: Plan, rows: PlanRow[]): PlanRow[] => {
	const leader = leaderOf(plan);
	return leader ? [leader, ...rows.filter((row) => row !== leader)] : rows;
};

/** Where a row's data comes from and goes on to. */
export interface DataLink {
	/** A row's id; null for the desk or a splitter beside it, and for nothing where the row leads. */
	readonly from: string | null;
	/** Whether it comes from a splitter. */
	readonly split: boolean;
	/** A row's id; null where the line ends. */
	readonly to: string | null;
	/** Whether a terminator goes into its data out. */
	readonly terminates: boolean;
}

/** The data links of a plan, by row id. */
export function linksOf(plan: Plan): ReadonlyMap<string, DataLink> {
	const links = new Map<string, DataLink>();
	for (const { runs, feed } of linesOf(plan))
		for (const { rows, cables, terminator } of runs) {
			const froms = new Map(cables.map(({ from, to }) => [to, from]));
			for (const [i, row] of rows.entries()) {
				const from = froms.get(row) ?? null;
				links.set(row, {
					from,
					split: feed !== null && from === null,
					to: rows[i + 1] ?? null,
					terminates: row === terminator,
				});
			}
		}
	return links;
}

function runsOf(plan: Plan, universe: number, rows: readonly PlanRow[]): LineRun[] {
	const runs: { rows: string[]; cables: PlanCable[]; unitLoads: number; metres: number }[] = [];
	let before: PlanRow | null = null;
	for (const row of rows) {
		const loads = profileOf(plan, row.profile)?.unitLoads ?? 1;
		let run = runs.at(-1);
		const cable = cableTo(row, before);
		const isFull =
			run !== undefined &&
			plan.source === 'desk' &&
			(run.unitLoads + loads > EIA485.mostUnitLoads || run.metres + cable.length > LINE_METRES);
		if (!run || isFull) {
			run = { rows: [], cables: [], unitLoads: 0, metres: 0 };
			runs.push(run);
			before = null;
		}
		if (before || plan.source === 'desk') {
			const its = cableTo(row, before);
			run.cables.push(its);
			run.metres += its.length;
		}
		run.rows.push(row.id);
		run.unitLoads += loads;
		before = row;
	}
	// a fixture that leads nobody has no data cable, and nothing to end
	return runs.map((run) => ({ universe, ...run, terminator: run.cables.at(-1)?.to ?? null }));
}

function cableTo(row: PlanRow, before: PlanRow | null): PlanCable {
	const from = before?.place ?? { x: 0, y: 0 };
	const metres = Math.abs(row.place.x - from.x) + Math.abs(row.place.y - from.y) + CABLE_SLACK;
	return {
		from: before?.id ?? null,
		to: row.id,
		metres,
		length: LENGTHS.find((length) => length >= metres) ?? Math.ceil(metres),
	};
}
