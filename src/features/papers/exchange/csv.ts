import { csvWords } from '#words/papers/index.ts';
import type { ClassRow, ClassTable } from './sort.ts';

/** A mark at the start that tells spreadsheets the text is UTF-8, so that names keep their accents. */
const BYTE_ORDER_MARK = '\ufeff';
const CRLF = '\r\n';

/**
 * A class table as comma-separated values (RFC 4180): one line an attempt, one column a question, 1 right, 0 wrong, empty where
 * not answered. A name that a spreadsheet would take for a formula has an apostrophe put before it, and so has one that begins
 * with apostrophes and then would: less the first apostrophe, each reads back as it was. No cell is live, be the table split at
 * commas, semicolons, tabs or bars.
 */
export function classCsv({ paper, rows }: ClassTable): string {
	const { name, attemptNo, score, of, percent, passed, minutes, ended, flags, attempt, question } = csvWords;
	const heads = [name, attemptNo, score, of, percent, passed, minutes, ended, flags, attempt];
	const lines = [[...heads, ...paper.items.map((_, i) => `${question} ${i + 1}`)], ...rows.map(cellsOf)];
	return BYTE_ORDER_MARK + lines.map((cells) => cells.map(cell).join(',') + CRLF).join('');
}

function cellsOf({ name, attemptNo, mark, milliseconds, taken, flags }: ClassRow): (string | number)[] {
	const { ended, attempt } = taken.result;
	return [
		name,
		attemptNo,
		mark.score,
		mark.of,
		mark.percent,
		mark.passed ? csvWords.yes : csvWords.no,
		milliseconds === null ? '' : (milliseconds / 60_000).toFixed(1),
		ended === null ? '' : new Date(ended).toISOString(),
		harmless(flags.map(({ sentence }) => sentence).join(' ')),
		// all digits with an e among them would be taken for a number
		`#${attempt}`,
		...mark.items.map(({ answered, score }) => (answered ? score : '')),
	];
}

/** What a spreadsheet may take a cell for a formula by, in each of its widths, past blanks, quotes and apostrophes (OWASP, CSV Injection, from memory). */
const LIVE = '[\'\\s"]*[=+\\-@\\t\\r\uff1d\uff0b\uff0d\uff20\u207c\u208c\ufe66\ufe62\ufe63\ufe6b\u2212]';
const LIVE_FIRST = new RegExp(`^(?=${LIVE})`, 'u');
/** After any character that some spreadsheet splits a line at. */
const LIVE_AFTER = new RegExp(`([;,|\\t\\r\\n])(?=${LIVE})`, 'gu');

/** One field, always in quotes where it is text: whichever character a spreadsheet splits at, a line's first field is then one cell. */
const cell = (value: string | number): string =>
	typeof value === 'number' ? String(value) : `"${value.replace(LIVE_FIRST, "'").replaceAll('"', '""')}"`;

/**
 * A sentence that stands further on in its line, where quotes count for nothing in a spreadsheet that splits at another character:
 * harmless after each character that may be split at.
 */
const harmless = (sentence: string): string => sentence.replace(LIVE_AFTER, "$1'");
