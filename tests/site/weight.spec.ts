import { expect, type Response, test } from '@playwright/test';
import { isLesson, markupOf, sampled } from './pages.ts';
import { sumOf, told, weighScripts, weightOf } from './weigh.ts';

test.use({ serviceWorkers: 'block' });

const words = 30;
/** With the machine library as it is published. */
const bench = 85;
/** Script files before the first tap. */
const files = 10;
/** Pages that fetch more: their parts are small, and put into fewer files they bring what the page has no use for. */
const moreFiles: Readonly<Record<string, number>> = { '/bench/': 12, '/papers/print/': 11, '/papers/sit/': 16 };
/** A lesson's bench, its checks and its sliders: as a bench, 85. */
const lesson = 85;

for (const page of sampled) {
	// a lesson is a page of words until its bench scrolls into view
	const live = !isLesson(page) && markupOf(page).includes('<astro-island');

	test(`${page} keeps to its weight`, async ({ page: tab }) => {
		// on a phone: a wide screen may show a lesson's sliders at once
		if (isLesson(page)) await tab.setViewportSize({ width: 390, height: 844 });
		const answers: Response[] = [];
		tab.on('response', (response) => answers.push(response));
		await tab.goto(page);
		if (!isLesson(page)) await tab.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
		await tab.waitForLoadState('networkidle');
		const weights = await Promise.all(
			answers.map(async (response) => ({ type: response.request().resourceType(), ...(await weightOf(response)) })),
		);
		const sum = (types: RegExp) => sumOf(weights.filter((it) => types.test(it.type)));
		const script = sum(/^script$/);
		const all = sum(/^(?!font)/);
		const font = sum(/^font$/);
		console.log(
			`${page} ${told(all)}, of it script ${told(script)} in ${weights.filter(({ type }) => type === 'script').length} files; fonts ${told(font)} besides`,
		);
		expect(font.sent).toBeLessThanOrEqual(55);
		if (live) {
			expect(script.sent).toBeLessThanOrEqual(bench);
			expect(weights.filter(({ type }) => type === 'script').length).toBeLessThanOrEqual(moreFiles[page] ?? files);
		} else {
			expect(all.sent).toBeLessThanOrEqual(words);
			// its own small script stands in the page: a framework would come as a file
			expect(script.sent).toBe(0);
		}
	});
}

for (const page of sampled.filter(isLesson)) {
	test(`${page} carries a bench once it comes into view`, async ({ page: tab }) => {
		const scripts = weighScripts(tab);
		await tab.goto(page);
		await tab.locator('.practice').scrollIntoViewIfNeeded();
		await expect(tab.locator('.stage')).toBeVisible({ timeout: 30_000 });
		await tab.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
		await tab.waitForLoadState('networkidle');
		const script = await scripts();
		console.log(`${page} scripts once its bench is there ${told(script)}`);
		expect(script.sent).toBeLessThanOrEqual(lesson);
	});
}
