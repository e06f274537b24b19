import { describe, expect, test } from 'vitest';
import {
	alpha,
	alphaInterval,
	correlation,
	exactInterval,
	kr20,
	wilsonInterval,
} from '../../shared/statistics/index.ts';

const digits = (rows: string): number[][] => rows.split(' ').map((row) => [...row].map(Number));

// Wuensch, East Carolina University, notes on KR-20: ten people, ten questions (read)
const tenByTen = digits(
	'1111110110 1011011101 1111011001 0010001000 0000010010 1110111111 1101110111 1111111101 0101111101 1101101110',
);

describe('KR-20', () => {
	test('of the ten people in the notes is 0.6963 (read; R psych 2.2.9 gives 0.696347032: recalculated)', () => {
		expect(kr20(tenByTen)).toBeCloseTo(0.696347032, 9);
	});

	test('has the interval that R psych 2.2.9 gives for 0.6963087, ten people, ten questions (recalculated)', () => {
		const interval = alphaInterval(0.6963087, 10, 10);
		expect(interval?.from).toBeCloseTo(0.3089832, 6);
		expect(interval?.to).toBeCloseTo(0.9111925, 6);
	});

	test('Feldt’s interval for 0.8 with 41 people and 26 questions, by R 4.2.2’s qf (recalculated)', () => {
		const interval = alphaInterval(0.8, 41, 26);
		expect(interval?.from).toBeCloseTo(0.7001307444, 7);
		expect(interval?.to).toBeCloseTo(0.8786513677, 7);
	});
});

test('Cronbach’s alpha of Denis’s ten people and five questions is 0.633 (read; R psych: 0.633165294, recalculated)', () => {
	// Denis, Applied Univariate, Bivariate and Multivariate Statistics
	const rows = [
		[10, 12, 15, 11, 12],
		[12, 18, 12, 12, 1],
		[8, 16, 14, 14, 4],
		[6, 8, 16, 8, 6],
		[4, 7, 8, 7, 5],
		[6, 6, 3, 7, 3],
		[3, 4, 6, 5, 8],
		[7, 3, 7, 9, 9],
		[8, 9, 4, 10, 10],
		[9, 5, 6, 11, 12],
	];
	expect(alpha(rows)).toBeCloseTo(0.633165294, 9);
});

describe('correlations of question and total', () => {
	const totals = tenByTen.map((row) => row.reduce((sum, score) => sum + score, 0));
	const question = (at: number) => tenByTen.map((row) => row[at] ?? 0);

	test('with the question in the total, by R 4.2.2 (recalculated)', () => {
		const read = [
			0.794633008, 0.794633008, 0.202721214, 0.614034597, 0.709524247, 0.434493092, 0.16253857, 0.794633008,
			0.082760589, 0.625057075,
		];
		for (const [at, figure] of read.entries()) expect(correlation(question(at), totals)).toBeCloseTo(figure, 8);
	});

	test('with the question taken out of the total, by R 4.2.2 (recalculated)', () => {
		const read = [
			0.705889154, 0.705889154, 0, 0.473589199, 0.583874208, 0.286146545, -0.02744451, 0.705889154, -0.123612847,
			0.475866867,
		];
		for (const [at, figure] of read.entries()) {
			const rest = totals.map((total, person) => total - (tenByTen[person]?.[at] ?? 0));
			expect(correlation(question(at), rest)).toBeCloseTo(figure, 8);
		}
	});

	test('point-biserial of fourteen people in two groups: 0.3767 (read)', () => {
		const none = [6, 8, 11, 25, 27, 31, 39, 44];
		const one = [8, 16, 31, 50, 56, 68];
		expect(correlation([...none.map(() => 0), ...one.map(() => 1)], [...none, ...one])).toBeCloseTo(0.3767, 4);
	});

	test('point-biserial in the example of SciPy’s manual: 0.8660254 (read)', () => {
		expect(correlation([0, 0, 0, 1, 1, 1, 1], [0, 1, 2, 3, 4, 5, 6])).toBeCloseTo(0.8660254, 7);
	});
});

describe('95 % intervals of a share', () => {
	// Newcombe 1998 (from memory); by binom.test and prop.test(correct = FALSE) of R 4.2.2 (recalculated)
	test.each([
		[81, 263, 0.25273675, 0.36762192, 0.25528852, 0.36620958],
		[15, 148, 0.05784401, 0.16165049, 0.0623864, 0.16048724],
		[0, 20, 0, 0.16843347, 0, 0.16112516],
		[1, 29, 0.00087265, 0.1776443, 0.00611321, 0.17175522],
		// R's binom, in a statistics package's test data (read)
		[18, 20, 0.683017, 0.987651, 0.698966, 0.972134],
		[4, 20, 0.057334, 0.436614, 0.080658, 0.416017],
		[0, 30, 0, 0.115703, 0, 0.113513],
		[30, 30, 0.884297, 1, 0.886487, 1],
	])('%i of %i', (hits, of, exactFrom, exactTo, wilsonFrom, wilsonTo) => {
		const exact = exactInterval(hits, of);
		const wilson = wilsonInterval(hits, of);
		expect(exact?.from).toBeCloseTo(exactFrom, 5);
		expect(exact?.to).toBeCloseTo(exactTo, 5);
		expect(wilson?.from).toBeCloseTo(wilsonFrom, 5);
		expect(wilson?.to).toBeCloseTo(wilsonTo, 5);
	});
});
