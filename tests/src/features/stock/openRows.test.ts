import { expect, test } from 'vitest';
import type { Profile } from '../../../../shared/profile/index.ts';
import { blankEntry, printedModes, UNCHECKED } from '../../../../shared/stock/index.ts';
import { profileSection } from '../../../../src/features/reference/index.ts';
import { fixtureOf, openRowsOf } from '../../../../src/features/stock/maker.ts';
import { ownFixture } from '../../../../src/features/stock/own.ts';

const LINES = [
	'1 Dimmer',
	'3 Strobe',
	' 0-9 open',
	' 10-200 strobe, slow to fast',
	'4 Red',
	'5/6 Pan',
	'7 Macros',
	' 20-30 one',
];
/** The chart with one of its lines, from 1, marked as still to check. */
const marked = (line: number) => ({
	...blankEntry('own-1', 'Row wash', 0),
	chart: LINES.map((text, i) => (i === line - 1 ? `${text} ${UNCHECKED}` : text)).join('\n'),
});

test('in the reference an unchecked line of a chart is marked in its own row, and no other', () => {
	const rowsOf = (line: number) => {
		const entry = marked(line);
		return profileSection(fixtureOf(entry).profile as Profile, openRowsOf(entry))
			.tables.flatMap(({ rows }) => rows)
			.filter((row) => row.some((cell) => cell.includes(UNCHECKED)))
			.map(([at, , values]) => `${at} ${values}`);
	};
	const all = LINES.map((_, i) => rowsOf(i + 1));
	for (const rows of all) expect(rows.length).toBe(1);
	expect(new Set(all.flat()).size).toBeGreaterThanOrEqual(LINES.length - 2);
	expect(all[3]?.[0]).toMatch(/^3 10/);
	expect(profileSection(fixtureOf(marked(0)).profile as Profile, openRowsOf(marked(0))).tables.flat()).not.toContain(
		UNCHECKED,
	);
});

test('wherever it is shown, each unchecked line has a row, and they are counted', async () => {
	for (const line of LINES.keys()) {
		const entry = marked(line + 1);
		const open = await ownFixture(entry).openRows();
		expect(open).toMatchObject({ lines: 1 });
		const rows = printedModes(fixtureOf(entry).profile as Profile).flatMap(({ slots }, mode) =>
			slots.flatMap(({ at, bands }) =>
				(bands.length > 0 ? bands : [null]).filter((band, i) => open.row(mode, at, band, i === 0)),
			),
		);
		expect(rows.length, LINES[line]).toBe(1);
	}
});
