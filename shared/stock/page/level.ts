import { firstValue, type Grid, hasIn, type Row, yIn } from './grid.ts';

/** In letter sizes: two baselines are level within this. */
const LEVEL = 0.35;
/** How far a number may stand off its rows, where the first or last of those has several lines. */
const FAR = 2.2;

const bodyOf = ({ rows, head }: Grid): Row[] => rows.filter((row) => !row.isPlain && !head.includes(row));

/** A range that was cut at the end of a line (`0 –` and `127` below it) is put together. */
export function joinRanges(grid: Grid): void {
	for (const column of grid.values) {
		const rows = bodyOf(grid).filter(({ cells }) => cells[column]);
		for (const [i, row] of rows.entries()) {
			const below = rows[i + 1];
			if (!below || below.y - row.y > 2 * grid.h || hasIn(below, grid.slots)) continue;
			const [one = '', two = ''] = [row.cells[column], below.cells[column]];
			const isOpen = /\d\s*%?\s*(?:[-–—~]|\bto|\.\.)$/i.test(one) && /^(?:0x)?[\da-f]{1,3}\s*%?$/i.test(two);
			const goesOn = /^(?:0x)?[\da-f]{1,3}\s*%?$/i.test(one) && /^(?:[-–—~]|to\b|\.\.)\s*\d/i.test(two);
			if (!isOpen && !goesOn) continue;
			row.cells[column] = `${one} ${two}`;
			below.cells[column] = '';
		}
	}
	grid.rows = grid.rows.filter(({ cells }) => cells.some((text) => text !== ''));
}

/**
 * Puts each channel's number and name on the row of its first band. In many manuals they stand at the middle of its rows; whose rows
 * those are is told by where the values begin anew. Where neither that nor rows below their number fit, it is marked.
 */
export function level(grid: Grid): void {
	if (grid.slots.length === 0 || grid.values.length === 0) return;
	const body = bodyOf(grid);
	if (isLevel(body, grid)) return;
	const moves = nearest(body, grid);
	if (!moves) {
		for (const row of body) if (hasIn(row, grid.slots)) row.doubts.push({ code: 'not-level', facts: {} });
		return;
	}
	for (const { from, to } of moves) {
		if (from === to) continue;
		for (const column of [...grid.slots, ...grid.names]) {
			to.cells[column] = from.cells[column] ?? '';
			from.cells[column] = '';
		}
		to.doubts.push(...from.doubts.splice(0));
	}
	grid.rows = grid.rows.filter(({ cells }) => cells.some((text) => text !== ''));
}

/** Whether every channel stands on the row of its first band, or has none. */
function isLevel(body: readonly Row[], grid: Grid): boolean {
	let isBegun = false;
	let label: Row | null = null;
	for (const row of body) {
		if (hasIn(row, grid.slots)) {
			label = row;
			isBegun = hasIn(row, grid.values);
			continue;
		}
		if (!hasIn(row, grid.values)) continue;
		if (!label || !isBegun || firstValue(row, grid) === 0) return false;
	}
	return true;
}

/** Which row each channel's number and name go to, by the nearest run of its values; null where some have none or two. */
function nearest(body: readonly Row[], grid: Grid): { from: Row; to: Row }[] | null {
	const runs: Row[][] = [];
	for (const row of body) {
		if (!hasIn(row, grid.values)) continue;
		const last = runs.at(-1);
		if (!last || firstValue(row, grid) === 0) runs.push([row]);
		else last.push(row);
	}
	const labels = body.filter((row) => hasIn(row, grid.slots));
	const moves: { from: Row; to: Row }[] = [];
	for (const run of runs) {
		const [first, last] = [run[0] as Row, run.at(-1) as Row];
		const [from, to] = [yIn(first, grid.values), yIn(last, grid.values)];
		const off = (row: Row): number => Math.max(0, from - yIn(row, grid.slots), yIn(row, grid.slots) - to);
		const [mine, other] = labels.toSorted((a, b) => off(a) - off(b));
		if (!mine || off(mine) > FAR * grid.h) return null;
		// one and no other: two would share the rows
		if (other && off(other) - off(mine) <= LEVEL * grid.h) return null;
		const before = moves.at(-1)?.from;
		if (before && before.y >= mine.y) return null;
		moves.push({ from: mine, to: first });
	}
	return moves;
}
