import fc from 'fast-check';
import { expect, it } from 'vitest';
import { endOfJson, LINK_BOUNDS, readJson } from '../../../src/storage/index.ts';
import { runs } from '../../runs.ts';

it('reads what JSON reads, where it is an object or a list within its bounds', () => {
	fc.assert(
		fc.property(fc.oneof(fc.object(), fc.array(fc.jsonValue())), fc.constantFrom('', ' ', '\n\t'), (value, space) => {
			const text = `${space}${JSON.stringify(value)}${space}`;
			expect(readJson(text)).toEqual({ value: JSON.parse(text) });
		}),
		{ numRuns: runs(200) },
	);
});

it('never throws, and never reads what JSON would not', () => {
	fc.assert(
		fc.property(
			fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom('[', ']', '{', '}', '"', '\\', ',', '1', ' ') })),
			(text) => {
				const found = readJson(text);
				if (typeof found !== 'string') expect(found.value).toEqual(JSON.parse(text));
			},
		),
		{ numRuns: runs(500) },
	);
});

// 2.5 million empty entries in a link of 10 kB were parsed and held to the schema one by one, and the page froze
it('counts on the text: what is too much is told before anything is made of it', () => {
	const held = { ...LINK_BOUNDS, things: 100, deep: 5, characters: 1000 };
	expect(readJson(`[${'{},'.repeat(60)}{}]`, held)).toBe('many');
	expect(readJson(`[${'1,'.repeat(98)}1]`, held)).toEqual({ value: Array.from({ length: 99 }, () => 1) });
	expect(readJson(`[${'1,'.repeat(101)}1]`, held)).toBe('many');
	expect(readJson('[[[[[1]]]]]', held)).toEqual({ value: [[[[[1]]]]] });
	expect(readJson('[[[[[[1]]]]]]', held)).toBe('deep');
	expect(readJson(`["${'x'.repeat(1000)}"]`, held)).toBe('long');
	expect(readJson(`[${'['.repeat(2_000_000)}`)).toBe('deep');
	// what stands in quotes is text
	expect(readJson(`["${'[{,'.repeat(90)}"]`, held)).toEqual({ value: ['[{,'.repeat(90)] });
	expect(endOfJson('x[1, "]"] more', 1, held)).toBe(9);
	expect(endOfJson('[1, "]', 0, held)).toBeNull();
});
