import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	formatWord,
	fractionOf,
	fractionOfWord,
	joinWord,
	percentOfWord,
	splitWord,
	widenLevel,
	wordOfFraction,
	wordOfPercent,
} from '../../../shared/dmx/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';

const words = Array.from({ length: 65536 }, (_, word) => word);

describe('coarse and fine', () => {
	test('every 16-bit value splits into two levels and joins to itself', () => {
		for (const word of words) {
			const { coarse, fine } = splitWord(word);
			if (coarse > 255 || fine > 255 || joinWord(coarse, fine) !== word) expect.fail(`${word}: ${coarse}, ${fine}`);
		}
		expect(splitWord(32768)).toEqual({ coarse: 128, fine: 0 });
		expect(splitWord(511)).toEqual({ coarse: 1, fine: 255 });
	});

	test('one step of coarse is 256 of fine', () => {
		expect(joinWord(1, 0) - joinWord(0, 0)).toBe(256);
		expect(joinWord(1, 0) - joinWord(0, 255)).toBe(1);
	});

	test('a level widened is the same share of full', () => {
		for (let level = 0; level < 256; level++) {
			expect(fractionOfWord(widenLevel(level))).toBeCloseTo(fractionOf(level), 14);
			expect(splitWord(widenLevel(level))).toEqual({ coarse: level, fine: level });
		}
	});

	test('says which of the two is no level', () => {
		expect(thrownBy(() => joinWord(256, 0)).path).toBe('coarse');
		expect(thrownBy(() => joinWord(0, -1)).path).toBe('fine');
	});

	test.each([-1, 65536, 0.5, Number.NaN])('%s is no 16-bit value', (word) => {
		const error = thrownBy(() => splitWord(word));
		expect([error.code, errorText(error)]).toEqual([
			'word.range',
			`A 16-bit value is a whole number from 0 to 65535; found ${word}.`,
		]);
	});
});

describe('percent and share of full', () => {
	test('every percent of two decimals comes back as itself', () => {
		for (let hundredths = 0; hundredths <= 10_000; hundredths++) {
			expect(percentOfWord(wordOfPercent(hundredths / 100))).toBe(hundredths / 100);
		}
	});

	test('every 16-bit value comes back from its share of full', () => {
		for (const word of words) if (wordOfFraction(fractionOfWord(word)) !== word) expect.fail(`${word}`);
	});

	test('percent is within half a hundredth of the exact', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 65535 }), (word) => {
				expect(Math.abs(percentOfWord(word) - (word / 65535) * 100)).toBeLessThanOrEqual(0.005 + 1e-9);
			}),
			{ numRuns: runs(500) },
		);
	});

	test('a half goes up: 10 % is 6553.5, so 6554', () => {
		expect([10, 30, 50, 70, 90].map(wordOfPercent)).toEqual([6554, 19661, 32768, 45875, 58982]);
	});

	test('shown with value and percent together', () => {
		expect([0, 1, 32768, 65535].map(formatWord)).toEqual([
			'0 (0.00 %)',
			'1 (0.00 %)',
			'32768 (50.00 %)',
			'65535 (100.00 %)',
		]);
	});

	test('refuses a percent past 100', () => {
		expect(thrownBy(() => wordOfPercent(101)).code).toBe('percent.range');
	});
});
