import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	alpha,
	alphaInterval,
	correlation,
	crossedShare,
	exactInterval,
	kr20,
	mean,
	variance,
	wilsonInterval,
} from '../../../shared/statistics/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { saidBy, thrownBy } from '../thrown.ts';

const value = between(-1000, 1000);
const share = fc.nat(300).chain((of) => fc.tuple(fc.nat(of), fc.constant(of)));

describe('moments', () => {
	test('of nothing are null', () => {
		expect(mean([])).toBeNull();
		expect(variance([])).toBeNull();
		expect(correlation([], [])).toBeNull();
		expect(correlation([1, 1, 1], [1, 2, 3])).toBeNull();
		expect(correlation([0.1, 0.1, 0.1, 0.1], [1, 2, 3, 4])).toBeNull();
	});

	test('a correlation lies from -1 to 1, is the same both ways round, and does not care for units', () => {
		fc.assert(
			fc.property(fc.array(fc.tuple(fc.integer({ min: -99, max: 99 }), fc.integer({ min: -99, max: 99 }))), (pairs) => {
				const [xs, ys] = [pairs.map(([x]) => x), pairs.map(([, y]) => y)];
				const r = correlation(xs, ys);
				expect(correlation(ys, xs)).toBe(r);
				if (r === null) return;
				expect(Math.abs(r)).toBeLessThanOrEqual(1);
				expect(
					correlation(
						xs.map((x) => 3 * x + 7),
						ys,
					) ?? 9,
				).toBeCloseTo(r, 9);
				expect(
					correlation(
						xs,
						ys.map((y) => -y),
					) ?? 9,
				).toBeCloseTo(-r, 9);
			}),
			{ numRuns: runs(200) },
		);
	});

	test('variance by its other formula, the mean of squares less the square of the mean', () => {
		fc.assert(
			fc.property(fc.array(value, { minLength: 1, maxLength: 50 }), (values) => {
				const squares = mean(values.map((each) => each ** 2)) ?? 0;
				expect(variance(values)).toBeCloseTo(squares - (mean(values) ?? 0) ** 2, 4);
			}),
			{ numRuns: runs(200) },
		);
	});

	test.each([1, 100, -7])(
		'a spread within a millionth of a millionth of the mean is the rounding of sums: about %d',
		(middle) => {
			const about = (part: number) => Array.from({ length: 100 }, (_, i) => middle + (i % 2 ? part : -part) * middle);
			const turns = Array.from({ length: 100 }, (_, i) => i % 2);
			expect(correlation(about(0.5e-12), turns)).toBeNull();
			expect(correlation(turns, about(0.5e-12))).toBeNull();
			expect(Math.abs(correlation(about(2e-12), turns) ?? 0)).toBeCloseTo(1, 3);
			expect(Math.abs(correlation(turns, about(2e-12)) ?? 0)).toBeCloseTo(1, 3);
		},
	);

	test('lists of two lengths are refused', () => {
		expect(thrownBy(() => correlation([1], [1, 2])).code).toBe('statistics.length');
	});
});

describe('intervals of a share', () => {
	test('hold the share, stay in 0 to 1, mirror, and the exact one reaches at least as far from the middle of many', () => {
		fc.assert(
			fc.property(share, ([hits, of]) => {
				for (const interval of [wilsonInterval, exactInterval]) {
					const found = interval(hits, of);
					if (of === 0) {
						expect(found).toBeNull();
						continue;
					}
					const mirrored = interval(of - hits, of);
					expect(found?.from).toBeGreaterThanOrEqual(0);
					expect(found?.to).toBeLessThanOrEqual(1);
					expect(found?.from).toBeLessThanOrEqual(hits / of + 1e-12);
					expect(found?.to).toBeGreaterThanOrEqual(hits / of - 1e-12);
					expect(1 - (mirrored?.to ?? 9)).toBeCloseTo(found?.from ?? 9, 6);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	test('the exact interval’s ends are where 2.5 % of such draws would lie beyond', () => {
		const tail = (p: number, from: number, to: number, of: number): number => {
			let chance = (1 - p) ** of;
			let sum = 0;
			for (let k = 0; k <= of; k++) {
				if (k >= from && k <= to) sum += chance;
				chance *= ((of - k) / (k + 1)) * (p / (1 - p));
			}
			return sum;
		};
		fc.assert(
			fc.property(
				fc.integer({ min: 2, max: 60 }).chain((of) => fc.tuple(fc.integer({ min: 1, max: of - 1 }), fc.constant(of))),
				([hits, of]) => {
					const { from, to } = exactInterval(hits, of) ?? { from: 0, to: 1 };
					expect(tail(from, hits, of, of)).toBeCloseTo(0.025, 5);
					expect(tail(to, 0, hits, of)).toBeCloseTo(0.025, 5);
				},
			),
			{ numRuns: runs(100) },
		);
	});

	test('nonsense is refused with a sentence', () => {
		expect(thrownBy(() => wilsonInterval(3, 2)).code).toBe('statistics.share');
		expect(saidBy(() => exactInterval(-1, 2))).toBe('How many of them is a whole number from 0 to 2; found -1.');
	});
});

describe('how far a paper measures one thing', () => {
	const scores = fc
		.tuple(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 2, max: 12 }))
		.chain(([people, questions]) =>
			fc.array(fc.array(fc.constantFrom(0, 1), { minLength: questions, maxLength: questions }), {
				minLength: people,
				maxLength: people,
			}),
		);

	test('never past 1; 1 where each person has all questions alike; the order of people and questions is all one', () => {
		fc.assert(
			fc.property(scores, (rows) => {
				const figure = kr20(rows);
				if (figure === null) return;
				expect(figure).toBeLessThanOrEqual(1 + 1e-12);
				expect(kr20(rows.toReversed()) ?? 9).toBeCloseTo(figure, 9);
				expect(kr20(rows.map((row) => row.toReversed())) ?? 9).toBeCloseTo(figure, 9);
				const { from, to } = alphaInterval(figure, rows.length, rows[0]?.length ?? 0) ?? { from: 9, to: -9 };
				expect(from).toBeLessThanOrEqual(figure + 1e-9);
				expect(to).toBeGreaterThanOrEqual(figure - 1e-9);
			}),
			{ numRuns: runs(200) },
		);
		expect(
			kr20([
				[1, 1, 1],
				[0, 0, 0],
				[1, 1, 1],
			]),
		).toBeCloseTo(1, 12);
	});

	test('is null where nobody differs, or there is one person or one question', () => {
		expect(
			kr20([
				[1, 0],
				[0, 1],
			]),
		).toBeNull();
		expect(kr20([[1, 0]])).toBeNull();
		expect(kr20([[1], [0]])).toBeNull();
		expect(kr20([])).toBeNull();
		expect(alphaInterval(null, 9, 9)).toBeNull();
	});

	test('nonsense is refused with a sentence', () => {
		expect(
			thrownBy(() =>
				kr20([
					[0.5, 1],
					[1, 1],
				]),
			).code,
		).toBe('statistics.right');
		expect(thrownBy(() => alpha([[1, 2], [1]])).code).toBe('statistics.length');
	});
});

describe('a share of answers by people to questions', () => {
	const digits = (rows: string): number[][] => rows.split(' ').map((row) => [...row].map(Number));

	// the formulas of its docstring, by NumPy and SciPy 1.17.1 (recalculated): variances with n − 1, t.ppf, beta.ppf
	test.each([
		[
			'1111110110 1011011101 1111011001 0010001000 0000010010 1110111111 1101110111 1111111101 0101111101 1101101110',
			0.446330001,
			0.834644501,
			'people',
		],
		['111 110 110 100 111 110 100 000', 0.055469764, 0.982936014, 'questions'],
		['11111111 11101100 11001000 10001000', 0.100991021, 0.949118855, 'people'],
		// all questions right as often: the people alone differ
		['1110 1101 1011 0111 1111 0111 1011 1101 1110 1111', 0.621274644, 0.919825882, 'people'],
		// all people right as often: the questions alone differ, and little more than half an answer is left
		['110 110 110 110', 0.000020767, 1, 'questions'],
		// no spread of either: as many separate answers as there are; of two as many, questions are named
		['10 01', 0.067585986, 0.932414014, 'questions'],
		['1100 0110 0011 1001', 0.246510111, 0.75348989, 'questions'],
		// all right, all wrong: as many as the fewer of the two
		['1111 1111 1111', 0.292401774, 1, 'people'],
		['000 000', 0, 0.841886117, 'people'],
	])('%s', (rows, from, to, of) => {
		const found = crossedShare(digits(rows));
		expect(found?.from).toBe(of);
		expect(found?.interval.from).toBeCloseTo(from, 6);
		expect(found?.interval.to).toBeCloseTo(to, 6);
	});

	test('of one person or one question could be anything; of none is null; of rows of two lengths is refused', () => {
		expect(crossedShare([[1, 0, 1]])).toEqual({ interval: { from: 0, to: 1 }, from: 'people' });
		expect(crossedShare([[1], [0]])).toEqual({ interval: { from: 0, to: 1 }, from: 'questions' });
		expect([crossedShare([]), crossedShare([[]])]).toEqual([null, null]);
		expect(thrownBy(() => crossedShare([[1, 0], [1]]))).toMatchObject({ code: 'statistics.length', path: 'scores' });
	});
});
