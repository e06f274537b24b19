import { expect, test } from '@playwright/test';
import { serve } from '../../src/site/server/index.ts';
import { built, pages } from './pages.ts';
import { untilKept } from './versions.ts';

test('after one visit every page opens with the network off, seen before or not', async ({ page: tab }) => {
	const site = await serve(built, 0, 'quick');
	await tab.goto(`${site.origin}/`);
	await untilKept(tab);
	await site.close();

	await tab.reload();
	await expect(tab.getByRole('heading', { level: 1 })).toBeVisible();
	for (const page of pages) {
		await tab.goto(`${site.origin}${page}`);
		await expect(tab.getByRole('heading', { level: 1 })).toBeVisible();
		// drawn as it should be: the stylesheet and the fonts are there too
		const drawn = await tab.evaluate(async () => {
			await document.fonts.ready;
			const style = getComputedStyle(document.documentElement);
			return [style.getPropertyValue('--target'), document.fonts.check('1rem "Atkinson Hyperlegible Next"')];
		});
		expect(drawn, page).toEqual(['3rem', true]);
	}

	await tab.goto(`${site.origin}/nowhere/`);
	await expect(tab.getByRole('heading', { level: 1 })).toHaveText('No signal');
	await tab.goto(`${site.origin}/about?from=elsewhere`);
	await expect(tab.getByRole('heading', { level: 1 })).toHaveText('About Prep Bay');
});

test('a visit whose worker is refused still has the site, from the network', async ({ browser, baseURL }) => {
	const context = await browser.newContext({ serviceWorkers: 'block' });
	const tab = await context.newPage();
	const errors: string[] = [];
	tab.on('pageerror', (error) => errors.push(error.message));
	await tab.goto(`${baseURL}/`);
	await expect(tab.getByRole('heading', { level: 1 })).toBeVisible();
	expect(errors).toEqual([]);
	await context.close();
});
