import { describe, expect, test } from 'vitest';
import { requireNumber, requireWhole, shown } from '../../../shared/error/index.ts';
import { thrownBy } from '../thrown.ts';

const limits = { lo: 1, hi: 9, code: 'thing.range', path: 'things[2]', what: 'A thing' };

describe('requireWhole', () => {
	test('hands back a whole number within its limits, both included', () => {
		expect([1, 5, 9].map((n) => requireWhole(n, limits))).toEqual([1, 5, 9]);
	});

	test.each([0, 10, 2.5, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s with code, path and sentence', (n) => {
		const error = thrownBy(() => requireWhole(n, limits));
		expect([error.code, error.path]).toEqual(['thing.range', 'things[2]']);
		expect(error.message).toBe(`A thing is a whole number from 1 to 9; found ${n}.`);
	});

	test('refuses text that looks like a number', () => {
		const text: unknown = '5';
		expect(thrownBy(() => requireWhole(text as number, limits)).message).toContain('found "5"');
	});
});

describe('requireNumber', () => {
	test('takes fractions', () => {
		expect(requireNumber(2.5, limits)).toBe(2.5);
	});

	test.each([0.99, 9.01, Number.NaN])('refuses %s', (n) => {
		const error = thrownBy(() => requireNumber(n, limits));
		expect(error.message).toBe(`A thing is a number from 1 to 9; found ${n}.`);
	});

	test('refuses text, which would otherwise compare as a number', () => {
		const text: unknown = '5';
		expect(thrownBy(() => requireNumber(text as number, limits)).code).toBe('thing.range');
	});
});

test('what was found is shown short and plainly', () => {
	expect(shown('out')).toBe('"out"');
	expect(shown('x'.repeat(5000))).toBe(`"${'x'.repeat(24)}…"`);
	expect([7, true, null, undefined].map(shown)).toEqual(['7', 'true', 'null', 'undefined']);
	expect([[1], {}, shown].map(shown)).toEqual(['a list', 'something of type object', 'something of type function']);
});
