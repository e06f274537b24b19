import { describe, expect, it } from 'vitest';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import { makeHunt } from '../../../../src/features/home/hunt.ts';

describe('the hunt on the home page', () => {
	const hunt = makeHunt();

	it('has one light dark, which its fix lights, and the others as they were', () => {
		const dark = hunt.lights.filter(({ colour }) => colour === null);
		expect(dark.map(({ id }) => id)).toEqual([hunt.dark]);
		for (const { colour, repaired } of hunt.lights) {
			expect(repaired).not.toBeNull();
			if (colour !== null) expect(colour).toBe(repaired);
		}
	});

	it('narrows with each look to what is left to try, and each answer is one that may be picked', () => {
		let left = hunt.causes;
		for (const { seen, answers, left: next } of hunt.looks) {
			expect(answers.map(({ id }) => id)).toContain(seen);
			expect(answers.length).toBeGreaterThan(1);
			expect(next).toBeLessThan(left);
			left = next;
		}
		expect(hunt.looks.length).toBeGreaterThan(0);
		expect(hunt.looks.length).toBeLessThanOrEqual(2);
		expect(left).toBeLessThanOrEqual(2);
	});

	it('says so where no fault of a rig is found by two drawn looks', () => {
		const sheet = bundledRig('four-in-line');
		expect(() => makeHunt({ ...sheet, fixtures: sheet.fixtures.slice(0, 2), cables: [], terminators: [] })).toThrow(
			RangeError,
		);
	});
});
