import { type Grid, hasIn, joinCell, type Row, yIn } from './grid.ts';

/** In letter sizes: as far as this below a line, another goes on from it; further down it is another matter. */
const GOES_ON = 2.2;
/** Lines of one cell stand closer than rows do where the one gap is so many times the other. */
const CLOSER = 1.12;
const LEVEL = 0.35;

/** A row by where its cell in one column stands. */
interface Spot {
	readonly row: Row;
	readonly y: number;
}

/** Lines of a column that each row has. */
type Shared = ReadonlyMap<Row, readonly Spot[]>;

/**
 * Puts cells together that are set on several lines. A line with neither a channel nor a value belongs to the row above it, in a
 * table whose rows begin at their first line, or to the row whose values stand at the middle of its lines. Where a table can be read
 * both ways, and the gaps between its lines do not tell, each row in question is marked.
 */
export function joinWraps(grid: Grid): void {
	const body = grid.rows.filter((row) => !row.isPlain && !grid.head.includes(row));
	const columns = (body[0]?.cells ?? []).map((_, i) => i);
	for (const column of columns)
		if (![...grid.slots, ...grid.values, ...grid.names].includes(column))
			joinColumn(body, column, [...grid.values, ...grid.slots], grid.h);
	grid.rows = grid.rows.filter(({ cells }) => cells.some((text) => text !== ''));
}

/** Puts names together that are set on several lines, beside the rows of their channel. */
export function joinNames(grid: Grid): void {
	const body = grid.rows.filter((row) => !row.isPlain && !grid.head.includes(row));
	if (grid.slots.length > 0) for (const column of grid.names) joinColumn(body, column, grid.slots, grid.h);
	grid.rows = grid.rows.filter(({ cells }) => cells.some((text) => text !== ''));
}

/** @param by columns that a row has to itself: what has nothing there goes on from another row */
function joinColumn(body: readonly Row[], column: number, by: readonly number[], h: number): void {
	const anchors = body.filter((row) => hasIn(row, by)).map((row) => ({ row, y: yIn(row, by) }));
	const lines = body.filter((row) => hasIn(row, [column])).map((row) => ({ row, y: yIn(row, [column]) }));
	const loose = lines.filter(({ row }) => !hasIn(row, by));
	if (loose.length === 0 || anchors.length === 0) return;
	const { shared, isSure } = pick(below(anchors, lines, h), around(anchors, lines, h));
	if (!shared) {
		for (const { row } of loose) row.doubts.push({ code: 'which-row', facts: { text: row.cells[column] ?? '' } });
		return;
	}
	for (const [anchor, own] of shared) {
		if (own.length === 0 || (own.length === 1 && own[0]?.row === anchor)) continue;
		const texts = own.map(({ row }) => row.cells[column] ?? '');
		for (const { row } of own) row.cells[column] = '';
		for (const [i, text] of texts.entries()) {
			joinCell(anchor, column, text);
			if (!isSure && i > 0) anchor.doubts.push({ code: 'which-row', facts: { text } });
		}
		for (const { row } of own) if (row !== anchor) anchor.doubts.push(...row.doubts.splice(0));
	}
}

/** Each line to the row at or above it; null where that cannot be. */
function below(anchors: readonly Spot[], lines: readonly Spot[], h: number): Shared | null {
	const shared = new Map<Row, Spot[]>(anchors.map(({ row }) => [row, []]));
	for (const line of lines) {
		const anchor = shared.has(line.row) ? line.row : anchors.findLast(({ y }) => y <= line.y)?.row;
		const own = anchor && shared.get(anchor);
		if (!own) return null;
		const last = own.at(-1);
		if (line.row !== anchor && (!last || own[0]?.row !== anchor || line.y - last.y > GOES_ON * h)) return null;
		own.push(line);
	}
	return shared;
}

/** To each row the lines that it stands at the middle of; null where some are left over. */
function around(anchors: readonly Spot[], lines: readonly Spot[], h: number): Shared | null {
	const shared = new Map<Row, readonly Spot[]>();
	let at = 0;
	for (const anchor of anchors) {
		const first = lines[at];
		if (!first || first.y > anchor.y + LEVEL * h) {
			shared.set(anchor.row, []);
			continue;
		}
		const end = 2 * anchor.y - first.y;
		const last = lines.findIndex(({ y }, i) => i >= at && Math.abs(y - end) <= LEVEL * h);
		if (last < at) return null;
		const own = lines.slice(at, last + 1);
		if (own.some((line, i) => i > 0 && line.y - (own[i - 1] as Spot).y > GOES_ON * h)) return null;
		shared.set(anchor.row, own);
		at = last + 1;
	}
	return at === lines.length ? shared : null;
}

/** Of two ways to share lines out, the one that the gaps between them speak for. */
function pick(top: Shared | null, middle: Shared | null): { shared: Shared | null; isSure: boolean } {
	if (!top || !middle) {
		const shared = top ?? middle;
		return { shared, isSure: shared !== null && !isApart(shared, 'against') };
	}
	if ([...top].every(([anchor, own]) => own.length === middle.get(anchor)?.length))
		return { shared: top, isSure: true };
	const [forTop, forMiddle] = [isApart(top, 'for'), isApart(middle, 'for')];
	if (forTop !== forMiddle) return { shared: forTop ? top : middle, isSure: true };
	return { shared: top, isSure: false };
}

/** Whether lines within rows stand closer than rows do, or, asked for what speaks against that, further apart. */
function isApart(shared: Shared, what: 'for' | 'against'): boolean {
	const within: number[] = [];
	const between: number[] = [];
	let last: Spot | undefined;
	for (const own of shared.values())
		for (const [i, line] of own.entries()) {
			if (last) (i > 0 ? within : between).push(line.y - last.y);
			last = line;
		}
	if (within.length === 0 || between.length === 0) return false;
	return what === 'for'
		? Math.max(...within) * CLOSER < Math.min(...between)
		: Math.max(...within) > Math.min(...between) * CLOSER;
}
