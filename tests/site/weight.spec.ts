import { expect, test } from '@playwright/test';
import { isLesson, sampled } from './pages.ts';
import { told, weighScripts } from './weigh.ts';

test.use({ serviceWorkers: 'block' });

/** A lesson's bench, its checks and its sliders, its cautions in full: as a bench, 86, and 3 for those, and 3 for a bench in one screen. */
const lesson = 93.3;

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
