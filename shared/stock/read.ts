import { Builder } from './builder.ts';
import { repeatIn } from './cells.ts';
import { LineReader } from './lines.ts';
import { checkChart } from './marks.ts';
import { pieceOf } from './row-text.ts';
import {
	type Cell,
	type Column,
	cut,
	cutAtSpaces,
	headOf,
	linesOf,
	modeHeading,
	type Row,
	rowsOf,
	wholeOf,
} from './rows.ts';
import { type Beside, TableReader } from './table.ts';
import { MOST_CHARACTERS, MOST_LINES, type ReadChart } from './types.ts';
import { takeUnchecked } from './unchecked.ts';
import { type Habit, hexHabit } from './values.ts';

/**
 * Reads a chart as pasted from a spreadsheet (tabs), a text table (strokes, spaces) or a manual's running text: modes, slots, and
 * bands with their words. What could not be read is marked at its place, and so is whatever could have been read in two ways;
 * nothing is left out in silence. Slots and bands stay as they were written, right or wrong: gaps, overlaps and values past 255 are
 * marks too. `[?]` at the end of a line is no part of it: it says that the line is still to be held against its page.
 * @param text of any length; past 4000 lines or 200,000 characters it is not read, and marked so
 * @returns modes in the order of the text, slots by their number. Never throws.
 */
export function readChart(text: string): ReadChart {
	const builder = new Builder();
	const { text: kept, places } = takeUnchecked(text.slice(0, MOST_CHARACTERS));
	const rows = rowsOf(kept);
	const lines = linesOf(kept).length;
	if (text.length > MOST_CHARACTERS || lines > MOST_LINES)
		builder.mark('too-long', { line: rows.at(-1)?.line ?? 1, column: 1, length: 1 }, { lines: rows.at(-1)?.line ?? 0 });
	new Reader(builder, { isHex: hexHabit(kept) === 'hexadecimal' }).read(rows);
	checkChart(builder, kept);
	for (const place of places) if (place.line <= MOST_LINES) builder.mark('unchecked', place, {});
	const marks = builder.marks.toSorted((a, b) => a.place.line - b.place.line || a.place.column - b.place.column);
	return { modes: builder.chart(), marks };
}

/** Characters of a line past which it is no row of a chart. */
const MOST_IN_LINE = 3000;

class Reader {
	private readonly builder: Builder;
	private readonly table: TableReader;
	private readonly lines: LineReader;
	/** What stands between the cells of a table that has neither tabs nor strokes. */
	private separator: string | null = null;
	private columns: readonly Column[] | null = null;
	/** Modes side by side, by their column. */
	private beside: readonly Beside[] = [];

	constructor(builder: Builder, habit: Habit) {
		this.builder = builder;
		this.table = new TableReader(builder, habit);
		this.lines = new LineReader(builder, habit);
	}

	read(rows: readonly Row[]): void {
		for (const row of rows) this.row(row);
	}

	private row(row: Row): void {
		if (!/[\p{L}\d]/u.test(row.text)) return;
		if (row.text.length > MOST_IN_LINE) {
			this.builder.mark(
				'not-read',
				{ line: row.line, column: 1, length: row.text.length },
				{ text: row.text.slice(0, 60) },
			);
			return;
		}
		const repeat = this.beside.length > 0 ? null : repeatIn(row);
		if (repeat) {
			this.builder.mode(repeat.place).repeats.push(repeat);
			this.builder.current = [];
			return;
		}
		if (this.separator && !row.isTable && row.text.includes(this.separator)) {
			this.row({ ...row, cells: cut(row.text, this.separator, row.line), isTable: true });
			return;
		}
		if (this.head(row)) return;
		const filled = row.cells.filter(({ text }) => text !== '');
		const only = filled[0] as Cell;
		const heading = filled.length === 1 ? modeHeading(only.text) : null;
		if (heading && !(this.columns && row.isTable && row.cells.length > 1 && row.cells.indexOf(only) > 0)) {
			this.columns = row.isTable ? this.columns : null;
			this.beside = [];
			this.builder.begin(heading.name, heading.said, wholeOf(only));
			return;
		}
		if (this.columns && row.isTable) this.table.row(row, this.columns, this.beside);
		else if (this.beside.length > 0 && !row.isTable) this.lines.besideLine(row, this.beside);
		else this.lines.line(pieceOf(row), row);
	}

	/** Takes a row as the head of a table. @returns false where it is none */
	private head(row: Row): boolean {
		const sign = row.isTable ? undefined : [';', ','].find((each) => headOf(cut(row.text, each, row.line)));
		if (sign) {
			this.separator = sign;
			return this.head({ ...row, cells: cut(row.text, sign, row.line), isTable: true });
		}
		const columns = headOf(row.isTable ? row.cells : spacedHead(row));
		// a line of words may look like a head ('no function'): in running text one that says so is asked for
		if (!columns || (!row.isTable && !/^\s*(?:dmx|ch|slot|mode|\d+ ?ch)/i.test(row.text))) return false;
		for (const { heading, role } of columns)
			if (role === null && heading.text !== '') this.builder.mark('not-read', wholeOf(heading), { text: heading.text });
		const modes = columns.flatMap(({ role, heading }, column) => (role === 'mode' ? [{ heading, column }] : []));
		this.columns = row.isTable ? columns : null;
		this.beside = modes.map(({ heading, column }) => ({
			column: row.isTable ? column : heading.column,
			mode: this.builder.begin(heading.text, Number(/\d+/.exec(heading.text)?.[0] ?? 0) || null, wholeOf(heading)),
		}));
		if (modes.length > 0 || !this.builder.modes.at(-1)?.isHeaded) this.builder.current = [];
		return true;
	}
}

/** Headings of a text table: set apart by two spaces, or each a single word. */
function spacedHead({ text, line }: Row): Cell[] {
	const apart = cutAtSpaces(text, line);
	if (apart.length > 1) return apart;
	return [...text.matchAll(/\S+/g)].map((match) => ({ text: match[0], line, column: match.index + 1 }));
}
