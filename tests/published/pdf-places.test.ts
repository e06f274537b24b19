import { readFileSync } from 'node:fs';
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { pageItems } from '../../src/features/stock/manual/items.ts';
import { madePdf } from '../shared/stock/page/pdf.ts';
import { ORACLE_PAGES } from './pdf-pages.ts';

// Where the words of a page stand, by an extractor of another house (poppler); how its figures were come by stands in their file.
const words = readFileSync(new URL('data/pdf/words.txt', import.meta.url), 'utf8')
	.split('\n')
	.filter((line) => line !== '' && !line.startsWith('#'))
	.map((line) => {
		const [page = '', left = '', top = '', right = '', bottom = '', word = ''] = line.split('\t');
		return {
			page: Number(page),
			left: Number(left),
			top: Number(top),
			right: Number(right),
			bottom: Number(bottom),
			word,
		};
	});

/** Points that a place may be off: two tables of widths for a face that is not in the file. */
const OFF = 1;

test('every word stands where the other extractor has it, on pages turned by a viewer too', async () => {
	const file = await getDocument({ data: await madePdf(ORACLE_PAGES), verbosity: VerbosityLevel.ERRORS }).promise;
	expect(words.length).toBeGreaterThan(80);
	for (let number = 1; number <= file.numPages; number++) {
		const { items } = await pageItems(await file.getPage(number));
		const own = words.filter(({ page }) => page === number);
		// nothing more and nothing less
		const letters = (texts: readonly string[]): string => [...texts.join('').replaceAll(/\s/g, '')].sort().join('');
		expect(letters(items.map(({ str }) => str))).toBe(letters(own.map(({ word }) => word)));
		for (const { word, left, top, right, bottom } of own) {
			const here = items.filter(
				({ str, x, y, w, turn }) =>
					Math.round(turn) === 0 &&
					str.includes(word) &&
					x <= left + OFF &&
					x + w >= right - OFF &&
					y > top &&
					y < bottom,
			);
			expect(here, `${word} on page ${number}`).toHaveLength(1);
		}
	}
	await file.loadingTask.destroy();
});
