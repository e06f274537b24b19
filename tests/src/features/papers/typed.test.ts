import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clockText } from '../../../../src/features/papers/learner/sitting.ts';
import { inOrder, moved, readTyped, toggled, typedText } from '../../../../src/features/papers/learner/typed.ts';
import { runs } from '../../../runs.ts';

test('a number typed as people do is read as it was meant', () => {
	fc.assert(
		fc.property(fc.integer({ min: 0, max: 65_535 }), fc.constantFrom(10 as const, 16 as const), (value, base) => {
			const text = typedText(value, base);
			const forms = base === 10 ? [text, ` ${text} `, `0${text}`] : [text, text.toLowerCase(), `0x${text}`, `${text}h`];
			for (const form of forms) expect(readTyped(form, base, 0, 65_535)).toEqual({ is: 'number', value });
			expect(readTyped(text, base, value + 1, value + 2)).toEqual({ is: 'wrong', why: 'range' });
		}),
		{ numRuns: runs(200) },
	);
});

test('whatever else is typed is told apart, and never a number out of range', () => {
	fc.assert(
		fc.property(fc.string(), fc.constantFrom(10 as const, 16 as const), (text, base) => {
			const read = readTyped(text, base, 1, 512);
			if (read.is === 'number') expect(read.value >= 1 && read.value <= 512).toBe(true);
			if (text.trim() === '') expect(read.is).toBe('nothing');
		}),
		{ numRuns: runs(300) },
	);
	for (const text of ['12.5', '-3', '1e3', '12 5', 'twelve', '50%', '99999999999999'])
		expect(readTyped(text, 10, 0, 255).is).toBe('wrong');
});

const list = fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { minLength: 1 });

test('a step up and the step down of its neighbour undo each other; at an end nothing moves', () => {
	fc.assert(
		fc.property(list, fc.nat(4), fc.constantFrom(-1 as const, 1 as const), (all, at, by) => {
			const next = moved(all, at, by);
			expect([...next].sort()).toEqual([...all].sort());
			if (next === all) expect(at + by < 0 || at + by >= all.length || at >= all.length).toBe(true);
			else expect(moved(next, at + by, -by as -1 | 1)).toEqual(all);
		}),
		{ numRuns: runs(100) },
	);
});

test('an order shows each option once, whatever the answer holds', () => {
	fc.assert(
		fc.property(list, fc.array(fc.constantFrom('a', 'b', 'c', 'zz')), (all, order) => {
			const shown = inOrder(
				all.map((id) => ({ id })),
				order,
			);
			expect(shown.map(({ id }) => id).sort()).toEqual([...all].sort());
		}),
		{ numRuns: runs(100) },
	);
	expect(toggled(['a', 'b', 'c'], ['c'], 'a')).toEqual(['a', 'c']);
	expect(toggled(['a', 'b', 'c'], ['a', 'c'], 'a')).toEqual(['c']);
});

test('time as a clock shows it', () => {
	expect([0, 9, 65, 600, 3720].map(clockText)).toEqual(['0:00', '0:09', '1:05', '10:00', '1:02:00']);
});
