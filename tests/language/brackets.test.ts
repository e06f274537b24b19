import { describe, expect, it } from 'vitest';
import { strays } from './bare.ts';
import { bracketed, bracketedMdx, bracketedSource, bracketedTemplate } from './brackets.ts';

describe('the made-up language', () => {
	it('brackets words, not what a template asks for', () => {
		expect(bracketed('On the floor, 5 m.')).toBe('⟦On⟧ ⟦the⟧ ⟦floor⟧, 5 ⟦m⟧.');
		expect(bracketedTemplate('Set {cables as list}[ to {n} {n?slot|slots}]')).toBe(
			'⟦Set⟧ {cables as list}[ ⟦to⟧ {n} {n?⟦slots⟧}]',
		);
	});

	it('brackets what a source says, not what it goes by', () => {
		const source = [
			"import { a } from './a.ts';",
			"const DATA = 'Out';",
			"export const SPOTS = ['wall'] as const;",
			"export const x = { id: 'one', href: '/a/', see: ['b'], when: 'Now', all: [{ when: { is: 'on' }, says: 'On \\u2212' }] };",
			// biome-ignore lint/suspicious/noTemplateCurlyInString: it is source that is read
			'export const y = (n: number) => `${n === 1 ? `${n} bit` : "no"} left`;',
		].join('\n');
		expect(bracketedSource(source, 'x/x.ts').split('\n')).toEqual([
			"import { a } from './a.ts';",
			'const DATA = "⟦Out⟧";',
			"export const SPOTS = ['wall'] as const;",
			"export const x = { id: 'one', href: '/a/', see: ['b'], when: \"⟦Now⟧\", all: [{ when: { is: 'on' }, says: \"⟦On⟧ −\" }] };",
			// biome-ignore lint/suspicious/noTemplateCurlyInString: it is source that is read
			'export const y = (n: number) => `${n === 1 ? `${n} ⟦bit⟧` : "⟦no⟧"} ⟦left⟧`;',
		]);
	});

	it('brackets a lesson’s words, not its data, tags or addresses', () => {
		const lesson =
			'---\nid: "a-b"\ntitle: "One day"\nslip: { "words": "It slips", "log": [{ "type": "x" }] }\n---\n\n## Why\n\n<Figure id="bond" /> See [this page](/kept/).\n';
		expect(bracketedMdx(lesson)).toBe(
			'---\nid: "a-b"\ntitle: "⟦One⟧ ⟦day⟧"\nslip: {"words":"⟦It⟧ ⟦slips⟧","log":[{"type":"x"}]}\n---\n\n## ⟦Why⟧\n\n<Figure id="bond" /> ⟦See⟧ [⟦this⟧ ⟦page⟧](/kept/).\n',
		);
	});

	it.each([
		['⟦Stay⟧ 5 W, ⟦output⟧ A: 3F', []],
		['⟦Wash⟧, wash 1 and 148 Wh', ['and']],
		['ⓦⓐⓢⓗ 2 Caution', ['Caution']],
		['Panel locked', []],
	])('%s leaves %j', (text, left) => {
		expect(strays(text)).toEqual(left);
	});
});
