import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { linesOf, NOTES, type ReadChart, readChart } from '../../../shared/stock/index.ts';
import { runs } from '../../runs.ts';
import { bare, chartsOf, STYLES } from './printed.ts';

const printed = BUNDLED.flatMap((profile) =>
	Object.entries(STYLES).map(([style, print]) => ({
		fixture: profile.name,
		style,
		charts: chartsOf(profile),
		text: chartsOf(profile).map(print).join('\n\n'),
	})),
);

describe('a printed chart reads back to the same slots and bands', () => {
	test.each(printed)('$fixture, $style', ({ charts, text }) => {
		const { modes, marks } = readChart(text);
		expect(bare(modes)).toEqual(bare(charts));
		expect(marks.filter(({ code }) => !NOTES.has(code))).toEqual([]);
	});
});

const anyText = fc.constantFrom(...printed.map(({ text }) => text));

/** A text with stretches taken out, doubled, or replaced by signs that charts are made of. */
const mutilated = fc
	.tuple(
		anyText,
		fc.array(
			fc.record({
				at: fc.nat(),
				length: fc.nat({ max: 12 }),
				by: fc.oneof(
					fc.string({ unit: fc.constantFrom(...'0123456789-–./,|%"\t\n xhFf'), maxLength: 6 }),
					fc.string({ maxLength: 4 }),
				),
				twice: fc.boolean(),
			}),
			{ minLength: 1, maxLength: 8 },
		),
	)
	.map(([text, cuts]) =>
		cuts.reduce((now, { at, length, by, twice }) => {
			const from = at % (now.length + 1);
			const piece = now.slice(from, from + length);
			return now.slice(0, from) + by + (twice ? piece + piece : '') + now.slice(from + length);
		}, text),
	);

const ENDINGS = ['\n', '\r\n', '\r', '\u2028', '\f'];

describe('the lines of a text', () => {
	test('start where they are said to, and make up all of it', () => {
		fc.assert(
			fc.property(fc.string({ unit: fc.constantFrom(...ENDINGS, 'a', ' ', '\t'), maxLength: 40 }), (text) => {
				const lines = linesOf(text);
				expect(lines.map((line) => line.text + line.ending).join('')).toBe(text);
				for (const line of lines) {
					expect(text.startsWith(line.text, line.start)).toBe(true);
					expect(line.text).not.toMatch(/[\r\n\u2028\f]/);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	/** What a mark is about, with what stands in for quotes and spaces alike. */
	const plain = (words: string): string => words.replaceAll(/["\s]+/g, ' ').trim();
	test('are those that marks count by: each mark points at the text it names, whatever ends a line', () => {
		const ended = fc.tuple(mutilated, fc.array(fc.constantFrom(...ENDINGS), { minLength: 1, maxLength: 6 }));
		fc.assert(
			fc.property(ended, ([printed, endings]) => {
				const parts = printed.split(/\r\n|[\r\n\u2028\f]/);
				const text = parts.map((part, i) => (i === 0 ? part : endings[i % endings.length] + part)).join('');
				fc.pre(linesOf(text).length === parts.length);
				const bare = ({ modes, marks }: ReadChart) => ({ modes, marks });
				const read = readChart(text);
				expect(bare(read)).toEqual(bare(readChart(parts.join('\n'))));
				const lines = linesOf(text);
				for (const { code, place, facts } of read.marks) {
					if (!('text' in facts)) continue;
					const start = (lines[place.line - 1]?.start ?? Number.NaN) + place.column - 1;
					expect(plain(text.slice(start, start + place.length)), code).toContain(plain(facts.text));
				}
			}),
			{ numRuns: runs(300) },
		);
	});
});

describe('a damaged text', () => {
	test('is read without throwing, its marks lie within it, and what is read is whole numbers', () => {
		fc.assert(
			fc.property(fc.oneof({ weight: 5, arbitrary: mutilated }, fc.string({ maxLength: 300 })), (text) => {
				const { modes, marks } = readChart(text);
				const lines = linesOf(text).length;
				for (const { place } of marks) {
					expect(place.line).toBeGreaterThanOrEqual(1);
					expect(place.line).toBeLessThanOrEqual(lines);
					expect(place.column).toBeGreaterThanOrEqual(1);
				}
				for (const { slots } of modes)
					for (const { at, bands } of slots)
						expect([at, ...bands.flatMap(({ from, to }) => [from, to])].every(Number.isInteger)).toBe(true);
			}),
			{ numRuns: runs(300) },
		);
	});

	test('with one band edge changed is never read in silence', () => {
		const edges = BUNDLED.flatMap((profile) =>
			chartsOf(profile).flatMap((mode) => mode.slots.flatMap((slot, s) => slot.bands.map((_, b) => ({ mode, s, b })))),
		);
		fc.assert(
			fc.property(
				fc.constantFrom(...edges),
				fc.constantFrom(...Object.entries(STYLES)),
				fc.constantFrom<'from' | 'to'>('from', 'to'),
				fc.integer({ min: -40, max: 40 }).filter((by) => by !== 0),
				({ mode, s, b }, [, print], edge, by) => {
					const slots = mode.slots.map((slot, i) =>
						i === s
							? {
									...slot,
									bands: slot.bands.map((band, n) =>
										n === b ? { ...band, [edge]: Math.max(0, Math.min(999, band[edge] + by)) } : band,
									),
								}
							: slot,
					);
					const text = print({ ...mode, slots });
					fc.pre(text !== print(mode));
					expect(readChart(text).marks.filter(({ code }) => !NOTES.has(code))).not.toEqual([]);
				},
			),
			{ numRuns: runs(400) },
		);
	});

	test('past the longest chart there is, is cut and says so', () => {
		const { marks } = readChart('1 Red\n'.repeat(4200));
		expect(marks.map(({ code }) => code)).toContain('too-long');
	});
});
