import { describe, expect, test } from 'vitest';
import { requireNumber, requireWhole, shown } from '../../../shared/error/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { saidBy, thrownBy } from '../thrown.ts';

const limits = { lo: 1, hi: 9, code: 'level.range', path: 'things[2]', of: 'level' } as const;

describe('requireWhole', () => {
	test('hands back a whole number within its limits, both included', () => {
		expect([1, 5, 9].map((n) => requireWhole(n, limits))).toEqual([1, 5, 9]);
	});

	test.each([0, 10, 2.5, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s with code, path and sentence', (n) => {
		const error = thrownBy(() => requireWhole(n, limits));
		expect([error.code, error.path]).toEqual(['level.range', 'things[2]']);
		expect(error.facts).toEqual({ expected: 'whole', of: 'level', lo: 1, hi: 9, found: `${n}` });
		expect(errorText(error)).toBe(`A level is a whole number from 1 to 9; found ${n}.`);
	});

	test('refuses text that looks like a number', () => {
		const text: unknown = '5';
		expect(saidBy(() => requireWhole(text as number, limits))).toContain('found "5"');
	});
});

describe('requireNumber', () => {
	test('takes fractions', () => {
		expect(requireNumber(2.5, limits)).toBe(2.5);
	});

	test.each([0.99, 9.01, Number.NaN])('refuses %s', (n) => {
		const error = thrownBy(() => requireNumber(n, limits));
		expect(error.facts).toEqual({ expected: 'number', of: 'level', lo: 1, hi: 9, found: `${n}` });
		expect(errorText(error)).toBe(`A level is a number from 1 to 9; found ${n}.`);
	});

	test('refuses text, which would otherwise compare as a number', () => {
		const text: unknown = '5';
		expect(thrownBy(() => requireNumber(text as number, limits)).code).toBe('level.range');
	});
});

test('what was found is shown short and plainly', () => {
	expect(shown('out')).toBe('"out"');
	expect(shown('x'.repeat(24))).toBe(`"${'x'.repeat(24)}"`);
	expect(shown(`${'x'.repeat(24)}y`)).toBe(`"${'x'.repeat(24)}…"`);
	expect(shown('x'.repeat(5000))).toBe(`"${'x'.repeat(24)}…"`);
	expect([7, true, null, undefined].map(shown)).toEqual(['7', 'true', 'null', 'undefined']);
	expect([[1], {}, shown].map(shown)).toEqual(['[…]', '{…}', 'function']);
});
