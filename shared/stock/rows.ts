import { MOST_LINES, type Place } from './types.ts';

/** A piece of a line, with where it stands. */
export interface Cell {
	readonly text: string;
	/** From 1. */
	readonly line: number;
	/** From 1, of its first sign that is no space. */
	readonly column: number;
}

/** A line of a pasted text, or one of the lines that a spreadsheet put in one row. */
export interface Row {
	readonly line: number;
	/** All of it, as it stands. */
	readonly text: string;
	/** As cut at tabs or upright strokes; a line with none is one cell. */
	readonly cells: readonly Cell[];
	readonly isTable: boolean;
}

/** Where a cell stands. */
export const wholeOf = ({ line, column, text }: Cell): Place => ({ line, column, length: Math.max(1, text.length) });

const cellAt = (text: string, line: number, start: number): Cell => ({
	text: text.trim(),
	line,
	column: start + 1 + (text.length - text.trimStart().length),
});

/** A line cut at each of a sign. */
export function cut(text: string, sign: string, line: number): Cell[] {
	let start = 0;
	return text.split(sign).map((part) => {
		const cell = cellAt(part, line, start);
		start += part.length + sign.length;
		return cell;
	});
}

/** A line of a text table cut where two spaces or more stand. */
export function cutAtSpaces(text: string, line: number): Cell[] {
	return [...text.matchAll(/\S+(?: \S+)*/g)].map((match) => ({ text: match[0], line, column: match.index + 1 }));
}

/** A line of a text: where it starts, counted in characters from 0, and what ends it, as it stands (nothing after the last). */
export interface TextLine {
	readonly text: string;
	readonly start: number;
	readonly ending: string;
}

/** The lines of a text, whatever ends them: what counts lines and columns of a chart counts these. */
export function linesOf(text: string): TextLine[] {
	const lines: TextLine[] = [];
	let start = 0;
	for (const { 0: ending, index } of text.matchAll(/\r\n|\r|\n|\u2028|\f/g)) {
		lines.push({ text: text.slice(start, index), start, ending });
		start = index + ending.length;
	}
	return [...lines, { text: text.slice(start), start, ending: '' }];
}

/** Lines of a text, at most `MOST_LINES`, each cut into its cells. */
export function rowsOf(text: string): Row[] {
	const lines = linesOf(text)
		.slice(0, MOST_LINES)
		.map((line) => line.text);
	const rows: Row[] = [];
	for (let i = 0; i < lines.length; i++) {
		const quoted = quotedRows(lines, i);
		if (quoted) {
			rows.push(...quoted.rows);
			i = quoted.last;
		} else rows.push(rowOf(lines[i] as string, i + 1));
	}
	return rows;
}

function rowOf(text: string, line: number): Row {
	if (text.includes('\t')) return { line, text, cells: cut(text, '\t', line), isTable: true };
	if (/\|.*\||\S\s*\|\s*\S/.test(text)) {
		const cells = cut(text, '|', line);
		// the strokes at both ends of a line are its frame
		const first = cells[0]?.text === '' && /^\s*\|/.test(text) ? 1 : 0;
		const last = cells.length - (cells.at(-1)?.text === '' && /\|\s*$/.test(text) ? 1 : 0);
		return { line, text, cells: cells.slice(first, last), isTable: true };
	}
	return { line, text, cells: [cellAt(text, line, 0)], isTable: false };
}

/** Most lines that a cell is taken to have. */
const MOST_IN_CELL = 20;

/** A row of a spreadsheet that has lines within a cell: the cell stands in quotes, and its lines become rows of their own. */
function quotedRows(lines: readonly string[], at: number): { rows: Row[]; last: number } | null {
	const first = lines[at] as string;
	if (!/(?:^|\t)"/.test(first) || !first.includes('\t')) return null;
	// the quotes pair up again within a few lines, or they were no such quotes
	let last = at;
	while (last < lines.length && last - at < MOST_IN_CELL && quotesIn(lines.slice(at, last + 1)) % 2 === 1) last++;
	if (last === at || last >= lines.length || last - at >= MOST_IN_CELL) return null;
	const columns: Cell[][] = [[]];
	let isQuoted = false;
	for (let i = at; i <= last; i++) {
		let start = 0;
		const text = lines[i] as string;
		const end = (to: number): void => {
			columns.at(-1)?.push(cellAt(text.slice(start, to).replaceAll('"', ' '), i + 1, start));
			start = to + 1;
		};
		for (let c = 0; c < text.length; c++) {
			if (text[c] === '"') isQuoted = !isQuoted;
			if (text[c] !== '\t' || isQuoted) continue;
			end(c);
			columns.push([]);
		}
		end(text.length);
	}
	const deep = Math.max(...columns.map((column) => column.length));
	return {
		last,
		rows: Array.from({ length: deep }, (_, n) => {
			const cells = columns.map((column) => column[n] ?? { text: '', line: at + 1, column: 1 });
			const line = cells.find((cell) => cell.text !== '')?.line ?? at + 1;
			return { line, text: cells.map((cell) => cell.text).join('\t'), cells, isTable: true };
		}),
	};
}

const quotesIn = (lines: readonly string[]): number => lines.join('').split('"').length - 1;

/** What a column holds. */
export type Role = 'slot' | 'name' | 'value' | 'percent' | 'hexadecimal' | 'from' | 'to' | 'words' | 'mode';

const SET = '(?:dmx|channel|slot|ch)';
const HEADS: readonly (readonly [Role, RegExp])[] = [
	['slot', /^(?:dmx[ -])?(?:ch|chan|channel|slot|no|nr|number|#)s?\.?(?:[ -](?:no|nr|number|#))?\.?$/],
	[
		'name',
		/^(?:name|function|attribute|parameter|control|feature|property|use|(?:channel|slot)[ -](?:name|function))s?$/,
	],
	[
		'value',
		new RegExp(
			`^(?:${SET}[ -])?(?:decimal[ -])?(?:value|level|range|data|decimal|dec)s?(?:[ -]ranges?)?$|^dmx$|^dmx[ -]?512$`,
		),
	],
	['percent', /^(?:%|per ?cent|percentage|value %|% value)$/],
	['hexadecimal', /^(?:hex|hexadecimal)(?: values?)?$/],
	['from', /^(?:from|min|minimum|start|low|lower|first)(?: values?)?$/],
	['to', /^(?:to|max|maximum|end|high|upper|last)(?: values?)?$/],
	[
		'words',
		/^(?:description|meaning|effect|action|what it does|result|detail|remark|note|content|comment|details|notes|remarks|comments|effects)$/,
	],
	['mode', /^(?:mode )?\d{1,3}[ -]?(?:ch|channel|slot)s?\.?(?:[ -]mode)?$|^mode [a-z0-9]{1,12}$/],
];

/** What a heading says its column holds; null where it is no such heading. */
function roleOf(heading: string): Role | null {
	const text = heading
		.toLowerCase()
		.replaceAll(/[:*"()]/g, '')
		.trim();
	return HEADS.find(([, pattern]) => pattern.test(text))?.[0] ?? null;
}

/** A column as its heading has it. */
export interface Column {
	readonly role: Role | null;
	readonly heading: Cell;
}

/** A row as the head of a table: what each of its columns holds. Null where it is no head. */
export function headOf(cells: readonly Cell[]): Column[] | null {
	const columns = cells.map((heading) => ({ heading, role: heading.text === '' ? null : roleOf(heading.text) }));
	const known = columns.filter(({ role }) => role !== null);
	const unknown = columns.filter(({ role, heading }) => role === null && heading.text !== '');
	if (known.length < 2 || unknown.length > 1 || unknown.some(({ heading }) => /\d/.test(heading.text))) return null;
	return columns;
}

/** A mode's heading: `9 channel mode`, `Mode: 9 CH`, `Mode B`, `6-channel mode (basic)`. */
export function modeHeading(text: string): { readonly name: string; readonly said: number | null } | null {
	const bare = text.trim().replaceAll(/^[#*=\s–—-]+|[:*=\s–—-]+$/g, '');
	if (bare.length > 40 || /\d\s*(?:-|–|to|\.\.)\s*\d/.test(bare)) return null;
	const counted =
		/^(?:.{0,24}?[\s(,:])?(\d{1,3})[ -]?(?:ch|channel|channels|slot|slots|chan)\b\.?(?:[ -]?(?:mode|personality|chart|version|layout))?\)?(?:[\s,:]+\(?[\p{L}\s-]{0,20}\)?)?$/iu.exec(
			bare,
		);
	if (counted && !/^(?:ch|channel|slot)\.?\s?\d/i.test(bare)) return { name: bare, said: Number(counted[1]) };
	if (
		/^(?:dmx )?(?:mode|personality)\b[\s:#-]*\S.{0,24}$|^\S{1,12}(?: \S{1,12})? mode$/i.test(bare) &&
		!/^\d/.test(bare)
	)
		return { name: bare, said: null };
	return null;
}
