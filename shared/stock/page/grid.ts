import type { Role } from '../rows.ts';
import { spansIn } from '../values.ts';
import { type Edges, edgesOf, gridRow, headCells, headIn, isTitle } from './columns.ts';
import type { Doubt, Line } from './types.ts';

/** A row as it is put together. */
export interface Row {
	readonly y: number;
	cells: string[];
	/** The baseline of each cell: a line takes in what stands a little higher or lower. */
	readonly ys: readonly number[];
	readonly doubts: Doubt[];
	/** A line of words across the table, or a title: it has no columns. */
	readonly isPlain: boolean;
	/** Its cells if it is a head. */
	readonly asHead: readonly string[];
}

/** A part of a page as rows, and what its columns hold. */
export interface Grid {
	rows: Row[];
	/** Rows that are the head, from the first; 0 where there is none. */
	readonly head: readonly Row[];
	readonly slots: readonly number[];
	readonly values: readonly number[];
	/** Columns that name a channel once for all its bands. */
	readonly names: readonly number[];
	readonly h: number;
}

/** `5`, `CH 5`, `5/6`, `5-6`: what stands for a channel in a column of its own. */
const NUMBERED = /^(?:(?:dmx[ -]?)?(?:ch(?:an(?:nel)?)?|slot)s?\.?[ #:]*|#)?\d{1,3}(?:\s*[-–/+&,]\s*\d{1,3})?[.:)]?$/i;
/** Most lines that a head is set on. */
const MOST_IN_HEAD = 3;
/** Of its filled cells a column must have so many of one make to be taken for that. */
const MOST_OF = 0.6;

/** The rows of one part of a page, cut at the gaps that run down it; null where none do. */
export function gridOf(lines: readonly Line[], h: number): Grid | null {
	const edges: Edges = edgesOf(lines, h);
	if (edges.length === 0) return null;
	const all = lines.map((line): Row => {
		const isPlain = isTitle(line) || runsAcross(line, edges, h);
		const { cells, ys } = isPlain
			? { cells: [line.pieces.map(({ text }) => text).join(' ')], ys: [line.y] }
			: gridRow(line, edges);
		return {
			y: line.y,
			cells,
			ys,
			doubts: [...line.doubts],
			isPlain,
			asHead: isPlain ? cells : headCells(line, edges),
		};
	});
	const { rows, head, roles } = withHead(all, h);
	const body = rows.filter((row) => !row.isPlain && !head.includes(row));
	const columns = Array.from({ length: edges.length + 1 }, (_, i) => i);
	const filled = (column: number): string[] =>
		body.map(({ cells }) => cells[column] ?? '').filter((text) => text !== '');
	const mostly = (column: number, is: (text: string) => boolean): boolean => {
		const texts = filled(column);
		return texts.length > 0 && texts.filter(is).length >= MOST_OF * texts.length;
	};
	const of = (...wanted: Role[]): number[] => columns.filter((i) => wanted.includes(roles[i] as Role));
	const slots =
		roles.length > 0
			? of('slot', 'mode')
			: columns
					.slice(0, 2)
					.filter((i) => mostly(i, isNumbered))
					.slice(0, 1);
	const values =
		roles.length > 0
			? of('value', 'from', 'to', 'percent', 'hexadecimal')
			: columns.filter((i) => !slots.includes(i) && mostly(i, beginsWithRange));
	const after = body.filter(({ cells }) => slots.every((i) => !cells[i]) && values.some((i) => cells[i]));
	const named = columns.filter((i) =>
		roles.length > 0
			? roles[i] === 'name'
			: !slots.includes(i) && !values.includes(i) && i < Math.min(columns.length, ...values),
	);
	const words = columns.filter((i) => ![...slots, ...values, ...named].includes(i));
	// in a table without a column for them, the words of bands stand where names do
	const names = named.filter(
		(i) => words.length > 0 || after.filter(({ cells }) => cells[i]).length * 4 <= after.length,
	);
	return { rows, head, slots, values, names, h };
}

const isNumbered = (text: string): boolean => NUMBERED.test(text);
const beginsWithRange = (text: string): boolean => {
	const [first] = spansIn(text, { isHex: true });
	return first !== undefined && first.start === 0 && !first.single;
};

/** A line by itself that runs on over the columns: a note, a sentence of the page. */
function runsAcross({ pieces }: Line, edges: Edges, h: number): boolean {
	const [only, more] = pieces;
	if (!only || more) return false;
	return !/^\s*\d{1,3}\b/.test(only.text) && edges.some((edge) => only.x < edge && only.end > edge + h);
}

/** Takes the lines of a head together: it may be set on several, and a row of numbers is none. */
function withHead(all: Row[], h: number): { rows: Row[]; head: Row[]; roles: (Role | null)[] } {
	for (const [i, first] of all.entries()) {
		if (first.isPlain) continue;
		for (let count = MOST_IN_HEAD; count > 0; count--) {
			const some = all.slice(i, i + count);
			if (
				some.length < count ||
				some.some((row, n) => row.isPlain || (n > 0 && row.y - (some[n - 1] as Row).y > 2 * h))
			)
				continue;
			const cells = first.asHead.map((_, column) =>
				some
					.map((row) => row.asHead[column] ?? '')
					.filter((text) => text !== '')
					.join(' '),
			);
			const columns = headIn(cells);
			if (!columns) continue;
			const head: Row = { ...first, cells };
			return {
				rows: [...all.slice(0, i), head, ...all.slice(i + count)],
				head: [head],
				roles: columns.map(({ role }) => role),
			};
		}
	}
	return { rows: all, head: [], roles: [] };
}

/** The first value that a row's cells give; null where they give none. */
export function firstValue({ cells }: Row, { values }: Pick<Grid, 'values'>): number | null {
	for (const column of values) {
		const [span] = spansIn(cells[column] ?? '', { isHex: true });
		if (span) return span.from;
	}
	return null;
}

/** Where the first filled of some columns stands in a row. */
export const yIn = ({ cells, ys, y }: Row, columns: readonly number[]): number =>
	ys[columns.find((i) => (cells[i] ?? '') !== '') ?? -1] ?? y;

export const hasIn = ({ cells, isPlain }: Row, columns: readonly number[]): boolean =>
	!isPlain && columns.some((i) => (cells[i] ?? '') !== '');

/** Two parts of a cell that was set on two lines. */
export function joinCell(row: Row, column: number, more: string): void {
	const before = row.cells[column] ?? '';
	if (before === '' || more === '') row.cells[column] = before + more;
	else if (before.endsWith('\u00AD')) row.cells[column] = before.slice(0, -1) + more;
	else if (/\p{Ll}-$/u.test(before) && /^\p{Ll}/u.test(more)) {
		row.cells[column] = before.slice(0, -1) + more;
		const text = `${/\p{L}+$/u.exec(before.slice(0, -1))?.[0] ?? ''}${/^\p{L}+/u.exec(more)?.[0] ?? ''}`;
		row.doubts.push({ code: 'cut-word', facts: { text } });
	} else row.cells[column] = `${before} ${more}`;
}
