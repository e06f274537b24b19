import { expect, test } from 'vitest';
import { InputError, isInputError, messageOf } from '../../../shared/error/index.ts';

const facts = { expected: 'whole', of: 'level', lo: 0, hi: 255, found: '300' } as const;

test('an InputError carries its code, its path and its facts, and survives JSON', () => {
	const error = new InputError('level.range', 'slots[3]', facts);
	expect(error).toBeInstanceOf(Error);
	expect(error.name).toBe('InputError');
	expect(error.code).toBe('level.range');
	expect(error.path).toBe('slots[3]');
	expect(error.facts).toEqual(facts);
	expect(JSON.parse(JSON.stringify(error))).toMatchObject({ code: 'level.range', path: 'slots[3]', facts });
});

test('isInputError tells it from any other thrown thing', () => {
	expect(isInputError(new InputError('level.range', '', facts))).toBe(true);
	expect(isInputError(new RangeError('b'))).toBe(false);
	expect(isInputError({ name: 'InputError', code: 'level.range', path: '', facts })).toBe(false);
	expect(isInputError(undefined)).toBe(false);
});

test('its message names place, expectation, finding and every other fact, for programs and logs', () => {
	const said = (error: InputError) => String(error);
	expect(said(new InputError('level.range', 'slots[3]', facts))).toBe(
		'InputError: At slots[3]: expected a whole number from 0 to 255, found 300 (of level).',
	);
	const of = (expected: object) => new InputError('level.range', '', { ...facts, of: 'level', ...expected } as never);
	expect(said(of({ expected: 'number', lo: 0, hi: 1, found: '2' }))).toBe(
		'InputError: Expected a number from 0 to 1, found 2 (of level).',
	);
	for (const [expected, more, text] of [
		['over-0', {}, 'a number over 0'],
		['from-0', {}, 'a number of 0 or more'],
		['below', { limit: 180 }, 'less than 180'],
		['length', { length: 9 }, 'a length of 9'],
		['one-of', { known: ['a', 'b'] }, 'one of a, b'],
		['no-such_thing', {}, 'no such thing'],
	] as const)
		expect(messageOf('level.range', 'x', { expected, ...more, found: '-1', of: 'level' })).toBe(
			`At x: expected ${text}, found -1 (of level).`,
		);
	// a rule with nothing to hold it to; and limits that no expectation told stand with the rest
	expect(messageOf('sheet.shape', '', { expected: 'shape', rule: 'strict_object', limit: null, known: [] })).toBe(
		'Expected strict object.',
	);
	expect(messageOf('sheet.shape', '', { trouble: 'too-long', limit: 3, lo: 1, known: ['a', 'b'] })).toBe(
		'Too long (limit 3; lo 1; known a, b).',
	);
	expect(messageOf('a.b-c', 'x', { name: 'y', on: true })).toBe('At x: a: b c (name y; on true).');
	expect(said(new InputError('quick.linked', '', { expected: 'one-of', known: ['desk', 'alone'] }))).toBe(
		'InputError: Expected one of desk, alone.',
	);
	expect(said(new InputError('sheet.mains', 'fixtures[0].plug', { trouble: 'no-link-socket', name: 'wash 1' }))).toBe(
		'InputError: At fixtures[0].plug: no link socket (name wash 1).',
	);
	expect(said(new InputError('camera.refused', '', {}))).toBe('InputError: Camera: refused.');
	const shape = { expected: 'shape', known: [], limit: 3, found: '1' } as const;
	expect(said(new InputError('sheet.shape', 'hall.width', { ...shape, rule: 'min_value' }))).toBe(
		'InputError: At hall.width: expected min value 3, found 1.',
	);
	expect(said(new InputError('sheet.shape', '', { ...shape, rule: 'one-of', known: ['"a"', '"b"'] }))).toBe(
		'InputError: Expected one of "a", "b", found 1.',
	);
});

test('seen from further out its path is longer, and the rest the same', () => {
	const path = (at: string, place: string) => new InputError('level.range', at, facts).within(place).path;
	expect(path('level', 'slots[3]')).toBe('slots[3].level');
	expect(path('[2].level', 'slots')).toBe('slots[2].level');
	expect(path('', 'slots[3]')).toBe('slots[3]');
	expect(path('level', '')).toBe('level');
	const { code, facts: same } = new InputError('level.range', '', facts).within('slots[3]');
	expect({ code, facts: same }).toEqual({ code: 'level.range', facts });
});
