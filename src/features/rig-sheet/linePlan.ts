import { linesOf, type Plan } from '../../../shared/plan/index.ts';

/** The drawing's width and what it keeps free at both sides, and the room of one fixture, mm on paper. */
export const DRAWING = Object.freeze({ width: 180, side: 12, dot: 7, level: 8 });

/** A fixture on the drawing. */
export interface Stop {
	readonly row: string;
	/** Its number in the list, from 1. */
	readonly n: number;
	/** mm from the left of the drawing, in step with its place along the room. */
	readonly at: number;
	/** 0 for the lowest: those that stand close are drawn one above another. */
	readonly level: number;
	readonly overhead: boolean;
}

/** One run of the line as it is drawn. */
export interface Lane {
	readonly universe: number;
	/** From 1 within its universe. */
	readonly run: number;
	/** Whether a terminator ends it. */
	readonly terminates: boolean;
	readonly stops: readonly Stop[];
	readonly levels: number;
}

/** The lowest level on which each of these has room, left to right. @param at mm, in any order @param room mm that each takes */
export function levelsFor(at: readonly number[], room: number): number[] {
	const ends: number[] = [];
	const levels = at.map(() => 0);
	const order = at.map((_, i) => i).sort((a, b) => (at[a] ?? 0) - (at[b] ?? 0) || a - b);
	for (const i of order) {
		const x = at[i] ?? 0;
		let level = ends.findIndex((end) => x - end >= room);
		if (level < 0) level = ends.length;
		ends[level] = x;
		levels[i] = level;
	}
	return levels;
}

/** Every run of a plan, as it is drawn along the room. */
export function lanesOf(plan: Plan): Lane[] {
	const numbers = new Map(plan.rows.map(({ id }, i) => [id, i + 1]));
	const rows = new Map(plan.rows.map((row) => [row.id, row]));
	const wide = Math.max(plan.hall.width, ...plan.rows.map(({ place }) => place.x));
	const { width, side, dot } = DRAWING;
	return linesOf(plan).flatMap(({ universe, runs }) =>
		runs.map((run, i): Lane => {
			const at = run.rows.map((row) => side + ((rows.get(row)?.place.x ?? 0) / wide) * (width - 2 * side));
			const levels = levelsFor(at, dot);
			return {
				universe,
				run: i + 1,
				terminates: run.terminator !== null,
				stops: run.rows.map((row, j) => ({
					row,
					n: numbers.get(row) ?? 0,
					at: at[j] ?? 0,
					level: levels[j] ?? 0,
					overhead: rows.get(row)?.place.overhead ?? false,
				})),
				levels: Math.max(0, ...levels) + 1,
			};
		}),
	);
}
