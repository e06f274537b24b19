import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pasteWords, tableWords } from '#words/plan/index.ts';
import { guessFields, type Plan, parseTable, patchTable, readRows } from '../../../shared/plan/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { runs } from '../../runs.ts';
import { plans } from './plans.ts';

const NASTY = [
	'=',
	'+',
	'-',
	'@',
	"'",
	'"',
	',',
	';',
	'\t',
	'\n',
	'\r\n',
	'\uFF1D',
	'ü',
	'ß',
	'灯',
	'\uFEFF',
	' ',
	'SUM(A1)',
	'x',
	'1',
];
const text = fc
	.oneof(
		fc.array(fc.constantFrom(...NASTY), { maxLength: 10 }).map((parts) => parts.join('')),
		fc.string({ unit: 'grapheme', maxLength: 20 }),
	)
	.map((found) => found.trim().slice(0, 60).trim());

const written = plans.chain((plan) =>
	fc
		.array(
			fc.record({
				name: text.filter((found) => found !== ''),
				circuit: text,
				universe: fc.integer({ min: 1, max: 63_999 }),
				address: fc.integer({ min: 1, max: 512 }),
				x: fc.integer({ min: 0, max: 198_000 }).map((mm) => mm / 1000),
			}),
			{ minLength: 8, maxLength: 8 },
		)
		.map(
			(said): Plan => ({
				...plan,
				rows: plan.rows.map((row, i) => {
					const { x = 0, ...each } = said[i] ?? {};
					return { ...row, ...each, place: { ...row.place, x } };
				}),
			}),
		),
);

const csvOf = (plan: Plan): string => patchTable(plan, pasteWords.fields, tableWords, BUNDLED);

/** Cells as a spreadsheet cuts them: what stands in quotes is one cell only where these are what it knows. */
function cellsOf(csv: string, delimiter: string): string[] {
	const cells: string[] = [];
	let cell = '';
	let isQuoted = false;
	for (const char of csv.replace('\uFEFF', '')) {
		if (char === '"') isQuoted = !isQuoted;
		if (!isQuoted && (char === delimiter || char === '\n')) {
			cells.push(cell);
			cell = '';
		} else cell += char;
	}
	return [...cells, cell].map((each) => each.replaceAll(/^"|"$/g, '').replaceAll('""', '"').trim());
}

describe('a patch as CSV', () => {
	it('pasted in again gives the same rows', () => {
		fc.assert(
			fc.property(written, (plan) => {
				const table = parseTable(csvOf(plan));
				const { fields, isHeader } = guessFields(table.rows[0] ?? [], tableWords);
				expect(isHeader).toBe(true);
				const read = readRows({ rows: table.rows.slice(1), lines: table.lines.slice(1) }, fields, BUNDLED, tableWords);
				expect(read.flatMap(({ troubles }) => troubles)).toEqual([]);
				expect(read.flatMap(({ rows }) => rows)).toEqual(
					plan.rows.map(({ name, profile, mode, universe, address, circuit, place }) => ({
						name,
						profile,
						mode,
						universe,
						address,
						x: place.x,
						...(circuit === '' ? {} : { circuit }),
					})),
				);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('holds no cell that a spreadsheet runs, whether it parts at commas or at semicolons, or not at quotes', () => {
		fc.assert(
			fc.property(written, (plan) => {
				const csv = csvOf(plan);
				const cells = [
					...cellsOf(csv, ','),
					...cellsOf(csv, ';'),
					...csv.split(/[;\t\r\n]/).map((each) => each.trim()),
				];
				expect(cells.filter((cell) => /^[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/.test(cell))).toEqual([]);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('is a table that spreadsheets know: UTF-8, a heading, line ends as RFC 4180 has them', () => {
		const [plan] = fc.sample(plans, { seed: 1, numRuns: 1 });
		if (!plan) throw new Error('no plan');
		const csv = csvOf(plan);
		expect(csv.startsWith('\uFEFF"Name","Fixture","Mode","Universe","Start address","Place","Circuit"\r\n')).toBe(true);
		expect(csv.split('\r\n')).toHaveLength(plan.rows.length + 2);
	});
});
