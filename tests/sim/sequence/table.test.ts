import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	classesOf,
	makeOutcomeTable,
	makeSeconds,
	numberRepairs,
	type Outcome,
	outcomesOf,
	pickSuspects,
	rankChecks,
	shareApart,
	suspectsByRepair,
	type TableSearch,
} from '../../../sim/sequence/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';

const some = { numRuns: runs(200) };

/** A table's rows, with cells that predict nothing, and a repair and a weight for each suspect. */
const rigs = fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 5 })).chain(([n, m]) => {
	const cell = fc.oneof(
		{ weight: 5, arbitrary: fc.integer({ min: 0, max: 3 }) },
		{ weight: 1, arbitrary: fc.constant(null) },
	);
	return fc.record({
		rows: fc.array(fc.array(cell, { minLength: n, maxLength: n }), { minLength: m, maxLength: m }),
		repairs: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: n, maxLength: n }),
		weights: fc.array(between(0.01, 1), { minLength: n, maxLength: n }),
		error: fc.oneof(fc.constant(0), between(0.001, 0.5)),
	});
});

describe('a table of outcomes', () => {
	it('gives back what was put in', () => {
		fc.assert(
			fc.property(rigs, ({ rows }) => {
				const table = makeOutcomeTable(rows, rows[0]?.length ?? 0);
				rows.forEach((row, check) => {
					const found = [...outcomesOf(table, check)].map((code) => table.labels[check]?.[code] ?? null);
					expect(found).toEqual(row);
				});
			}),
			some,
		);
	});

	it('classes suspects exactly as their rows are alike, however many checks there are', () => {
		// symptom in the prototype: optima that were too low past 14 suspects; cause: a class's key in base k ran past 2^53
		const tall = fc.integer({ min: 1, max: 12 }).chain((n) =>
			fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: n, maxLength: n }), {
				minLength: 60,
				maxLength: 60,
			}),
		);
		fc.assert(
			fc.property(tall, fc.nat(11), fc.nat(11), (rows, a, b) => {
				const copied = rows.map((row, check) =>
					row.map((cell, i) => (i === b && check < 59 ? (row[a] ?? cell) : cell)),
				);
				for (const each of [rows, copied]) {
					const n = each[0]?.length ?? 0;
					const texts = Array.from({ length: n }, (_, suspect) => each.map((row) => row[suspect]).join());
					const wanted = texts.map((text) => [...new Set(texts)].indexOf(text));
					expect([...classesOf(makeOutcomeTable(each, n))]).toEqual(wanted);
				}
			}),
			some,
		);
	});

	it('can be narrowed to some of its suspects', () => {
		const table = makeOutcomeTable(
			[
				['a', 'b', 'c'],
				[1, 1, null],
			],
			3,
		);
		const narrow = pickSuspects(table, [2, 0]);
		expect(narrow.suspects).toBe(2);
		expect([...outcomesOf(narrow, 0)]).toEqual([2, 0]);
		expect([...outcomesOf(narrow, 1)]).toEqual([1, 0]);
		expect(narrow.labels).toBe(table.labels);
	});

	it.each([
		[() => makeOutcomeTable([[1, 2], [1]], 2), 'sequence.lengths', 'outcomes[1]'],
		[() => makeOutcomeTable([[1, Number.NaN]], 2), 'sequence.outcomes', 'outcomes[0][1]'],
		[() => makeOutcomeTable([Array.from({ length: 65_536 }, (_, i) => i)], 65_536), 'sequence.outcomes', 'outcomes[0]'],
	])('is refused for nonsense (%#)', (act, code, path) => {
		expect(act).toThrow(expect.objectContaining({ code, path }));
	});
});

/** The mutual information of an answer and the repair, from the joint distribution written out. */
function writtenOut(
	row: readonly (Outcome | null)[],
	repairs: readonly number[],
	weights: readonly number[],
	error: number,
) {
	const answers = [...new Set(row.filter((cell) => cell !== null))];
	const total = weights.reduce((sum, weight) => sum + weight, 0);
	const joint = new Map<string, number>();
	const byAnswer = new Map<Outcome, number>();
	const byMend = new Map<number, number>();
	row.forEach((cell, i) => {
		for (const answer of answers) {
			const likely =
				cell === null
					? 1 / answers.length
					: cell === answer
						? 1 - (answers.length > 1 ? error : 0)
						: error / (answers.length - 1);
			const chance = ((weights[i] as number) / total) * likely;
			const repair = repairs[i] as number;
			joint.set(`${answer}/${repair}`, (joint.get(`${answer}/${repair}`) ?? 0) + chance);
			byAnswer.set(answer, (byAnswer.get(answer) ?? 0) + chance);
			byMend.set(repair, (byMend.get(repair) ?? 0) + chance);
		}
	});
	let bits = 0;
	for (const [answer, a] of byAnswer) {
		for (const [repair, b] of byMend) {
			const both = joint.get(`${answer}/${repair}`) ?? 0;
			if (both > 0) bits += both * Math.log2(both / (a * b));
		}
	}
	return bits;
}

describe('the rank of checks', () => {
	it('goes by the mutual information of answer and repair, a second', () => {
		fc.assert(
			fc.property(rigs, fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 5, maxLength: 5 }), (rig, costs) => {
				const { rows, repairs, weights, error } = rig;
				const search: TableSearch = {
					table: makeOutcomeTable(rows, weights.length),
					weights: Float64Array.from(weights),
					repairs: numberRepairs(repairs),
					seconds: makeSeconds(costs.slice(0, rows.length)),
					settled: 0.95,
				};
				const checks = Int32Array.from(rows.keys());
				const ranked = rankChecks(search, suspectsByRepair(search), checks, { errors: rows.map(() => error) });
				const told = rows.map((row) => writtenOut(row, repairs, weights, error));
				if (!told.some((bits) => bits > 1e-9)) return;
				for (const { check, gain, seconds, rate } of ranked) {
					expect(Math.abs(gain - (told[check] as number))).toBeLessThan(1e-9);
					expect(seconds).toBeCloseTo(costs[check] as number, 9);
					expect(rate).toBeCloseTo(gain / seconds, 12);
				}
				for (let i = 1; i < ranked.length; i++) {
					expect((ranked[i - 1]?.rate ?? 0) * (1 + 1e-6)).toBeGreaterThanOrEqual(ranked[i]?.rate ?? 0);
				}
				expect(ranked.length).toBeGreaterThanOrEqual(told.filter((bits) => bits > 1e-9).length);
			}),
			some,
		);
	});

	it('where no check tells of the repair by itself, goes by what it tells of the suspect', () => {
		// repairs 0 and 1 are told apart by both checks together only
		const search: TableSearch = {
			table: makeOutcomeTable(
				[
					[0, 0, 1, 1],
					[0, 1, 0, 1],
				],
				4,
			),
			weights: Float64Array.of(1, 1, 1, 1),
			repairs: Int32Array.of(0, 1, 1, 0),
			seconds: makeSeconds([20, 10]),
			settled: 1,
		};
		const ranked = rankChecks(search, suspectsByRepair(search), Int32Array.of(0, 1));
		expect(ranked.map(({ check, gain }) => [check, gain])).toEqual([
			[1, 1],
			[0, 1],
		]);
	});

	it('takes off what an outcome gives back, by how likely it is, wrong answers included', () => {
		const search: TableSearch = {
			table: makeOutcomeTable([['cleared', 'not', 'not']], 3),
			weights: Float64Array.of(2, 1, 1),
			repairs: Int32Array.of(0, 1, 2),
			seconds: makeSeconds([40], { refund: Float64Array.of(30), refundOutcome: Int32Array.of(0) }),
			settled: 1,
		};
		const by = (errors: number[]) =>
			rankChecks(search, suspectsByRepair(search), Int32Array.of(0), { errors })[0]?.seconds;
		expect(by([0])).toBeCloseTo(40 - 30 * 0.5, 12);
		expect(by([0.1])).toBeCloseTo(40 - 30 * (0.5 * 0.9 + 0.5 * 0.1), 12);
	});
});

describe('the share that stands apart', () => {
	it('counts those who differ from all with another repair in so many checks', () => {
		const search = {
			table: makeOutcomeTable(
				[
					[0, 0, 1, 1],
					[0, 0, 1, 0],
					[0, 0, 1, null],
				],
				4,
			),
			weights: Float64Array.of(1, 2, 3, 4),
			repairs: Int32Array.of(0, 0, 1, 2),
		};
		expect(shareApart(search, 0)).toBe(1);
		expect(shareApart(search, 1)).toBe(1);
		expect(shareApart(search, 2)).toBe(0);
		const two = { ...search, repairs: Int32Array.of(0, 0, 1, 0) };
		expect(shareApart(two, 1)).toBe(1);
		expect(shareApart({ ...two, weights: Float64Array.of(1, 2, 3, 0) }, 2)).toBe(0.5);
	});
});
