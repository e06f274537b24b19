import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	bandOf,
	checkBands,
	levelAt,
	middleOf,
	positionInBand,
	type ValueBand,
	valuesOf,
	widthOf,
} from '../../../shared/dmx/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';

/** What is wrong with bands, each with what a person is told of it. */
const told = (bands: readonly ValueBand[]) =>
	checkBands(bands).map(({ facts, ...problem }) => ({
		...problem,
		sentence: errorText(new InputError('profile.band', '', { ...facts, id: 'x' })).replace("Bands of 'x': ", ''),
	}));

const level = fc.integer({ min: 0, max: 255 });
const band = fc.tuple(level, level).map(([a, b]): ValueBand => ({ from: Math.min(a, b), to: Math.max(a, b) }));

/** Bands that cover 0 to 255 once each and in order, cut at any places. */
const sound = fc.uniqueArray(fc.integer({ min: 1, max: 255 }), { maxLength: 20 }).map((cuts): ValueBand[] => {
	const starts = [0, ...cuts.sort((a, b) => a - b)];
	return starts.map((from, i) => ({ from, to: (starts[i + 1] ?? 256) - 1 }));
});

const kinds = (bands: readonly ValueBand[]) => checkBands(bands).map(({ kind }) => kind);

describe('one band', () => {
	test('its values are those of 0 to 255 that lie in it', () => {
		fc.assert(
			fc.property(band, (b) => {
				const inside = Array.from({ length: 256 }, (_, i) => i).filter((i) => i >= b.from && i <= b.to);
				expect(valuesOf(b)).toEqual(inside);
				expect(widthOf(b)).toBe(inside.length);
			}),
		);
	});

	test('its middle leaves as many values below as above, or one fewer below', () => {
		fc.assert(
			fc.property(band, (b) => {
				const middle = middleOf(b);
				const spare = b.to - middle - (middle - b.from);
				expect([0, 1]).toContain(spare);
				expect(Number.isInteger(middle)).toBe(true);
			}),
		);
		expect([middleOf({ from: 8, to: 15 }), middleOf({ from: 10, to: 20 }), middleOf({ from: 9, to: 9 })]).toEqual([
			11, 15, 9,
		]);
	});

	test('position and level come back from each other', () => {
		fc.assert(
			fc.property(band, between(0, 1), (b, fraction) => {
				for (const value of valuesOf(b)) expect(levelAt(b, positionInBand(b, value))).toBe(value);
				const value = levelAt(b, fraction);
				expect(bandOf([b], value)).toBe(b);
				expect(Math.abs(value - (b.from + fraction * (b.to - b.from)))).toBeLessThanOrEqual(0.5);
			}),
			{ numRuns: runs(200) },
		);
	});

	test('starts at 0 and ends at 1; a band of one value is at its start', () => {
		expect(positionInBand({ from: 10, to: 20 }, 10)).toBe(0);
		expect(positionInBand({ from: 10, to: 20 }, 20)).toBe(1);
		expect(positionInBand({ from: 10, to: 20 }, 15)).toBe(0.5);
		expect(positionInBand({ from: 10, to: 10 }, 10)).toBe(0);
	});

	test.each([
		[() => valuesOf({ from: 5, to: 4 }), 'band.range', 'found 5 to 4.'],
		[() => middleOf({ from: 0, to: 256 }), 'band.range', 'found 0 to 256.'],
		[() => widthOf({ from: 0.5, to: 4 }), 'band.range', 'found 0.5 to 4.'],
		[() => positionInBand({ from: 10, to: 20 }, 21), 'band.outside', '21 isn’t in the band 10 to 20.'],
		[() => levelAt({ from: 10, to: 20 }, 1.5), 'fraction.range', 'found 1.5.'],
	])('refuses nonsense in words (%#)', (act, code, sentence) => {
		const error = thrownBy(act);
		expect(error.code).toBe(code);
		expect(errorText(error)).toContain(sentence);
	});
});

describe('bands of a slot', () => {
	test('sound bands have no problem, and each value is in exactly one, the one bandOf names', () => {
		fc.assert(
			fc.property(sound, level, (bands, value) => {
				expect(checkBands(bands)).toEqual([]);
				const holding = bands.filter((b) => valuesOf(b).includes(value));
				expect(holding).toEqual([bandOf(bands, value)]);
			}),
			{ numRuns: runs(200) },
		);
	});

	test('a band keeps what else it carries, and no band is undefined', () => {
		const bands = [{ from: 0, to: 9, does: 'nothing' }];
		expect(bandOf(bands, 9)?.does).toBe('nothing');
		expect(bandOf(bands, 10)).toBe(undefined);
		expect(thrownBy(() => bandOf(bands, 256)).code).toBe('level.range');
	});

	test('any whole-numbered bands at all: the gaps found are exactly the values in no band, and an overlap is found exactly when some value is in two', () => {
		const any = fc.array(band, { minLength: 1, maxLength: 8 });
		fc.assert(
			fc.property(any, (bands) => {
				const held = Array.from({ length: 256 }, (_, i) => bands.filter((b) => i >= b.from && i <= b.to).length);
				const problems = checkBands(bands);
				const missing = problems.filter(({ kind }) => kind === 'gap').flatMap(({ from, to }) => valuesOf({ from, to }));
				expect(missing).toEqual(held.flatMap((count, i) => (count === 0 ? [i] : [])));
				const doubled = new Set(
					problems.filter(({ kind }) => kind === 'overlap').flatMap(({ from, to }) => valuesOf({ from, to })),
				);
				expect([...doubled].sort((a, b) => a - b)).toEqual(held.flatMap((count, i) => (count > 1 ? [i] : [])));
				const disordered = bands.some((b, i) => i > 0 && b.from < (bands[i - 1]?.from ?? 0));
				expect(problems.some(({ kind }) => kind === 'out-of-order')).toBe(disordered);
			}),
			{ numRuns: runs(500) },
		);
	});

	test.each([
		{
			what: 'a gap of one',
			bands: [
				{ from: 0, to: 9 },
				{ from: 11, to: 255 },
			],
			problems: [{ kind: 'gap', index: 1, from: 10, to: 10, sentence: '10 belongs to no band: close the gap.' }],
		},
		{
			what: 'a gap at each end',
			bands: [{ from: 5, to: 250 }],
			problems: [
				{ kind: 'gap', index: 0, from: 0, to: 4, sentence: '0 to 4 belong to no band: close the gap.' },
				{ kind: 'gap', index: 0, from: 251, to: 255, sentence: '251 to 255 belong to no band: close the gap.' },
			],
		},
		{
			what: 'an overlap of one',
			bands: [
				{ from: 0, to: 10 },
				{ from: 10, to: 255 },
			],
			problems: [
				{
					kind: 'overlap',
					index: 1,
					from: 10,
					to: 10,
					sentence: 'Bands 1 and 2 both hold 10: each value belongs to one band.',
				},
			],
		},
		{
			what: 'a band within a band',
			bands: [
				{ from: 0, to: 255 },
				{ from: 20, to: 30 },
			],
			problems: [
				{
					kind: 'overlap',
					index: 1,
					from: 20,
					to: 30,
					sentence: 'Bands 1 and 2 both hold 20 to 30: each value belongs to one band.',
				},
			],
		},
		{
			what: 'past 255',
			bands: [
				{ from: 0, to: 99 },
				{ from: 100, to: 300 },
			],
			problems: [
				{
					kind: 'past-255',
					index: 1,
					from: 256,
					to: 300,
					sentence: 'Band 2 (100 to 300) runs past 255: values are 0 to 255.',
				},
			],
		},
		{
			what: 'below 0',
			bands: [{ from: -3, to: 255 }],
			problems: [
				{
					kind: 'below-zero',
					index: 0,
					from: -3,
					to: -1,
					sentence: 'Band 1 (-3 to 255) starts below 0: values are 0 to 255.',
				},
			],
		},
		{
			what: 'wholly below 0',
			bands: [
				{ from: -9, to: -5 },
				{ from: 0, to: 255 },
			],
			problems: [
				{
					kind: 'below-zero',
					index: 0,
					from: -9,
					to: -5,
					sentence: 'Band 1 (-9 to -5) starts below 0: values are 0 to 255.',
				},
			],
		},
		{
			what: 'two bands with the same end, then a third: it is named against the first of them',
			bands: [
				{ from: 0, to: 50 },
				{ from: 40, to: 50 },
				{ from: 50, to: 255 },
			],
			problems: [
				{
					kind: 'overlap',
					index: 1,
					from: 40,
					to: 50,
					sentence: 'Bands 1 and 2 both hold 40 to 50: each value belongs to one band.',
				},
				{
					kind: 'overlap',
					index: 2,
					from: 50,
					to: 50,
					sentence: 'Bands 1 and 3 both hold 50: each value belongs to one band.',
				},
			],
		},
		{
			what: 'wholly outside, which leaves a gap as well',
			bands: [
				{ from: 0, to: 199 },
				{ from: 300, to: 310 },
			],
			problems: [
				{
					kind: 'past-255',
					index: 1,
					from: 300,
					to: 310,
					sentence: 'Band 2 (300 to 310) runs past 255: values are 0 to 255.',
				},
				{ kind: 'gap', index: 1, from: 200, to: 255, sentence: '200 to 255 belong to no band: close the gap.' },
			],
		},
		{
			what: 'out of order',
			bands: [
				{ from: 100, to: 255 },
				{ from: 0, to: 99 },
			],
			problems: [
				{
					kind: 'out-of-order',
					index: 1,
					from: 0,
					to: 99,
					sentence: 'Band 2 (0 to 99) is listed after band 1, which starts higher, at 100.',
				},
			],
		},
		{
			what: 'nothing',
			bands: [],
			problems: [{ kind: 'none', index: 0, from: 0, to: 255, sentence: 'There are no bands: 0 to 255 do nothing.' }],
		},
	])('$what is named with its place', ({ bands, problems }) => {
		expect(told(bands)).toEqual(problems);
	});

	test('ends the wrong way round, and ends that are no whole number', () => {
		expect(told([{ from: 255, to: 0 }])[0]?.sentence).toBe('Band 1 (255 to 0) starts above its end: swap the two.');
		expect(told([{ from: 0, to: 99.5 }])[0]?.sentence).toBe('Band 1 (0 to 99.5) has an end that is no whole number.');
		expect(kinds([{ from: 255, to: 0 }])).toEqual(['reversed', 'gap']);
		expect(kinds([{ from: Number.NaN, to: 255 }])).toEqual(['not-whole', 'gap']);
	});
});
