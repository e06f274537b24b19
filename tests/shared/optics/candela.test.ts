import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { candelaOf, peakCandela } from '../../../shared/optics/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { saidBy } from '../thrown.ts';

describe('a beam', () => {
	it('is stronger the narrower it is, and in step with its lumens', () => {
		const angle = between(1, 100);
		fc.assert(
			fc.property(angle, angle, between(1.05, 1.7), (a, b, spill) => {
				const [narrow, wide] = a < b ? [a, b] : [b, a];
				const one = peakCandela(1000, narrow, narrow * spill);
				expect(one).toBeGreaterThanOrEqual(peakCandela(1000, wide, wide * spill) * (1 - 1e-9));
				expect(peakCandela(2000, narrow, narrow * spill) / one).toBeCloseTo(2, 9);
			}),
			{ numRuns: runs(100) },
		);
	});

	it.each([
		[30, 50],
		[8, 10],
		[100, 170],
		[160, 175],
	])('gives its lumens back, summed over the half before it: %i and %i degrees', (beam, field) => {
		const peak = peakCandela(1000, beam, field);
		const k = Math.log(Math.log2(10)) / Math.log(field / beam);
		let lumens = 0;
		const step = Math.PI / 2 / 100_000;
		for (let angle = step / 2; angle < Math.PI / 2; angle += step) {
			const intensity = peak * 2 ** -(((2 * angle * 180) / Math.PI / beam) ** k);
			lumens += intensity * 2 * Math.PI * Math.sin(angle) * step;
		}
		expect(lumens).toBeCloseTo(1000, 1);
	});

	it('as wide as its field is even over its cone', () => {
		// a half space, and a cone of 60 degrees to either side, which is half of it
		expect(peakCandela(1000, 179.999_999, 1)).toBeCloseTo(1000 / (2 * Math.PI), 3);
		expect(peakCandela(1000, 120, 120)).toBeCloseTo(1000 / Math.PI, 9);
	});

	it('of no sense is refused', () => {
		expect(() => peakCandela(-1, 25, 40)).toThrow(InputError);
		expect(saidBy(() => peakCandela(100, 0, 40))).toContain(
			'A beam has 0 lumens or more and an angle between 0 and 180 degrees; found 100 lumens at 0 degrees.',
		);
	});
});

describe('the bundled fixtures', () => {
	it('have a peak between an even field and an even beam', () => {
		for (const profile of BUNDLED) {
			const lumens = profile.emitters.reduce((sum, it) => sum + it.lumens, 0);
			const { beam, field } = profile.optics;
			expect(candelaOf(profile)).toBeGreaterThan(peakCandela(lumens, field, field));
			expect(candelaOf(profile)).toBeLessThan(peakCandela(lumens, beam, beam));
		}
	});
});
