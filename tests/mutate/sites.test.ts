import { describe, expect, test } from 'vitest';
import { textOf } from '../house/tree.ts';
import { EQUIVALENTS, isThat } from './equivalents.ts';
import { mutantsOf, withMutant } from './sites.ts';

const changes = (text: string): string[] => mutantsOf('a.ts', text).map((mutant) => withMutant(mutant));

describe('a slip', () => {
	test.each([
		['const a = b < c;', ['const a = b <= c;', 'const a = b >= c;']],
		['const a = b === c;', ['const a = b !== c;']],
		['const a = b * c;', ['const a = b / c;']],
		['const a = b && c;', ['const a = b || c;']],
		['const a = b ?? c;', ['const a = undefined ?? c;']],
		['const a = 7;', ['const a = 8;', 'const a = 6;']],
		['const a = 0.5;', ['const a = 0.75;']],
		['const a = true;', ['const a = false;']],
		['const a = !b;', ['const a = b;']],
		['if (b) c();', ['if (!(b)) c();', 'if (b) ;']],
		['const a = b ? c : d;', ['const a = !(b) ? c : d;']],
		['const a = [b, c];', ['const a = [];', 'const a = [c, b];']],
		['const a = () => b.filter(c);', ['const a = () => [];']],
		['const a = b.some(c);', ['const a = b.every(c);']],
		[
			"const a = ['one', 'two'];",
			['const a = [];', "const a = ['two', 'one'];", "const a = ['two', 'two'];", "const a = ['one', 'one'];"],
		],
	])('in %s', (text, expected) => {
		expect(changes(text)).toEqual(expected);
	});

	test.each([
		["import { a } from './a.ts';"],
		["type A = 'one' | 'two';"],
		['interface A { readonly b: 1 }'],
		["throw new Error('A sentence is no id.');"],
		["const a = 'x is ' + b;"],
	])('none in %s', (text) => {
		expect(changes(text)).toEqual([]);
	});

	test('knows its line, and what stood there', () => {
		expect(mutantsOf('a.ts', '// one\nconst a =\n\tb - 2;\n')[0]).toMatchObject({ line: 3, before: '-', after: '+' });
	});
});

test('each change said to mean the same still stands', () => {
	for (const each of EQUIVALENTS)
		expect(
			mutantsOf(each.file, textOf(each.file)).filter((mutant) => isThat(mutant, each)),
			`${each.file}: ${each.line}`,
		).not.toHaveLength(0);
});
