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

/** Furthest that a drawing goes along the room, m: the wall, or the last fixture past it. */
const widest = (plan: Plan): number => Math.max(plan.hall.width, ...plan.rows.map(({ place }) => place.x));

/** Places that a drag stops at, m: finer ones are typed. */
const STEP = 0.5;

/** The place along the room of a point on the drawing, in steps and on the wall. @param at mm from the left @returns m, 0 to the end of the drawing */
export function placeAt(plan: Plan, at: number): number {
	const { width, side } = DRAWING;
	const wide = widest(plan);
	const x = Math.round((((at - side) / (width - 2 * side)) * wide) / STEP) * STEP;
	return Math.min(wide, Math.max(0, x));
}

/** The point on the drawing of a place along the room. @param x m @returns mm from the left */
export function pointOf(plan: Plan, x: number): number {
	const { width, side } = DRAWING;
	return side + (x / widest(plan)) * (width - 2 * side);
}

/** Every run of a plan, as it is drawn along the room. */
export function lanesOf(plan: Plan): Lane[] {
	const numbers = new Map(plan.rows.map(({ id }, i) => [id, i + 1]));
	const rows = new Map(plan.rows.map((row) => [row.id, row]));
	const { dot } = DRAWING;
	return linesOf(plan).flatMap(({ universe, runs }) =>
		runs.map((run, i): Lane => {
			const at = run.rows.map((row) => pointOf(plan, rows.get(row)?.place.x ?? 0));
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
