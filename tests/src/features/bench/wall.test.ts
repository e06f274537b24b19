import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poolDiameter } from '../../../../shared/optics/index.ts';
import { presetSheet } from '../../../../src/features/bench/presets.ts';
import { falloff, POOL_EDGE, slantedPool, wallOf } from '../../../../src/features/bench/wall.ts';
import { between } from '../../../between.ts';
import { runs } from '../../../runs.ts';

describe('a pool on the wall', () => {
	it('square on is the round pool of the beam: 25 degrees at 10 m is 4.43 m across', () => {
		const { half, low, high } = slantedPool(10, 0, 25);
		expect(half).toBeCloseTo(poolDiameter(10, 25) / 2, 10);
		expect(2 * half).toBeCloseTo(4.4339, 4);
		expect(high).toBeCloseTo(half, 10);
		expect(low).toBeCloseTo(-half, 10);
	});

	it('at a slant is longer than it is wide, and finite whatever the angle', () => {
		fc.assert(
			fc.property(between(0.2, 100), between(-85, 85), between(1, 60), (away, up, angle) => {
				const { half, low, high } = slantedPool(away, up, angle);
				for (const metres of [half, low, high]) expect(Number.isFinite(metres)).toBe(true);
				expect(high).toBeGreaterThanOrEqual(low);
				if (Math.abs(up) + angle / 2 < 80) expect(high - low).toBeGreaterThanOrEqual(2 * half * 0.999);
			}),
		);
	});

	it('is one to a cell, in the order of the cells, brightest within itself', () => {
		const picture = wallOf(presetSheet('mixed'));
		expect(picture.lamps.map(({ pools }) => pools.length)).toEqual([1, 8, 1]);
		expect(picture.lamps.map(({ number, overhead }) => [number, overhead])).toEqual([
			[1, false],
			[2, true],
			[3, false],
		]);
		const bar = picture.lamps[1]?.pools ?? [];
		expect(bar.map(({ x }) => x)).toEqual([...bar.map(({ x }) => x)].sort((a, b) => a - b));
		expect((bar.at(-1)?.x ?? 0) - (bar[0]?.x ?? 0)).toBeCloseTo(1, 10);
		for (const { peak, y, ry, half } of picture.lamps.flatMap(({ pools }) => pools)) {
			expect(Math.abs(peak - y)).toBeLessThan(ry);
			expect(half).toBeGreaterThan(0);
			expect(half).toBeLessThan(1);
		}
	});
});

describe('a pool of light', () => {
	it('is half as bright at the beam’s edge, a tenth at the field’s, and falls smoothly past both', () => {
		fc.assert(
			fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), (half) => {
				expect(falloff(0, half)).toBe(1);
				expect(falloff(half, half)).toBeCloseTo(0.5, 10);
				expect(falloff(1, half)).toBeCloseTo(0.1, 10);
				let before = 1;
				for (let out = 0.05; out <= POOL_EDGE; out += 0.05) {
					const now = falloff(out, half);
					expect(now).toBeLessThanOrEqual(before);
					before = now;
				}
			}),
			{ numRuns: runs(100) },
		);
	});
});
