import { describe, expect, test } from 'vitest';
import {
	backToBack,
	formatLevel,
	hexOf,
	howManyFit,
	joinWord,
	levelOfPercent,
	nextFreeAddress,
	runsPast,
	slotsPast,
	TOP_WORD,
} from '../../shared/dmx/index.ts';

// Levels, percent and footprints against figures that others have printed.

describe('percent and level', () => {
	// read: a chart of timing values in a controller's manual, percent and level side by side
	const chart: [percent: number, level: number][] = [
		[77, 196],
		[78, 199],
		[79, 201],
		[80, 204],
		[81, 206],
		[82, 209],
		[83, 211],
		[84, 214],
		[85, 216],
		[86, 219],
		[87, 221],
		[88, 224],
		[89, 226],
		[90, 229],
		[91, 232],
		[92, 234],
		[93, 237],
		[94, 239],
		[95, 242],
		[96, 245],
		[97, 247],
		[98, 250],
		[99, 252],
		[100, 255],
	];

	test('each row of a printed chart is one of the two roundings (read: a controller’s manual)', () => {
		for (const [percent, level] of chart) {
			expect([levelOfPercent(percent, 'truncate'), levelOfPercent(percent)]).toContain(level);
		}
	});

	test('that chart mixes them, so a chart and a desk may well differ by one (read: the same chart)', () => {
		const decided = chart.filter(([percent]) => levelOfPercent(percent) !== levelOfPercent(percent, 'truncate'));
		const up = decided.filter(([percent, level]) => level === levelOfPercent(percent));
		expect(up.length).toBeGreaterThan(0);
		expect(up.length).toBeLessThan(decided.length);
	});

	test('half is 128, 50 %, 80 hexadecimal (common practice, no source)', () => {
		expect(levelOfPercent(50)).toBe(128);
		expect(formatLevel(128)).toBe('128 (50 %)');
		expect(hexOf(128)).toBe('80');
	});

	test('two slots together reach 65535, coarse first (common practice, no source)', () => {
		expect(joinWord(255, 255)).toBe(TOP_WORD);
		expect(joinWord(128, 0)).toBe(32768);
	});
});

describe('footprints', () => {
	test('48 slots from 501: the last 36 reach nobody (read: a page on start addresses)', () => {
		expect(slotsPast(501, 48)).toBe(36);
		expect(runsPast(501, 48)).toBe(true);
	});

	test('170 fixtures of red, green and blue fill a universe (read: a microcontroller project’s notes)', () => {
		expect(howManyFit(3)).toBe(170);
	});

	test('85 fixtures of six slots fill a universe, two slots left over (recalculated)', () => {
		expect(howManyFit(6)).toBe(85);
		const full = [{ universe: 1, start: 1, footprint: 85 * 6 }];
		expect([nextFreeAddress(full, 2), nextFreeAddress(full, 3)]).toEqual([511, null]);
	});

	test('units of footprint 3 and 4 back to back at 1, 4, 7, 10 and 1, 5, 9, 13 (read: a maker’s manual)', () => {
		expect(backToBack(1, [3, 3, 3, 3]).starts).toEqual([1, 4, 7, 10]);
		expect(backToBack(1, [4, 4, 4, 4]).starts).toEqual([1, 5, 9, 13]);
	});
});
