import { describe, expect, it } from 'vitest';
import {
	aimLux,
	illuminance,
	luxAside,
	peakCandela,
	poolDiameter,
	poolOnWall,
	uniformity,
} from '../../shared/optics/index.ts';

describe('illuminance: E = I cos θ / d² (CIE e-ILV 912, read)', () => {
	it.each([
		[10_000, 5, 0, 400],
		[10_000, 5, 60, 200],
	])('%i cd at %i m and %i degrees: %i lx', (candela, metres, degrees, lux) => {
		expect(illuminance(candela, metres, degrees)).toBeCloseTo(lux, 9);
	});

	it('is the inverse square and the cosine law in one (read: an illuminating society’s definitions, 9.1.2)', () => {
		for (const [candela, metres, degrees] of [
			[700, 2, 30],
			[50, 7, 45],
			[9000, 12, 80],
		] as const) {
			const said = (candela * Math.cos((degrees * Math.PI) / 180)) / metres ** 2;
			expect(illuminance(candela, metres, degrees)).toBeCloseTo(said, 9);
		}
	});

	it('inverse square: 100 cd gives 25 lx at 2 m, 11 lx at 3 m (read)', () => {
		expect(illuminance(100, 2)).toBe(25);
		expect(Math.round(illuminance(100, 3))).toBe(11);
	});

	// 10,000 cd and 5 m square to the wall (the case of CIE e-ILV 912, read): turned 60° the ray is 10 m long and meets the wall at 60°
	it.each([
		[0, 400],
		[45, 141.42],
		[60, 50],
		[70, 16],
	])('the same light turned %i degrees, 5 m square to the wall: the slanted ray by hand, %f lx', (tilt, lux) => {
		const ray = 5 / Math.cos((tilt * Math.PI) / 180);
		expect(aimLux(10_000, 5, tilt)).toBeCloseTo(lux, 1);
		expect(aimLux(10_000, 5, tilt)).toBeCloseTo(illuminance(10_000, ray, tilt), 9);
		// a source as strong to the side as ahead lights that place alike, turned to it or not
		const even = { peak: 10_000, beam: 179, field: 179 };
		expect(luxAside(even, 5, 5 * Math.tan((tilt * Math.PI) / 180))).toBeCloseTo(aimLux(10_000, 5, tilt), 6);
	});

	it('is 2 to 8.5 times less at 45 to 70 degrees than with the throw taken for the ray (recalculated)', () => {
		const times = (tilt: number) => illuminance(10_000, 5, tilt) / aimLux(10_000, 5, tilt);
		expect(times(45)).toBeCloseTo(2, 9);
		expect(times(70)).toBeCloseTo(8.55, 2);
		// as the lesson says: about a third is left at 45 degrees, an eighth at 60
		expect([45, 60].map((tilt) => aimLux(1, 1, tilt).toFixed(3))).toEqual(['0.354', '0.125']);
	});

	it('light that grazes a surface does not light it', () => {
		expect(aimLux(1000, 1, 90)).toBeCloseTo(0, 9);
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

describe('pool diameter, worked examples', () => {
	it('36° at 2 m: 1.30 m across, 1.33 m² (read: a calculator’s own example)', () => {
		const across = poolDiameter(2, 36);
		expect(across).toBeCloseTo(1.3, 2);
		expect(Math.PI * (across / 2) ** 2).toBeCloseTo(1.327, 3);
	});

	it('10° at 25 feet: 4.37 feet (read: a lamp dealer’s explanation)', () => {
		expect(poolDiameter(25, 10)).toBeCloseTo(4.37, 2);
	});
});

describe('a beam that meets a surface at an angle', () => {
	it('70° wide, level, 200 feet up: its lower half-power edge comes down after 286 feet (read: an antenna maker’s bulletin, 1998)', () => {
		const { near, far } = poolOnWall(200, 70, 90);
		expect(Math.round(near)).toBe(286);
		expect(far).toBe(Number.POSITIVE_INFINITY);
	});

	it('a cone of half angle 15° leaning 30°, cut at 1: from tan 15° to tan 45°, 0.7321 long (recalculated)', () => {
		const { near, far, long } = poolOnWall(1, 30, 30);
		expect([near, far, long].map((each) => each.toFixed(4))).toEqual(['0.2679', '1.0000', '0.7321']);
	});
});

describe('uniformity: least over mean (EN 12464-1, read in a planner’s guide that quotes it)', () => {
	it('0.6 at a mean of 300 lx means 180 lx at the darkest point (read)', () => {
		expect(uniformity([180, 420, 300])).toBeCloseTo(0.6, 12);
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
