import { type Cell, type Column, headOf, modeHeading } from '../rows.ts';
import { WIDE } from './lines.ts';
import type { Line, Piece } from './types.ts';

/** Where one column ends and the next begins: the middle of a gap that runs down a table. */
export type Edges = readonly number[];

/** Of so many lines one may run across a gap between columns: a heading over two of them. */
const LINES_TO_ONE_ACROSS = 8;

/**
 * The gaps that run down all lines with more than one piece, left to right. A line of one piece says nothing: it is a title, or goes
 * on in the last column.
 */
export function edgesOf(lines: readonly Line[], h: number): Edges {
	const rows = lines.filter(({ pieces }) => pieces.length > 1);
	const may = Math.floor(rows.length / LINES_TO_ONE_ACROSS);
	const steps = rows
		.flatMap(({ pieces }) => pieces.flatMap(({ x, end }) => [[x, 1] as const, [Math.max(x, end), -1] as const]))
		.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
	const edges: number[] = [];
	let depth = 0;
	let emptyFrom: number | null = null;
	for (const [at, by] of steps) {
		depth += by;
		if (by < 0 && depth <= may) emptyFrom ??= at;
		else if (depth > may) {
			if (emptyFrom !== null && at - emptyFrom >= WIDE * h) edges.push((emptyFrom + at) / 2);
			emptyFrom = null;
		}
	}
	// a gap in one line alone is a gap between words
	return edges.filter((edge, i) => {
		const next = edges[i + 1] ?? Number.POSITIVE_INFINITY;
		return rows.filter(({ pieces }) => pieces.some(({ x }) => x > edge && x < next)).length > 1;
	});
}

/** Which column a piece begins in. */
const columnOf = ({ x }: Pick<Piece, 'x'>, edges: Edges): number => edges.filter((edge) => edge <= x).length;

/** The cells of a head: its words stand close, and each is by itself where a column begins under it. */
export const headCells = (line: Line, edges: Edges): string[] =>
	gridRow(
		{ ...line, pieces: line.pieces.flatMap(({ parts }) => parts.map((part) => ({ ...part, parts: [part] }))) },
		edges,
	).cells;

/** A row of a table, with the cell of each column; an empty one is ''. */
export interface GridRow {
	readonly cells: string[];
	/** The baseline of each cell; that of the line where it is empty. */
	readonly ys: number[];
}

export function gridRow(line: Line, edges: Edges): GridRow {
	const cells = Array.from({ length: edges.length + 1 }, () => '');
	const ys = cells.map(() => line.y);
	for (const piece of line.pieces) {
		const column = columnOf(piece, edges);
		if (cells[column] === '') ys[column] = piece.y;
		cells[column] = `${cells[column] ?? ''} ${piece.text}`.trim();
	}
	return { cells, ys };
}

const asCells = (texts: readonly string[]): Cell[] => texts.map((text) => ({ text, line: 1, column: 1 }));

/** What texts beside one another say of their columns, as the head of a table; null where they are none. */
export const headIn = (texts: readonly string[]): Column[] | null => headOf(asCells(texts));

/** A line by itself that names a mode. */
export const isTitle = ({ pieces }: Line): boolean =>
	pieces.length === 1 && modeHeading(pieces[0]?.text ?? '') !== null;

const isHead = ({ pieces }: Line): boolean => headIn(pieces.map(({ text }) => text)) !== null;

/** A part of a page that has columns of its own: from a mode's title or a head to before the next. */
export function blocksOf(lines: readonly Line[]): Line[][] {
	const blocks: Line[][] = [];
	for (const line of lines) {
		const last = blocks.at(-1);
		// a head, on whatever many lines, goes with the title and words above it
		const isBegun = last?.every((each) => isTitle(each) || !each.pieces.some(({ text }) => /\d/.test(text))) ?? false;
		if (!last || ((isTitle(line) || isHead(line)) && !isBegun)) blocks.push([line]);
		else last.push(line);
	}
	return blocks;
}

/** Where the right one of two tables side by side begins; null where there are not two. */
export function besideAt(lines: readonly Line[], h: number): number | null {
	const edges = edgesOf(lines, h);
	const rows = lines.map((line) => headCells(line, edges));
	return (
		edges.find((_, i) => {
			const left = rows.map((cells) => cells.slice(0, i + 1));
			const right = rows.map((cells) => cells.slice(i + 1));
			return (hasSlotHead(left) && hasSlotHead(right)) || (isCounted(left) && isCounted(right));
		}) ?? null
	);
}

/** The lines of one side, without those that have nothing there. */
export const side = (lines: readonly Line[], isHere: (piece: Piece) => boolean): Line[] =>
	lines.map((line) => ({ ...line, pieces: line.pieces.filter(isHere) })).filter(({ pieces }) => pieces.length > 0);

const hasSlotHead = (rows: readonly (readonly string[])[]): boolean =>
	rows.some((cells) => {
		const roles = headIn(cells)?.map(({ role }) => role);
		return roles?.[0] === 'slot' && roles.some((role) => role === 'name' || role === 'words');
	});

/** Whether rows begin with numbers that count up by one, with words behind them. */
function isCounted(rows: readonly (readonly string[])[]): boolean {
	const first = rows.flatMap(([one = '', ...more]) =>
		/^\d{1,3}$/.test(one) && more.some((text) => /\p{L}{2}/u.test(text)) ? [Number(one)] : [],
	);
	return first.length > 1 && first.every((at, i) => i === 0 || at === (first[i - 1] as number) + 1);
}
