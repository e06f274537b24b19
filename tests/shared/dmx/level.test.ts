import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	formatLevel,
	fractionOf,
	hexOf,
	levelOfFraction,
	levelOfPercent,
	levelsShownAs,
	parseLevel,
	percentOf,
	type Rounding,
} from '../../../shared/dmx/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { saidBy, thrownBy } from '../thrown.ts';

const levels = Array.from({ length: 256 }, (_, level) => level);
const percents = Array.from({ length: 101 }, (_, percent) => percent);
const roundings: Rounding[] = ['half-up', 'truncate'];

/** Half-up rounding of a / b worked out in whole numbers of any size: no float can blur an edge. */
const halfUp = (a: bigint, b: bigint) => Number((2n * a + b) / (2n * b));

describe('level and percent', () => {
	test('agree with exact whole-number arithmetic at every level and every tenth of a percent', () => {
		for (const level of levels) {
			expect(percentOf(level)).toBe(halfUp(BigInt(level) * 100n, 255n));
			expect(percentOf(level, 'truncate')).toBe(Number((BigInt(level) * 100n) / 255n));
		}
		for (let tenths = 0; tenths <= 1000; tenths++) {
			expect(levelOfPercent(tenths / 10)).toBe(halfUp(BigInt(tenths) * 255n, 1000n));
			expect(levelOfPercent(tenths / 10, 'truncate')).toBe(Number((BigInt(tenths) * 255n) / 1000n));
		}
	});

	test('every whole percent comes back as itself', () => {
		expect(percents.map((percent) => percentOf(levelOfPercent(percent)))).toEqual(percents);
	});

	test('truncated, it does not: the mismatch a person sees between desk and display', () => {
		expect(levelOfPercent(50, 'truncate')).toBe(127);
		expect(percentOf(127, 'truncate')).toBe(49);
		expect(
			percents.filter((percent) => percentOf(levelOfPercent(percent, 'truncate'), 'truncate') !== percent),
		).toHaveLength(95);
	});

	test('the ends are the ends, and neither falls anywhere in between', () => {
		for (const rounding of roundings) {
			expect([levelOfPercent(0, rounding), levelOfPercent(100, rounding)]).toEqual([0, 255]);
			expect([percentOf(0, rounding), percentOf(255, rounding)]).toEqual([0, 100]);
			for (const level of levels.slice(1)) {
				expect(percentOf(level, rounding)).toBeGreaterThanOrEqual(percentOf(level - 1, rounding));
			}
		}
	});

	test('a half goes up: 10, 30, 50, 70 and 90 % are the only whole percents that fall on one', () => {
		expect(percents.filter((percent) => (percent * 255) % 100 === 50)).toEqual([10, 30, 50, 70, 90]);
		expect([10, 30, 50, 70, 90].map((percent) => levelOfPercent(percent))).toEqual([26, 77, 128, 179, 230]);
	});

	test('levelsShownAs gives each level to exactly one percent', () => {
		for (const rounding of roundings) {
			expect(percents.flatMap((percent) => levelsShownAs(percent, rounding))).toEqual(levels);
		}
		expect(levelsShownAs(50)).toEqual([127, 128]);
		expect(levelsShownAs(0)).toEqual([0, 1]);
		expect(levelsShownAs(100, 'truncate')).toEqual([255]);
	});

	test.each([-1, 256, 127.5, Number.NaN])('%s is no level', (level) => {
		const error = thrownBy(() => percentOf(level));
		expect([error.code, error.path]).toEqual(['level.range', 'level']);
		expect(errorText(error)).toBe(`A level is a whole number from 0 to 255; found ${level}.`);
	});

	test.each([-0.1, 100.1, Number.NaN])('%s is no percent', (percent) => {
		const error = thrownBy(() => levelOfPercent(percent));
		expect(errorText(error)).toBe(`A percent is a number from 0 to 100; found ${percent}.`);
	});

	test('levelsShownAs wants a whole percent', () => {
		expect(saidBy(() => levelsShownAs(12.5))).toBe('A shown percent is a whole number from 0 to 100; found 12.5.');
	});
});

describe('level and share of full', () => {
	test('every level comes back as itself', () => {
		expect(levels.map((level) => levelOfFraction(fractionOf(level)))).toEqual(levels);
	});

	test('the nearest level is never more than half a step away', () => {
		fc.assert(
			fc.property(between(0, 1), (fraction) => {
				expect(Math.abs(levelOfFraction(fraction) - fraction * 255)).toBeLessThanOrEqual(0.5);
			}),
			{ numRuns: runs(500) },
		);
	});

	test('refuses a share past full', () => {
		expect(saidBy(() => levelOfFraction(1.01))).toBe('A fraction is a number from 0 to 1; found 1.01.');
	});
});

describe('how a level is shown and read', () => {
	test('value and percent together', () => {
		expect([0, 1, 5, 128, 254, 255].map(formatLevel)).toEqual([
			'0 (0 %)',
			'1 (0 %)',
			'5 (2 %)',
			'128 (50 %)',
			'254 (100 %)',
			'255 (100 %)',
		]);
	});

	test('hexadecimal has two digits and capitals', () => {
		expect([0, 5, 16, 128, 171, 255].map(hexOf)).toEqual(['00', '05', '10', '80', 'AB', 'FF']);
	});

	test('reads back whatever it writes', () => {
		for (const level of levels) {
			for (const text of [`${level}`, formatLevel(level), `x${hexOf(level)}`, `0x${hexOf(level).toLowerCase()}`]) {
				expect(parseLevel(text)).toBe(level);
			}
		}
		for (const percent of percents) expect(parseLevel(`${percent} %`)).toBe(levelOfPercent(percent));
	});

	test.each([
		['128', 128],
		['  128 ', 128],
		['007', 7],
		['50%', 128],
		['50 %', 128],
		['12.5 %', 32],
		['12,5%', 32],
		['x80', 128],
		['0X80', 128],
		['#80', 128],
		['xf', 15],
		['Full', 255],
		['OUT', 0],
		['128 (50 %)', 128],
		['128(50%)', 128],
	])('reads %j as %i', (text, level) => {
		expect(parseLevel(text)).toBe(level);
	});

	test.each([
		['', 'level.text', 'Nothing was typed. Type a value such as 128, or a percent such as 50 %.'],
		['300', 'level.range', 'A level ends at 255, and "300" is past it. For a percent, put % after it.'],
		['x100', 'level.range', 'A level ends at 255, and "x100" is past it. For a percent, put % after it.'],
		['101 %', 'level.range', 'A percent ends at 100, and "101 %" is past it.'],
		['12.5', 'level.text', 'A level is a whole number, and "12.5" isn’t. For a percent, put % after it.'],
		['FF', 'level.text', '"ff" looks hexadecimal: put an x in front, as in x80.'],
		['-5', 'level.text', '"-5" is no level. Type 0 to 255, a percent such as 50 %, full or out.'],
		['1e2', 'level.text', '"1e2" looks hexadecimal: put an x in front, as in x80.'],
		['bright', 'level.text', '"bright" is no level. Type 0 to 255, a percent such as 50 %, full or out.'],
		['50 % 50 %', 'level.text', '"50 % 50 %" is no level. Type 0 to 255, a percent such as 50 %, full or out.'],
		['127 (49 %)', 'level.mismatch', '127 and 49 % don’t agree: it should read 127 (50 %).'],
	])('refuses %j in words', (text, code, sentence) => {
		const error = thrownBy(() => parseLevel(text));
		expect([error.code, errorText(error)]).toEqual([code, sentence]);
	});

	test('whatever is typed gives a level or an InputError of one short sentence', () => {
		const typed = fc.oneof(
			fc.string({ maxLength: 40, unit: 'binary' }),
			fc.string({ maxLength: 12, unit: fc.constantFrom(...'0123456789abcdefx#%.,() -') }),
			fc.constant('9'.repeat(4000)),
		);
		fc.assert(
			fc.property(typed, (text) => {
				try {
					const level = parseLevel(text);
					expect(Number.isInteger(level) && level >= 0 && level <= 255).toBe(true);
				} catch {
					const error = thrownBy(() => parseLevel(text));
					expect(error.code).toMatch(/^level\./);
					expect(errorText(error).length).toBeLessThan(140);
				}
			}),
			{ numRuns: runs(2000) },
		);
	});

	test('refuses what is no text at all', () => {
		const nothing: unknown = undefined;
		expect(saidBy(() => parseLevel(nothing as string))).toBe('A level is read from text; found nothing.');
	});
});
