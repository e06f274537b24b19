import { csvWords } from '../../../content/papers/index.ts';
import type { ClassRow, ClassTable } from './sort.ts';

/** A mark at the start that tells spreadsheets the text is UTF-8, so that names keep their accents. */
const BYTE_ORDER_MARK = '\ufeff';
const CRLF = '\r\n';

/**
 * A class table as comma-separated values (RFC 4180): one line an attempt, one column a question, 1 right, 0 wrong, empty where
 * not answered. A cell that a spreadsheet would take for a formula begins with an apostrophe instead.
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
		flags.map(({ sentence }) => sentence).join(' '),
		// all digits with an e among them would be taken for a number
		`#${attempt}`,
		...mark.items.map(({ answered, score }) => (answered ? score : '')),
	];
}

/** One field: harmless to a spreadsheet, and quoted where it holds a comma, a quote or a line's end. */
function cell(value: string | number): string {
	if (typeof value === 'number') return String(value);
	const safe = /^\s*[=+\-@\uff1d\uff0b\uff0d\uff20\t\r]/.test(value) ? `'${value}` : value;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
