import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	type Field,
	guessFields,
	parseTable,
	readRows,
	type TableWords,
	withCell,
} from '../../../shared/plan/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { runs } from '../../runs.ts';

const words: TableWords = {
	headers: {
		name: ['name'],
		type: ['fixture'],
		mode: ['mode'],
		universe: ['universe'],
		address: ['address'],
		place: ['place'],
		circuit: ['circuit'],
		count: ['count'],
	},
	channels: ['ch', 'channels'],
};
const fields: readonly Field[] = ['name', 'type', 'mode', 'address'];
const read = (text: string, own: readonly (Field | null)[] = fields) => readRows(parseTable(text), own, BUNDLED, words);

describe('a pasted table', () => {
	test.each([
		['tabs', 'a\tb\nc\td', '\t'],
		['semicolons', 'a;b,5\nc;d', ';'],
		['commas', 'a,b\r\nc,d\r\n', ','],
	])('is parted by %s', (_, text, delimiter) => {
		const table = parseTable(text);
		expect(table.delimiter).toBe(delimiter);
		expect(table.rows.map((row) => row.length)).toEqual([2, 2]);
	});

	test('cells come back as they were, whatever they hold (RFC 4180)', () => {
		const cell = fc.string({ maxLength: 12 }).map((text) => text.replaceAll('\r', '').trim());
		const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 });
		fc.assert(
			fc.property(rows, fc.constantFrom('\t', ';', ','), (cells, delimiter) => {
				const text = cells
					.map((row) => row.map((each) => `"${each.replaceAll('"', '""')}"`).join(delimiter))
					.join('\n');
				const table = parseTable(text);
				expect(table.rows).toEqual(cells.filter((row) => row.some((each) => each !== '')));
				expect(table.openQuote).toBeNull();
			}),
			{ numRuns: runs(200) },
		);
	});

	test('a quote that is never closed is told with its line', () => {
		expect(parseTable('a,b\nc,"d\ne').openQuote).toBe(2);
	});

	test('a cell put right stands in its row, past the end of a short one too', () => {
		const table = parseTable('name,fixture,mode\nA,Tallow 6\nB,Tallow 6,9 ch');
		expect(withCell(table, 2, 2, ' 9 ch ').rows).toEqual([
			['name', 'fixture', 'mode'],
			['A', 'Tallow 6', '9 ch'],
			['B', 'Tallow 6', '9 ch'],
		]);
		expect(withCell(table, 2, 4, 'x').rows[1]).toEqual(['A', 'Tallow 6', '', '', 'x']);
		expect(withCell(table, 3, 0, 'C').rows[2]).toEqual(['C', 'Tallow 6', '9 ch']);
	});

	test('its header says what the columns hold', () => {
		expect(guessFields(['Fixture', 'x', 'Address', 'address'], words)).toEqual({
			fields: ['type', null, 'address', null],
			isHeader: true,
		});
		expect(guessFields(['Tallow 6', '1'], words).isHeader).toBe(false);
	});

	test('a row is read whole: type by name or id, mode by name or footprint, universe with the address', () => {
		expect(read('Left, tallow 6, 9 ch, 2.128')[0]?.rows).toEqual([
			{ profile: 'tallow-6', mode: 'middle', name: 'Left', universe: 2, address: 128 },
		]);
		expect(read('Left,cobble,,')[0]?.rows).toEqual([{ profile: 'cobble', name: 'Left' }]);
	});

	test('a count stands for so many from its address on', () => {
		expect(read('3,tallow-6,9,Wash', ['count', 'type', 'address', 'name'])[0]?.rows).toMatchObject([
			{ name: 'Wash 1', address: 9 },
			{ name: 'Wash 2', address: 18 },
			{ name: 'Wash 3', address: 27 },
		]);
	});

	test.each([
		['a fixture nobody knows', 'a,spot,,1', 'unknown-type', 1],
		['no fixture', 'a,,,1', 'no-type', 1],
		['a mode it has not', 'a,cobble,9,1', 'unknown-mode', 2],
		['an address past 512', 'a,cobble,,513', 'no-address', 3],
		['an address that is none', 'a,cobble,,x', 'no-address', 3],
		['more cells than columns', 'a,cobble,,1,spare', 'too-many-cells', 4],
	])('%s is marked in its place, and nothing of the row is taken', (_, text, trouble, column) => {
		const [row] = read(text);
		expect(row?.rows).toEqual([]);
		expect(row?.troubles).toContainEqual(expect.objectContaining({ trouble, column }));
	});

	test('every row of any text is read, or says why not', () => {
		fc.assert(
			fc.property(fc.string({ maxLength: 200 }), (text) => {
				const table = parseTable(text);
				const rows = readRows(table, fields, BUNDLED, words);
				expect(rows).toHaveLength(table.rows.length);
				for (const row of rows) expect(row.rows.length > 0).toBe(row.troubles.length === 0);
			}),
			{ numRuns: runs(300) },
		);
	});

	test('2,000 rows are read; what is past them is counted', () => {
		const table = parseTable(`name,fixture,mode,address\n${'a,cobble,,\n'.repeat(2003)}`);
		expect(table.rows).toHaveLength(2001);
		expect(table.leftOut).toBe(3);
		expect(readRows(table, fields, BUNDLED, words).filter(({ rows }) => rows.length === 1)).toHaveLength(2000);
	});
});
