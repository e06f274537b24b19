import { describe, expect, it } from 'vitest';
import { inBytes, readDmxValue } from '../../shared/gdtf/index.ts';

/** What a DMX value of a file is in a channel of so many bytes. */
const valueIn = (text: string, bytes: number): number | null => {
	const value = readDmxValue(text);
	return value && inBytes(value, bytes);
};

const BYTES = [1, 2, 3, 4];

// 40 conversions: two are the standard's own words (DIN SPEC 15800, table 1, read), the others are published with another reader's
// tests (the one whose layout files stand in data/gdtf)
const rows: readonly (readonly [text: string, bytes: number, value: number])[] = [
	...BYTES.flatMap((from) => BYTES.map((to) => [`0/${from}`, to, 0] as const)),
	...BYTES.map((bytes) => [`1/${bytes}`, bytes, 1] as const),
	['255/1', 1, 255],
	['65535/2', 2, 65_535],
	['16777215/3', 3, 16_777_215],
	['4294967295/4', 4, 4_294_967_295],
	// the standard's
	['255/1', 2, 65_535],
	['255/1s', 2, 65_280],
	['3419130827/4', 3, 13_355_979],
	['3419130827/4', 2, 52_171],
	['3419130827/4', 1, 203],
	['3419130827/4s', 3, 13_355_979],
	['3419130827/4s', 2, 52_171],
	['3419130827/4s', 1, 203],
	['42/1', 2, 10_794],
	['42/1', 3, 2_763_306],
	['42/1', 4, 707_406_378],
	['42423/2', 3, 10_860_453],
	['42423/2', 4, 2_780_276_151],
	['234/1s', 2, 59_904],
	['234/1s', 3, 15_335_424],
	['234/1s', 4, 3_925_868_544],
];

describe('DMX values', () => {
	it('are 40', () => {
		expect(rows).toHaveLength(40);
	});

	it.each(rows)('%s in %i bytes is %i', (text, bytes, value) => {
		expect(valueIn(text, bytes)).toBe(value);
	});

	it.each(['', '1', '256/1', '1/0', '1/5', '-1/1', '1.5/1', '1/1x', '1/1/1', '65536/2s', ' 1/1'])(
		'%j is none',
		(text) => {
			expect(readDmxValue(text)).toBeNull();
		},
	);
});
