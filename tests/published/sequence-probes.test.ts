import { describe, expect, it } from 'vitest';
import {
	entropyOf,
	makeOutcomeTable,
	makeSeconds,
	type Outcome,
	rankChecks,
	suspectsByRepair,
	type TableSearch,
	updateWeights,
} from '../../sim/sequence/index.ts';

/*
 * J. de Kleer and B. C. Williams, Diagnosing multiple faults, Artificial Intelligence 32(1), 1987: multipliers M1 (A C),
 * M2 (B D), M3 (C E) give X, Y, Z; adders A1 (X Y), A2 (Y Z) give F, G. With A 3, B 2, C 2, D 3, E 3 both should be 12;
 * seen are F 10, G 12. Conflicts, diagnoses and 'probe X first' are read; the entropies (chance of a fault .01) are
 * recalculated, taking what a broken part gives as any of 16 values alike, which is where the three figures meet.
 */
const PARTS = ['M1', 'M2', 'M3', 'A1', 'A2'] as const;
const VALUES = 16;
const FAULTY = 0.01;

type Point = 'X' | 'Y' | 'Z' | 'F' | 'G';
type Values = Partial<Record<Point, number>>;

/** A candidate: the parts that are broken. */
const candidates = Array.from({ length: 32 }, (_, bits) => PARTS.filter((_part, i) => (bits >> i) & 1));

/** What follows from what is seen when the named parts are broken and the others sound; null where it cannot be. */
function follow(broken: readonly string[], seen: Values): Values | null {
	const found: Values = { ...seen };
	const put = (point: Point, value: number): boolean => {
		found[point] ??= value;
		return found[point] === value;
	};
	const products: [string, Point][] = [
		['M1', 'X'],
		['M2', 'Y'],
		['M3', 'Z'],
	];
	for (const [part, point] of products) if (!broken.includes(part) && !put(point, 6)) return null;
	const sums: [string, Point, Point, Point][] = [
		['A1', 'X', 'Y', 'F'],
		['A2', 'Y', 'Z', 'G'],
	];
	for (let pass = 0; pass < 3; pass++) {
		for (const [part, left, right, sum] of sums) {
			if (broken.includes(part)) continue;
			const [a, b, c] = [found[left], found[right], found[sum]];
			if (a !== undefined && b !== undefined && !put(sum, a + b)) return null;
			if (a !== undefined && c !== undefined && !put(right, c - a)) return null;
			if (b !== undefined && c !== undefined && !put(left, c - b)) return null;
		}
	}
	return found;
}

/** What each candidate predicts at a point, given what is seen so far: a table of one check with sixteen answers. */
function predictions(point: Point, seen: Values, among: readonly (readonly string[])[]) {
	const row: (Outcome | null)[] = among.map((broken) => follow(broken, seen)?.[point] ?? null);
	return makeOutcomeTable([row], among.length, [Array.from({ length: VALUES }, (_, value) => value)]);
}

/** Weights after F 10 and G 12, by the solver's own rule with no wrong answers. */
function afterSymptoms(): Float64Array {
	const prior = candidates.map((broken) => FAULTY ** broken.length * (1 - FAULTY) ** (5 - broken.length));
	const f = predictions('F', {}, candidates);
	const onF = updateWeights(prior, f.cells, 10, 0, VALUES);
	const g = predictions('G', { F: 10 }, candidates);
	const onG = updateWeights(onF, g.cells, 12, 0, VALUES);
	// a candidate that what is seen rules out altogether
	return onG.map((weight, i) => (follow(candidates[i] ?? [], { F: 10, G: 12 }) === null ? 0 : weight));
}

describe('three multipliers and two adders', () => {
	const weights = afterSymptoms();
	const among = candidates.filter((_, i) => (weights[i] as number) > 0);
	const left = weights.filter((weight) => weight > 0);

	it('leave the diagnoses M1, A1, M2 M3 and M2 A2, and what holds one of them', () => {
		const least = among.filter(
			(broken) => !among.some((other) => other !== broken && other.every((p) => broken.includes(p))),
		);
		expect(least).toEqual([['M1'], ['M2', 'M3'], ['A1'], ['M2', 'A2']]);
	});

	it('conflict in M1 M2 A1 and in M1 M3 A1 A2: each diagnosis breaks a part of both', () => {
		for (const conflict of [
			['M1', 'M2', 'A1'],
			['M1', 'M3', 'A1', 'A2'],
		]) {
			for (const broken of among) expect(broken.some((part) => conflict.includes(part))).toBe(true);
		}
		expect(among).toHaveLength(
			candidates.filter((broken) =>
				[
					['M1', 'M2', 'A1'],
					['M1', 'M3', 'A1', 'A2'],
				].every((conflict) => broken.some((part) => conflict.includes(part))),
			).length,
		);
	});

	it('are best probed at X: entropies expected after X, Y, Z are .0383, 1.0635, 1.0670', () => {
		const seen = { F: 10, G: 12 };
		const expected = (['X', 'Y', 'Z'] as const).map((point) => {
			const search: TableSearch = {
				table: predictions(point, seen, among),
				weights: left,
				repairs: Int32Array.from(among.keys()),
				seconds: makeSeconds([1]),
				settled: 1,
			};
			const ranked = rankChecks(search, suspectsByRepair(search), Int32Array.of(0));
			return entropyOf(left) - (ranked[0]?.gain ?? 0);
		});
		expect(expected.map((each) => each.toFixed(4))).toEqual(['0.0383', '1.0635', '1.0670']);
	});
});
