import { converter, formatHex, toGamut } from 'culori';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hexOf, hueOf, intoGamut } from '../../../sim/light/colour.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';

// The colour library has the same way into a gamut, written for any spaces: the source of what is expected here (recalculated).
const theirs = toGamut('rgb', 'oklch', undefined, 0.08);
const toLinear = converter('lrgb');
const toOklch = converter('oklch');

const channel = between(-0.7, 1.5);
const colour = fc.record({ r: channel, g: channel, b: channel });

const bytesOf = (hex: string): number[] => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

it('brings every colour into the gamut as the colour library does, to a step of 255', () => {
	fc.assert(
		fc.property(colour, (wild) => {
			const mine = bytesOf(hexOf(intoGamut(wild)));
			const expected = bytesOf(formatHex(theirs({ mode: 'lrgb', ...wild })));
			for (const [i, byte] of mine.entries()) expect(Math.abs(byte - (expected[i] ?? 0))).toBeLessThanOrEqual(1);
		}),
		{ numRuns: runs(2000) },
	);
});

it('never leaves the gamut', () => {
	fc.assert(
		fc.property(colour, (wild) => {
			for (const value of Object.values(intoGamut(wild))) {
				expect(value).toBeGreaterThanOrEqual(0);
				expect(value).toBeLessThanOrEqual(1);
			}
		}),
		{ numRuns: runs(2000) },
	);
});

it('leaves alone what lies inside', () => {
	const inside = between(0.01, 0.99);
	fc.assert(
		fc.property(fc.record({ r: inside, g: inside, b: inside }), (tame) => {
			expect(intoGamut(tame)).toEqual(tame);
			expect(hexOf(tame)).toBe(formatHex({ mode: 'lrgb', ...tame }));
		}),
		{ numRuns: runs(500) },
	);
});

it('tells a hue as the colour library does, and 0 of greys', () => {
	fc.assert(
		fc.property(colour, (wild) => {
			const mine = intoGamut(wild);
			const { c, h = 0 } = toOklch(toLinear({ mode: 'lrgb', ...mine }));
			fc.pre(c > 1e-4);
			const turn = Math.abs(hueOf(mine) - h);
			expect(Math.min(turn, 360 - turn)).toBeLessThan(0.01);
		}),
		{ numRuns: runs(1000) },
	);
	expect(hueOf({ r: 1, g: 1, b: 1 })).toBe(0);
	expect(hueOf({ r: 0.2, g: 0.2, b: 0.2 })).toBe(0);
});
