import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { BUNDLED } from '../../../shared/profile/index.ts';
import * as whole from '../../../sim/light/index.ts';
import { leanColour } from '../../../src/slim/index.ts';
import { runs } from '../../runs.ts';
import { leanDoor } from './lean.ts';

let lean: typeof whole;

beforeAll(async () => {
	lean = await leanDoor('sim/light/index.ts', leanColour());
});

it('shows and names every light as the whole colour library does', () => {
	fc.assert(
		fc.property(
			fc.constantFrom(...BUNDLED),
			fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
			(profile, levels) => {
				expect(lean.cellLight(profile, levels)).toEqual(whole.cellLight(profile, levels));
			},
		),
		{ numRuns: runs(500) },
	);
});

it('holds back the same colours', () => {
	fc.assert(
		fc.property(fc.array(fc.integer({ min: 0, max: 0xffffff }), { minLength: 2, maxLength: 30 }), (colours) => {
			const hex = colours.map((colour) => `#${colour.toString(16).padStart(6, '0')}`);
			let mine = lean.watchFlashes(hex[0] ?? '');
			let theirs = whole.watchFlashes(hex[0] ?? '');
			for (const [i, colour] of hex.entries()) {
				mine = lean.limitFlashes(mine, i * 90, colour);
				theirs = whole.limitFlashes(theirs, i * 90, colour);
			}
			expect(mine).toEqual(theirs);
		}),
		{ numRuns: runs(100) },
	);
});
