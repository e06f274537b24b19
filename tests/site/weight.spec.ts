import { expect, type Response, test } from '@playwright/test';
import { markupOf, pages } from './pages.ts';
import { sumOf, told, weightOf } from './weigh.ts';

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
			answers.map(async (response) => ({ type: response.request().resourceType(), ...(await weightOf(response)) })),
		);
		const sum = (types: RegExp) => sumOf(weights.filter((it) => types.test(it.type)));
		const script = sum(/^script$/);
		const all = sum(/^(?!font)/);
		const font = sum(/^font$/);
		console.log(`${page} ${told(all)}, of it script ${told(script)}; fonts ${told(font)} besides`);
		expect(font.sent).toBeLessThanOrEqual(55);
		if (live) {
			expect(script.sent).toBeLessThanOrEqual(bench);
		} else {
			expect(all.sent).toBeLessThanOrEqual(words);
			// its own small script stands in the page: a framework would come as a file
			expect(script.sent).toBe(0);
		}
	});
}
