import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { illuminance, poolDiameter } from '../../../shared/optics/index.ts';
import { runs } from '../../runs.ts';

const metres = fc.double({ min: 0.01, max: 1000, noNaN: true });
const degrees = fc.double({ min: 0.1, max: 170, noNaN: true });

describe('a pool', () => {
	it('doubles with the throw, and grows with the angle', () => {
		fc.assert(
			fc.property(metres, degrees, degrees, (d, a, b) => {
				expect(poolDiameter(2 * d, a)).toBeCloseTo(2 * poolDiameter(d, a), 6);
				const [narrow, wide] = a < b ? [a, b] : [b, a];
				expect(poolDiameter(d, narrow)).toBeLessThanOrEqual(poolDiameter(d, wide));
			}),
			{ numRuns: runs(100) },
		);
	});

	it.each([
		[0, 25, 'A throw in metres is more than 0; found 0.'],
		[Number.NaN, 25, 'A throw in metres is more than 0; found NaN.'],
		[10, 0, 'A beam angle in degrees is more than 0; found 0.'],
		[10, 180, 'A beam angle is less than 180 degrees; found 180.'],
	])('at %s m and %s degrees is refused', (d, a, sentence) => {
		expect(() => poolDiameter(d, a)).toThrow(InputError);
		expect(() => poolDiameter(d, a)).toThrow(sentence);
	});
});

describe('illuminance', () => {
	it('falls to a quarter at twice the distance, and rises in step with intensity', () => {
		fc.assert(
			fc.property(metres, fc.double({ min: 1, max: 1e6, noNaN: true }), (d, candela) => {
				expect(illuminance(candela, 2 * d) / illuminance(candela, d)).toBeCloseTo(0.25, 9);
				expect(illuminance(3 * candela, d) / illuminance(candela, d)).toBeCloseTo(3, 9);
			}),
			{ numRuns: runs(100) },
		);
	});

	it.each([
		[-1, 1, 0, 'candela'],
		[1, 0, 0, 'metres'],
		[1, 1, 91, 'incidence'],
	])('of %s cd at %s m and %s degrees is refused', (candela, d, incidence, path) => {
		try {
			illuminance(candela, d, incidence);
			expect.unreachable();
		} catch (error) {
			expect(error).toBeInstanceOf(InputError);
			expect(error).toMatchObject({ code: 'optics.range', path });
		}
	});
});
