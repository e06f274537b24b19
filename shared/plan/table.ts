import { LAST_SLOT, LAST_UNIVERSE } from '../dmx/index.ts';
import { footprintOf, modeOf, type Profile } from '../profile/index.ts';
import type { NewRow } from './make.ts';
import { unmarked } from './marks.ts';
import { PLAN_MOST } from './types.ts';

/** What a column of a pasted table may hold. `count` is how many of a row there are. */
export const FIELDS = Object.freeze([
	'name',
	'type',
	'mode',
	'universe',
	'address',
	'place',
	'circuit',
	'count',
] as const);
export type Field = (typeof FIELDS)[number];

/** A pasted text as cells. */
export interface PastedTable {
	/** Cells of each line that is not empty, trimmed. */
	readonly rows: readonly (readonly string[])[];
	/** The line of the text each begins on, from 1. */
	readonly lines: readonly number[];
	/** What parts its cells. */
	readonly delimiter: '\t' | ';' | ',';
	/** The line of a quote that is never closed, from 1; null where all are. */
	readonly openQuote: number | null;
	/** Rows past the most that a plan takes; they are left out, and told. */
	readonly leftOut: number;
}

const DELIMITERS = ['\t', ';', ','] as const;

/**
 * Cells of a text from a spreadsheet or a list: parted by tabs, else by semicolons, else by commas, with quotes as in RFC 4180 (a
 * doubled quote is one, and a quoted cell may hold line breaks).
 * @param text of any length; rows past `PLAN_MOST` and a header are counted and left out
 */
export function parseTable(text: string): PastedTable {
	const plain = outsideQuotes(text);
	const delimiter = DELIMITERS.find((each) => plain.includes(each)) ?? ',';
	const rows: string[][] = [];
	const lines: number[] = [];
	let cells: string[] = [];
	let cell = '';
	let quotedFrom: number | null = null;
	let line = 1;
	let begun = 1;
	let leftOut = 0;
	const endCell = (): void => {
		cells.push(cell.trim());
		cell = '';
	};
	const endRow = (): void => {
		endCell();
		if (cells.some((each) => each !== '')) {
			if (rows.length <= PLAN_MOST) {
				rows.push(cells);
				lines.push(begun);
			} else leftOut++;
		}
		cells = [];
	};
	for (let i = 0; i < text.length; i++) {
		const char = text.charAt(i);
		if (quotedFrom !== null) {
			if (char === '\n') line++;
			if (char !== '"') cell += char;
			else if (text.charAt(i + 1) === '"') {
				cell += '"';
				i++;
			} else quotedFrom = null;
		} else if (char === '"' && cell.trim() === '') {
			cell = '';
			quotedFrom = line;
		} else if (char === delimiter) endCell();
		else if (char === '\n') {
			endRow();
			line++;
			begun = line;
		} else if (char !== '\r') cell += char;
	}
	endRow();
	return { rows, lines, delimiter, openQuote: quotedFrom, leftOut };
}

/**
 * The table with one cell put right; a row too short to have it grows.
 * @param line of the text, from 1 @param column from 0
 */
export function withCell(table: PastedTable, line: number, column: number, text: string): PastedTable {
	const rows = table.rows.map((cells, i) => {
		if (table.lines[i] !== line) return cells;
		const length = Math.max(cells.length, column + 1);
		return Array.from({ length }, (_, n) => (n === column ? text.trim() : (cells[n] ?? '')));
	});
	return { ...table, rows };
}

/** A text without what stands in quotes: what parts cells is looked for there. */
const outsideQuotes = (text: string): string => text.replaceAll(/"[^"]*"/g, '');

/** Words by which columns and fixtures are known, lower case: they come from the language's words. */
export interface TableWords {
	readonly headers: Readonly<Record<Field, readonly string[]>>;
	/** What a mode's footprint may be followed by: channels, ch. */
	readonly channels: readonly string[];
}

/** A text as names are compared: lower case, with one space for each run of spaces, dots, underscores and hyphens. */
export const plainText = (text: string): string =>
	text
		.toLowerCase()
		.replaceAll(/[\s_.-]+/g, ' ')
		.trim();

/**
 * What each column may hold, by the words in the first row; null where none fits. Each field is given once.
 * @returns `isHeader` where the first row is a header: then it is no fixture
 */
export function guessFields(
	first: readonly string[],
	{ headers }: TableWords,
): { readonly fields: readonly (Field | null)[]; readonly isHeader: boolean } {
	const taken = new Set<Field>();
	const fields = first.map((cell) => {
		const text = plainText(cell);
		const field = FIELDS.find((each) => !taken.has(each) && headers[each].includes(text)) ?? null;
		if (field) taken.add(field);
		return field;
	});
	return { fields, isHeader: taken.size > 0 };
}

/** What keeps a row from being read, with the column it stands in, from 0; -1 for a column that is not there. */
export interface RowTrouble {
	readonly column: number;
	readonly trouble:
		| 'no-type'
		| 'unknown-type'
		| 'unknown-mode'
		| 'no-universe'
		| 'no-address'
		| 'no-place'
		| 'no-count'
		| 'too-many-cells'
		| 'too-long';
	readonly found: string;
}

/** A row of the table as it was read. */
export interface ReadRow {
	/** Line of the text, from 1. */
	readonly line: number;
	/** The fixtures it stands for; empty where something in it cannot be read. */
	readonly rows: readonly NewRow[];
	readonly troubles: readonly RowTrouble[];
}

/** Most of what a cell may say: fixtures that one row stands for, characters of a name, metres along the room. */
export const READ_MOST = Object.freeze({
	universe: LAST_UNIVERSE,
	address: LAST_SLOT,
	metres: 200,
	count: 500,
	characters: 60,
});

/**
 * The rows of a table as fixtures: each is read whole, or says what in it cannot be.
 * @param fields what each column holds, as the person matched them; null for a column that is passed over
 * @param types what the table calls a fixture, plain and lower case, to a profile id, as the person matched them
 */
export function readRows(
	table: Pick<PastedTable, 'rows' | 'lines'>,
	fields: readonly (Field | null)[],
	profiles: readonly Profile[],
	words: TableWords,
	types: Readonly<Record<string, string>> = {},
): ReadRow[] {
	return table.rows.map((cells, i) => {
		const troubles: RowTrouble[] = [];
		const at = (field: Field): { readonly column: number; readonly text: string } => {
			const column = fields.indexOf(field);
			return { column, text: column < 0 ? '' : unmarked(cells[column] ?? '') };
		};
		const wrong = (column: number, trouble: RowTrouble['trouble'], found: string): undefined => {
			troubles.push({ column, trouble, found });
			return undefined;
		};
		const spare = cells.findIndex((cell, column) => column >= fields.length && cell !== '');
		if (spare >= 0) wrong(spare, 'too-many-cells', cells[spare] ?? '');
		const type = at('type');
		const profile = profileNamed(type.text, profiles, types);
		if (type.text === '') wrong(type.column, 'no-type', '');
		else if (!profile) wrong(type.column, 'unknown-type', type.text);
		const mode = at('mode');
		const found = profile && mode.text !== '' ? modeNamed(mode.text, profile, words) : undefined;
		if (profile && mode.text !== '' && found === undefined) wrong(mode.column, 'unknown-mode', mode.text);
		const spot = spotIn(at('universe'), at('address'), wrong);
		const place = at('place');
		const x = place.text === '' ? undefined : metresIn(place.text);
		if (place.text !== '' && x === undefined) wrong(place.column, 'no-place', place.text);
		const many = at('count');
		const count = many.text === '' ? 1 : wholeIn(many.text, 1, READ_MOST.count);
		if (count === undefined) wrong(many.column, 'no-count', many.text);
		const name = at('name');
		if (name.text.length > READ_MOST.characters) wrong(name.column, 'too-long', name.text);
		const circuit = at('circuit');
		if (circuit.text.length > READ_MOST.characters) wrong(circuit.column, 'too-long', circuit.text);
		const line = table.lines[i] ?? 0;
		if (troubles.length > 0 || !profile || count === undefined) return { line, rows: [], troubles };
		const one: NewRow = {
			profile: profile.id,
			...(found === undefined ? {} : { mode: found }),
			...(x === undefined ? {} : { x }),
			...(circuit.text === '' ? {} : { circuit: circuit.text }),
		};
		const width = footprintOf(modeOf(profile, found ?? profile.defaults.mode));
		const rows = Array.from({ length: count }, (_, n): NewRow => {
			const address = spot.address === undefined ? undefined : spot.address + n * width;
			return {
				...one,
				...(name.text === ''
					? {}
					: { name: count === 1 ? name.text : `${name.text} ${n + 1}`.slice(-READ_MOST.characters) }),
				...(spot.universe === undefined ? {} : { universe: spot.universe }),
				...(address === undefined ? {} : { address }),
			};
		});
		// several from one address run on from it, and must end within the universe
		const past = rows.find(({ address }) => address !== undefined && address > LAST_SLOT);
		if (past)
			return {
				line,
				rows: [],
				troubles: [{ column: at('address').column, trouble: 'no-address', found: at('address').text }],
			};
		return { line, rows, troubles };
	});
}

type Cell = { readonly column: number; readonly text: string };
type Wrong = (column: number, trouble: RowTrouble['trouble'], found: string) => undefined;

/** Universe and start address: a column each, or both in one cell as `2.128` or `2/128`. */
function spotIn(universe: Cell, address: Cell, wrong: Wrong): { universe?: number; address?: number } {
	const [, before, after] = /^(\d+)\s*[./:]\s*(\d+)$/.exec(address.text) ?? [];
	const own = universe.text === '' ? undefined : wholeIn(universe.text, 1, LAST_UNIVERSE);
	if (universe.text !== '' && own === undefined) wrong(universe.column, 'no-universe', universe.text);
	const stated = before === undefined ? own : wholeIn(before, 1, LAST_UNIVERSE);
	const slot = address.text === '' ? undefined : wholeIn(after ?? address.text, 1, LAST_SLOT);
	const clash = before !== undefined && own !== undefined && own !== stated;
	if ((address.text !== '' && slot === undefined) || (before !== undefined && stated === undefined) || clash)
		wrong(address.column, 'no-address', address.text);
	return {
		...(stated === undefined ? {} : { universe: stated }),
		...(slot === undefined ? {} : { address: slot }),
	};
}

function wholeIn(text: string, least: number, most: number): number | undefined {
	const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
	return value >= least && value <= most ? value : undefined;
}

/** Metres, with a point or a comma, and with or without their unit. */
function metresIn(text: string): number | undefined {
	const [, digits = ''] = /^(\d+(?:[.,]\d+)?)\s*m?$/i.exec(text) ?? [];
	const value = digits === '' ? Number.NaN : Number(digits.replace(',', '.'));
	return value >= 0 && value <= READ_MOST.metres ? value : undefined;
}

/** The fixture that a list means by a text. */
export function profileNamed(
	text: string,
	profiles: readonly Profile[],
	types: Readonly<Record<string, string>>,
): Profile | undefined {
	const plain = plainText(text);
	const matched = Object.hasOwn(types, plain) ? types[plain] : undefined;
	return profiles.find(({ id, name }) => id === matched || plainText(id) === plain || plainText(name) === plain);
}

/** A mode by its id, its name, or its footprint where no other mode has the same: `9`, `9 ch`. */
export function modeNamed(text: string, profile: Profile, { channels }: TableWords): string | undefined {
	const plain = plainText(text);
	const named = profile.modes.find(({ id, name }) => plainText(id) === plain || plainText(name) === plain);
	if (named) return named.id;
	const [, digits, unit = ''] = /^(\d{1,3}) ?(\p{L}*)$/u.exec(plain) ?? [];
	if (digits === undefined || (unit !== '' && !channels.includes(unit))) return undefined;
	const alike = profile.modes.filter((mode) => footprintOf(mode) === Number(digits));
	return alike.length === 1 ? alike[0]?.id : undefined;
}
