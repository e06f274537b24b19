import { describe, expect, it } from 'vitest';
import { sequence } from '../../sim/sequence/index.ts';

/*
 * Several faults at once are group testing: N lights, each bad with chance p, any of them tried together in one look that says whether
 * one of them is bad. Two lights: 3 - q - q^2 looks with q = 1 - p (recalculated); three: figures calculated from outside, by two
 * exact solvers. From p = (3 - sqrt 5)/2 on, one by one is best (P. Ungar, The cutoff point for group testing, 1960, from memory).
 */
function looks(lights: number, p: number): number {
	const sets = Array.from({ length: 2 ** lights }, (_, set) => set);
	const bad = (set: number) =>
		Array.from({ length: lights }, (_, light) => (set >> light) & 1).reduce((sum, one) => sum + one, 0);
	return sequence(
		{
			weights: sets.map((set) => p ** bad(set) * (1 - p) ** (lights - bad(set))),
			costs: sets.slice(1).map(() => 1),
			outcomes: sets.slice(1).map((group) => sets.map((set) => ((group & set) === 0 ? 'good' : 'bad'))),
		},
		'exact',
	).expectedCost;
}

describe('lights that may each be bad, tried together', () => {
	it.each([0.01, 0.1, 0.2, 0.3])('two of them take 3 - q - q^2 looks at p = %d', (p) => {
		const q = 1 - p;
		expect(looks(2, p)).toBeCloseTo(3 - q - q * q, 12);
	});

	it.each([
		[0.01, 1.060297],
		[0.1, 1.627],
	])('three of them at p = %d take %d, more than Huffman’s bound at .1, which no looks reach', (p, cost) => {
		expect(looks(3, p)).toBeCloseTo(cost, 6);
		if (p === 0.1) expect(looks(3, p)).toBeGreaterThan(1.598 + 0.02);
	});

	it.each([2, 3, 4])('%d of them are best tried one by one from p = .382 on', (lights) => {
		expect(looks(lights, 0.382)).toBeCloseTo(lights, 9);
		expect(looks(lights, 0.38)).toBeLessThan(lights - 1e-6);
	});
});
