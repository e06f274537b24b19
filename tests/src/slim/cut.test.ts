import { parseSync } from 'vite';
import { expect, it } from 'vitest';
import { type Cut, cutCode } from '../../../src/slim/cut.ts';

const code = `function kept() { return emptied(1) || never ? spread(...none) : 2; }
function emptied(x) { return x; }
class Told { get it() { return 1; } other() { return this.it; } }
const text = toString();
const made = { shown: text, hidden: text + '', bare: 1 };
if (never) { kept(); }
export { kept, Told, text, made };`;

const cut = (what: Partial<Cut>): string =>
	cutCode(code, parseSync('code.js', code).program, { empty: [], leaveOut: [], instead: {}, ...what });

it('leaves code alone where nothing is named', () => {
	expect(cut({})).toBe(code);
});

it('empties, leaves out and puts in place what is named, and nothing else', () => {
	expect(
		cut({ empty: ['emptied', 'text', 'hidden'], leaveOut: ['get it()', 'if (never)'], instead: { '...none': '' } }),
	).toBe(
		code
			.replace('{ return x; }', '{}')
			.replace('toString()', 'null')
			.replace("hidden: text + ''", 'hidden: null')
			.replace('get it() { return 1; }', '')
			.replace('if (never) { kept(); }', ';')
			.replace('...none', ''),
	);
});

it.each<Partial<Cut>>([{ empty: ['missing'] }, { leaveOut: ['while (true)'] }, { instead: { 'kept(1)': '0' } }])(
	'stops where something named is not there: %o',
	(what) => {
		expect(() => cut(what)).toThrow('Not in the code');
	},
);
