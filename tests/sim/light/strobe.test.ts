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
