import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { errorText } from '../../../src/wording/error.ts';
import { asked, fill, sentence } from '../../../src/wording/fill.ts';
import { listed, numbersText, plainKinds } from '../../../src/wording/kinds.ts';
import { thrownBy } from '../../shared/thrown.ts';

describe('a template', () => {
	it('takes facts, kinds and counts', () => {
		const kinds = { loud: (text: string) => text.toUpperCase() };
		expect(fill('{a}, {a as loud}, {n?one|many}, {list?thing|things}', { a: 'x', n: 1, list: [1, 2] }, kinds)).toBe(
			'x, X, one, things',
		);
	});

	it.each([null, false, 0, '', []])('leaves a part out whose fact is %j', (empty) => {
		expect(fill('so[, at {a}[ and {b}].', { a: empty, b: 1 })).not.toContain('at');
		expect(fill('so[, at {a} of {b}].', { a: empty, b: 1 })).toBe('so.');
		expect(fill('so[, at {a} of {b}].', { a: 2, b: 1 })).toBe('so, at 2 of 1.');
	});

	it('says the first wording that fits the facts', () => {
		const says = [{ when: { a: 1, b: null }, says: 'first' }, { when: { a: 1 }, says: 'second' }, { says: 'third' }];
		expect(fill(says, { a: 1, b: null })).toBe('first');
		expect(fill(says, { a: 1, b: 2 })).toBe('second');
		expect(fill(says, { a: 2, b: null })).toBe('third');
	});

	it('gives a capital to a fact that opens a sentence, and only there', () => {
		expect(sentence('{a} and {a}. {a}[ {a}.]', { a: 'wash' })).toBe('Wash and wash. Wash wash.');
		expect(sentence('[{a}] went', { a: 'wash' })).toBe('Wash went');
		expect(fill('{a} went', { a: 'wash' })).toBe('wash went');
	});

	it('never reads what it has put in: a name may hold any sign', () => {
		fc.assert(
			fc.property(fc.string({ minLength: 1 }), (name) => {
				expect(fill('<{name}>[<{name}>]', { name })).toBe(`<${name}><${name}>`);
			}),
		);
		expect(fill('{name}', { name: '{other} [x]' })).toBe('{other} [x]');
	});

	it('refuses to guess at a fact or a kind that is not there', () => {
		const fact = thrownBy(() => fill('{slot}', { level: 3 }));
		expect(fact).toBeInstanceOf(InputError);
		expect(fact).toMatchObject({ code: 'words.fact', path: 'slot' });
		expect(errorText(fact)).toContain("asks for the fact 'slot'. There is level.");
		expect(thrownBy(() => fill([{ when: { slot: 1 }, says: 'x' }], {}))).toMatchObject({ code: 'words.fact' });
		expect(thrownBy(() => fill('{slot as shape}', { slot: 3 }))).toMatchObject({ code: 'words.kind', path: 'slot' });
	});

	it('tells what it may ask for, over all its wordings', () => {
		expect(asked([{ when: { a: 1 }, says: '{b as level}' }, { says: '[ {c?one|more}] {d}' }])).toEqual({
			facts: ['b', 'c', 'd', 'a'],
			kinds: ['level'],
		});
	});
});

describe('lists and numbers', () => {
	it('strings things together, with semicolons where one has a comma in it', () => {
		expect(listed([])).toBe('');
		expect(listed(['a'])).toBe('a');
		expect(listed(['a', 'b'])).toBe('a and b');
		expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
		expect(listed(['a, in', 'b', 'c'])).toBe('a, in; b and c');
	});

	it('cuts a long list short and says how many it left out', () => {
		fc.assert(
			fc.property(fc.integer({ min: 7, max: 99 }), (count) => {
				const text = listed(Array.from({ length: count }, (_, i) => `c${i}`));
				expect(text).toBe(`c0, c1, c2, c3, c4 and ${count - 5} more`);
			}),
		);
	});

	it('draws runs of numbers together, in any order', () => {
		expect(numbersText([4, 1, 2, 3, 9])).toBe('1 to 4 and 9');
		expect(numbersText([7, 8])).toBe('7 and 8');
		expect(numbersText([5])).toBe('5');
		expect(numbersText([1, 3, 5])).toBe('1, 3 and 5');
	});

	it('words amounts with their units', () => {
		expect(plainKinds.level(128)).toBe('128 (50 %)');
		expect(plainKinds.rate(1)).toBe('once a second');
		expect(plainKinds.rate(4.52)).toBe('4.5 times a second');
		expect(plainKinds.metres(84.26)).toBe('84.3 m');
		expect(plainKinds.share(0.001)).toBe('less than 1 %');
		expect(plainKinds.share(0)).toBe('0 %');
		expect(plainKinds.slot(512)).toBe('512');
		expect(plainKinds.slot(513)).toBe('513, past the end of the universe');
	});

	it.each([
		[1, '1 millisecond'],
		[999, '999 milliseconds'],
		[1000, '1 second'],
		[1500, '1.5 seconds'],
		[60_000, '1 minute'],
		[125_000, '2 minutes and 5 seconds'],
		[3_600_000, '1 hour'],
		[90_060_000, '25 hours and 1 minute'],
	])('%d ms is %s', (ms, text) => {
		expect(plainKinds.time(ms)).toBe(text);
	});
});
