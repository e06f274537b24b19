import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { serve } from '../../src/site/server/index.ts';
import { axe } from './axe.ts';
import { built, markupOf } from './pages.ts';
import { untilKept } from './versions.ts';

test('with the network off, search finds a term and a fault, and leads to their places', async ({ page: tab }) => {
	const site = await serve(built, 0, 'quick');
	await tab.goto(`${site.origin}/`);
	await untilKept(tab);
	await site.close();

	await tab.goto(`${site.origin}/search/`);
	const box = tab.getByRole('searchbox');
	await box.fill('terminat');
	const results = tab.locator('.search-results a');
	await expect(results.first()).toHaveText('Terminator');
	// by keyboard alone: Enter goes to the first result, Enter follows it
	await box.press('Enter');
	await expect(results.first()).toBeFocused();
	await tab.keyboard.press('Enter');
	await expect(tab).toHaveURL(`${site.origin}/glossary/#terminator`);
	await expect(tab.locator('#terminator')).toBeInViewport();
	await expect(tab.getByText('A plug with a 120 ohm resistor')).toBeVisible();
	// what it leads on to opens too, also once that was shut again
	const next = tab.locator('#reflection');
	for (const time of ['first', 'again']) {
		await tab.locator('#terminator').getByRole('link', { name: 'Reflection' }).click();
		await expect(next.locator('p').first(), time).toBeInViewport();
		await next.locator('summary').click();
		await expect(next.locator('p').first()).toBeHidden();
		await tab.locator('#terminator').scrollIntoViewIfNeeded();
	}
	await tab.goBack();
	await expect(tab).toHaveURL(`${site.origin}/glossary/#terminator`);

	// the search stands in the address: going back finds it again
	await tab.goBack();
	await expect(box).toHaveValue('terminat');
	await box.fill('battery flat');
	await results.getByText('Battery flat', { exact: true }).click();
	await expect(tab).toHaveURL(`${site.origin}/reference/faults/#fault-battery-flat`);
	await expect(tab.locator('#fault-battery-flat')).toBeInViewport();

	await tab.goto(`${site.origin}/search/?q=zzzzzz`);
	await expect(tab.getByText('Nothing found for “zzzzzz”.')).toBeVisible();
});

test('every place that can be found is there', () => {
	const index = JSON.parse(readFileSync(path.join(built, 'search-index.json'), 'utf8')) as {
		documentIds: Record<string, string>;
	};
	const places = Object.values(index.documentIds);
	expect(places.length).toBeGreaterThan(300);
	for (const place of places) {
		const [page = '', id] = place.split('#');
		const markup = markupOf(page);
		if (id !== undefined) expect(markup, place).toMatch(new RegExp(`\\sid=["']?${id}["'\\s>]`));
	}
});

test.describe('with results on the page', () => {
	test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

	for (const colorScheme of ['dark', 'light'] as const)
		test(`axe finds nothing, ${colorScheme}, and nothing runs off a phone`, async ({ page: tab }) => {
			await tab.emulateMedia({ colorScheme });
			for (const [query, says] of [
				['start address', 'The first'],
				['zzzzzz', 'Nothing found'],
			] as const) {
				await tab.goto(`/search/?q=${query}`);
				await expect(tab.getByRole('status').filter({ hasText: says })).toBeVisible();
				const { violations } = await axe(tab);
				expect(violations.map(({ id }) => id)).toEqual([]);
				expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
			}
		});
});

test.describe('on paper', () => {
	test.use({ serviceWorkers: 'block' });

	test('each section of the reference begins a sheet, and no table is cut off', async ({ page: tab }) => {
		await tab.emulateMedia({ media: 'print' });
		// A4 less its margins, in pixels
		await tab.setViewportSize({ width: 718, height: 1000 });
		for (const page of ['addresses', 'levels', 'line', 'fixtures', 'faults']) {
			await tab.goto(`/reference/${page}/`);
			await expect(tab.locator('.reference-here')).toBeHidden();
			const breaks = await tab
				.locator('.reference-section')
				.evaluateAll((all) => all.map((it) => getComputedStyle(it).breakBefore));
			expect(breaks.slice(1).every((it) => it === 'page')).toBe(true);
			const shut = await tab
				.locator('.reference-body')
				.evaluateAll(
					(all) => all.filter((it) => it.getBoundingClientRect().height === 0 || !it.checkVisibility()).length,
				);
			expect(shut, 'on paper nothing is folded').toBe(0);
			const wide = await tab
				.locator('.reference-table table')
				.evaluateAll((all) =>
					all.filter((it) => it.getBoundingClientRect().right > 718).map((it) => it.getAttribute('aria-label')),
				);
			expect(wide).toEqual([]);
		}
	});
});
