import { expect, test } from 'vitest';
import { readNumber } from '../../../src/ui/readNumber.ts';

test.each<[string, number]>([
	['1500', 1500],
	[' 12 ', 12],
	['2,5', 2.5],
	['2.25', 2.25],
	['.5', 0.5],
	['0,125', 0.125],
	['0.1255', 0.1255],
])('%s is read as %d', (text, value) => {
	expect(readNumber(text, 0, 5000)).toBe(value);
});

test.each(['1,500', '1.500', '12,000', '1,000,000', '1.000.000'])(
	'%s could be two numbers, and is refused as such within any bounds',
	(text) => {
		for (const most of [2, 2000, 2e9]) expect(readNumber(text, 0, most)).toBe('grouped');
		expect(readNumber(text, 0, 2e9, true)).toBe('grouped');
	},
);

test.each(['', ' ', '1e3', '0x10', '-1', '5001', '1 500', 'many', '1,2,3', '1.2.3', '.', 'NaN', 'Infinity'])(
	'%j is no number here',
	(text) => {
		expect(readNumber(text, 0, 5000)).toBe('none');
	},
);

test('a fraction is none where a whole number is asked', () => {
	expect([readNumber('1.5', 1, 512, true), readNumber('2.0', 1, 512, true)]).toEqual(['none', 2]);
});
