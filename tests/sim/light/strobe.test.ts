import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STROBE_DUTY, strobeGate } from '../../../sim/light/index.ts';
import { runs } from '../../runs.ts';

describe('the strobe gate', () => {
	it('stays open on a steady light', () => {
		fc.assert(
			fc.property(fc.constantFrom(0, -1, Number.NaN), fc.nat(), (hz, ms) => strobeGate(hz, ms) === 1),
			{ numRuns: runs(50) },
		);
	});

	// Symptom: a strobe that began dark, or was lit in the other half, left every test green. Cause: flashes were counted, and not where they are.
	it.each([
		[1, 0, 1],
		[1, 499, 1],
		[1, 500, 0],
		[1, 999, 0],
		[1, 1000, 1],
		[10, 49, 1],
		[10, 50, 0],
		[10, 99, 0],
		[10, 100, 1],
		[0.5, 999, 1],
		[0.5, 1000, 0],
		[0.5, 2000, 1],
	] as const)('at %d a second, %d ms on: %d', (hz, ms, lit) => {
		expect(strobeGate(hz, ms)).toBe(lit);
	});

	it('opens as often as it is told, for its share of the time', () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 20 }), (hz) => {
				const samples = Array.from({ length: 10_000 }, (_, i) => strobeGate(hz, i + 0.5));
				const openings = samples.filter((lit, i) => lit === 1 && samples.at(i - 1) === 0).length;
				const lit = samples.filter((it) => it === 1).length / samples.length;
				expect(openings).toBe(hz * 10);
				expect(lit).toBeCloseTo(STROBE_DUTY, 2);
			}),
			{ numRuns: runs(20) },
		);
	});
});
