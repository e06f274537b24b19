import { gzipSync } from 'node:zlib';
import { expect, type Response, test } from '@playwright/test';
import { markupOf, pages } from './pages.ts';

// kB here is 1000 bytes, each file compressed by itself with gzip: what a plain host sends.

test.use({ serviceWorkers: 'block' });

const words = 30;
const bench = 70;

for (const page of pages) {
	const live = markupOf(page).includes('<astro-island');

	test(`${page} keeps to its weight`, async ({ page: tab }) => {
		const answers: Response[] = [];
		tab.on('response', (response) => answers.push(response));
		await tab.goto(page);
		await tab.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
		await tab.waitForLoadState('networkidle');
		const weights = await Promise.all(
			answers.map(async (response) => ({
				type: response.request().resourceType(),
				kB: gzipSync(await response.body(), { level: 9 }).length / 1000,
			})),
		);
		const sum = (types: RegExp) => weights.filter((it) => types.test(it.type)).reduce((total, it) => total + it.kB, 0);
		const script = sum(/^script$/);
		const all = sum(/^(?!font)/);
		const font = sum(/^font$/);
		console.log(`${page} ${all.toFixed(1)} kB, of it script ${script.toFixed(1)}; fonts ${font.toFixed(1)} besides`);
		expect(font).toBeLessThanOrEqual(55);
		if (live) {
			expect(script).toBeLessThanOrEqual(bench);
		} else {
			expect(all).toBeLessThanOrEqual(words);
			// its own small script stands in the page: a framework would come as a file
			expect(script).toBe(0);
		}
	});
}
