import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readChart } from '../../../shared/stock/index.ts';
import { shownChart } from './show.ts';

/** Each layout by its heading: the text as pasted (⇥ is a tab), and what it must read to, with every mark and its place. */
const LAYOUTS = readFileSync(new URL('./layouts.txt', import.meta.url), 'utf8')
	.split(/^=== /m)
	.slice(1)
	.map((part) => {
		const [, name = '', text = '', reads = ''] = /^(.*)\n([\s\S]*?)\n--- reads\n([\s\S]*)$/.exec(part) ?? [];
		return { name, text: text.replaceAll('⇥', '\t'), reads: reads.trimEnd() };
	});

test('there are sixty layouts and more, no two called the same', () => {
	expect(LAYOUTS.length).toBeGreaterThanOrEqual(60);
	expect(new Set(LAYOUTS.map(({ name }) => name)).size).toBe(LAYOUTS.length);
});

test.each(LAYOUTS)('$name', ({ text, reads }) => {
	expect(shownChart(readChart(text))).toBe(reads);
});
