import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openRows, printMode, readChart } from '../../../shared/stock/index.ts';
import { runs } from '../../runs.ts';

const CHART = `5 channel mode
1 Dimmer
2 Strobe
 0-9 open
 10-255 strobe,
  slow to fast
3 Red`;

/** The chart with its lines, from 1, marked. */
const marked = (...lines: number[]) =>
	openRows(
		readChart(
			CHART.split('\n')
				.map((line, i) => (lines.includes(i + 1) ? `${line} [?]` : line))
				.join('\n'),
		),
	);
const OPEN = { from: 0, to: 9 };
const STROBE = { from: 10, to: 255 };

test('a chart with nothing to check has no open rows', () => {
	const open = marked();
	expect([open.lines, open.heading(0), open.row(0, 1, null, true), open.row(0, 2, STROBE, false)]).toEqual([
		0,
		false,
		false,
		false,
	]);
});

test('each row is open whose line is, and no other; a line that only goes on belongs to the one above', () => {
	const rows = (...lines: number[]) => {
		const open = marked(...lines);
		return [
			open.heading(0),
			open.row(0, 1, null, true),
			open.row(0, 2, OPEN, true),
			open.row(0, 2, STROBE, false),
			open.row(0, 3, null, true),
		].map(Number);
	};
	expect(rows(1)).toEqual([1, 0, 0, 0, 0]);
	expect(rows(2)).toEqual([0, 1, 0, 0, 0]);
	expect(rows(3)).toEqual([0, 0, 1, 0, 0]);
	expect(rows(5)).toEqual([0, 0, 0, 1, 0]);
	expect(rows(6)).toEqual([0, 0, 0, 1, 0]);
	expect(rows(4, 7)).toEqual([0, 0, 1, 0, 1]);
	expect(marked(4, 7).lines).toBe(2);
});

test('no unchecked line of a printed chart goes without a mark', () => {
	const slots = fc.array(fc.uniqueArray(fc.integer({ min: 1, max: 255 }), { maxLength: 4 }), {
		minLength: 1,
		maxLength: 5,
	});
	fc.assert(
		fc.property(slots, fc.nat(), (all, pick) => {
			const mode = {
				name: 'Mode A',
				slots: all.map((cuts, i) => {
					const starts = [0, ...cuts.toSorted((a, b) => a - b)];
					const bands = starts.map((from, b) => ({ from, to: (starts[b + 1] ?? 256) - 1, words: `does ${b}` }));
					return { at: i + 1, name: `Colour ${i}`, bands };
				}),
			};
			const lines = printMode(mode).split('\n');
			const at = pick % lines.length;
			const read = readChart(lines.map((line, i) => (i === at ? `${line} [?]` : line)).join('\n'));
			const open = openRows(read);
			const rows = (read.modes[0]?.slots ?? []).flatMap((slot) =>
				slot.bands.filter((band, i) => open.row(0, slot.at, band, i === 0)),
			);
			expect(rows.length + Number(open.heading(0))).toBe(1);
		}),
		{ numRuns: runs(100) },
	);
});
