import { expect, test } from 'vitest';
import { InputError, isInputError } from '../../../shared/error/index.ts';

test('an InputError carries its code, its path and its sentence', () => {
	const error = new InputError('level.range', 'slots[3]', 'A level is 0 to 255; this one is 300.');
	expect(error).toBeInstanceOf(Error);
	expect(error.name).toBe('InputError');
	expect(error.code).toBe('level.range');
	expect(error.path).toBe('slots[3]');
	expect(error.message).toBe('A level is 0 to 255; this one is 300.');
	expect(String(error)).toBe('InputError: A level is 0 to 255; this one is 300.');
});

test('isInputError tells it from any other thrown thing', () => {
	expect(isInputError(new InputError('a', '', 'b'))).toBe(true);
	expect(isInputError(new RangeError('b'))).toBe(false);
	expect(isInputError({ name: 'InputError', code: 'a', path: '', message: 'b' })).toBe(false);
	expect(isInputError(undefined)).toBe(false);
});
