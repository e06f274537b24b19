import { describe, expect, it } from 'vitest';
import { illuminance, peakCandela, poolDiameter } from '../../shared/optics/index.ts';

describe('illuminance: E = I cos θ / d² (CIE e-ILV 912, read)', () => {
	it.each([
		[10_000, 5, 0, 400],
		[10_000, 5, 60, 200],
	])('%i cd at %i m and %i degrees: %i lx', (candela, metres, degrees, lux) => {
		expect(illuminance(candela, metres, degrees)).toBeCloseTo(lux, 9);
	});

	it('inverse square: 100 cd gives 25 lx at 2 m, 11 lx at 3 m (read)', () => {
		expect(illuminance(100, 2)).toBe(25);
		expect(Math.round(illuminance(100, 3))).toBe(11);
	});

	it('light that grazes a surface does not light it', () => {
		expect(illuminance(1000, 1, 90)).toBeCloseTo(0, 9);
	});
});

describe('pool diameter: 2 d tan(θ / 2) (recalculated)', () => {
	it.each([
		[10, 25, 4.4339],
		[10, 14, 2.4557],
		[1, 90, 2],
	])('at %i m a beam of %i degrees is %f m across', (metres, degrees, across) => {
		expect(poolDiameter(metres, degrees)).toBeCloseTo(across, 4);
	});
});

describe('intensity of a beam from its lumens', () => {
	it('even over a hemisphere: Φ / 2π (definition of the candela and the steradian; recalculated)', () => {
		expect(peakCandela(1000, 179.999999, 1)).toBeCloseTo(1000 / (2 * Math.PI), 3);
	});

	it('even over a cone: Φ / 2π(1 − cos θ/2) (solid angle of a cone; recalculated)', () => {
		expect(peakCandela(1000, 60, 60)).toBeCloseTo(1187.96, 1);
	});

	it('a cosine emitter (Lambert; beam 120, field 168.5 degrees): Φ / π, within 4 % (recalculated)', () => {
		expect(Math.abs(peakCandela(1000, 120, 168.52) / (1000 / Math.PI) - 1)).toBeLessThan(0.04);
	});

	it('a narrow Gaussian beam: Φ ln 2 / (π h²), h half the beam angle in radians (recalculated)', () => {
		const half = (5 * Math.PI) / 180 / 2;
		// a Gaussian is at a tenth at √log₂10 times its half-peak angle
		const ours = peakCandela(1000, 5, 5 * Math.sqrt(Math.log2(10)));
		expect(ours / ((1000 * Math.LN2) / (Math.PI * half ** 2))).toBeCloseTo(1, 3);
	});

	it('beam at half, field at a tenth of the peak (read): wider field, weaker beam', () => {
		expect(peakCandela(1000, 25, 45)).toBeLessThan(peakCandela(1000, 25, 35));
	});
});
