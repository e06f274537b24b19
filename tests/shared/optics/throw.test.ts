import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { illuminance, poolDiameter, poolOnWall } from '../../../shared/optics/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { saidBy } from '../thrown.ts';

const metres = between(0.01, 1000);
const degrees = between(0.1, 170);

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
		expect(saidBy(() => poolDiameter(d, a))).toContain(sentence);
	});
});

describe('a pool at an angle', () => {
	const tilts = between(0, 89);

	it('is an ellipse whose edge lies on the cone', () => {
		fc.assert(
			fc.property(metres, degrees, tilts, between(0, 2 * Math.PI), (d, beam, tilt, turn) => {
				fc.pre(tilt + beam / 2 < 88);
				const { near, far, long, wide } = poolOnWall(d, beam, tilt);
				const [x, y] = [(near + far) / 2 + (long / 2) * Math.cos(turn), (wide / 2) * Math.sin(turn)];
				const lean = (tilt * Math.PI) / 180;
				// the angle between the axis and the ray to that point
				const cosine = (x * Math.sin(lean) + d * Math.cos(lean)) / Math.hypot(x, y, d);
				expect(cosine).toBeCloseTo(Math.cos((beam * Math.PI) / 360), 9);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('square on is a circle about the foot of the throw', () => {
		fc.assert(
			fc.property(metres, degrees, (d, beam) => {
				const across = poolDiameter(d, beam);
				const { near, far, aim, long, wide } = poolOnWall(d, beam, 0);
				expect(aim).toBe(0);
				for (const each of [2 * far, -2 * near, long, wide]) expect(each / across).toBeCloseTo(1, 9);
			}),
			{ numRuns: runs(50) },
		);
	});

	it('that runs along the wall has no far edge', () => {
		const { near, far, long, wide, aim } = poolOnWall(2, 40, 75);
		expect([far, long, wide]).toEqual([Infinity, Infinity, Infinity]);
		expect(near).toBeCloseTo(2 * Math.tan((55 * Math.PI) / 180), 9);
		expect(aim).toBeCloseTo(2 * Math.tan((75 * Math.PI) / 180), 9);
	});

	// the far edge lies along the wall, to the last digit: half the beam and the tilt are a right angle
	it.each([
		[40, 70],
		[20, 80],
		[60, 60],
		[90, 45],
		[25, 77.5],
	])('of %s degrees at %s just runs along the wall, and has no far edge', (beam, tilt) => {
		const { far, long, wide, aim } = poolOnWall(3, beam, tilt);
		expect([far, long, wide]).toEqual([Infinity, Infinity, Infinity]);
		expect(aim).toBeCloseTo(3 * Math.tan((tilt * Math.PI) / 180), 9);
		expect(poolOnWall(3, beam, tilt - 0.01).far).toBeLessThan(1e6);
		expect(poolOnWall(3, beam, 90).aim).toBe(Infinity);
	});

	it.each([
		[0, 25, 0, 'metres'],
		[1, 180, 0, 'degrees'],
		[1, 25, 91, 'tilt'],
		[1, 25, -1, 'tilt'],
	])('of %s m, %s and %s degrees is refused', (d, beam, tilt, path) => {
		try {
			poolOnWall(d, beam, tilt);
			expect.unreachable();
		} catch (error) {
			expect(error).toMatchObject({ code: 'optics.range', path });
		}
	});
});

describe('illuminance', () => {
	it('falls to a quarter at twice the distance, and rises in step with intensity', () => {
		fc.assert(
			fc.property(metres, between(1, 1e6), (d, candela) => {
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
