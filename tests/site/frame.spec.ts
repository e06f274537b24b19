import { expect, test } from '@playwright/test';
import { markupOf, pages } from './pages.ts';

test.use({ serviceWorkers: 'block' });

/** Markup of what was asked for before, by address: many pages lead to the same few. */
const answered = new Map<string, string>();

for (const page of pages) {
	test(`every link on ${page} leads somewhere`, async ({ request }) => {
		const links = [...markupOf(page).matchAll(/<a\s[^>]*?href="([^"]*)"/g)].map(([, href = '']) =>
			href.replaceAll('&amp;', '&').replaceAll('&#38;', '&'),
		);
		expect(links.length).toBeGreaterThan(2);
		for (const link of new Set(links)) {
			const { origin, pathname, hash } = new URL(link, `http://site${page}`);
			expect(origin, link).toBe('http://site');
			if (!answered.has(pathname)) {
				const answer = await request.get(pathname, { maxRedirects: 0 });
				expect(answer.status(), link).toBe(200);
				answered.set(pathname, await answer.text());
			}
			// a fragment with a sign of equality is data for the page, not a place on it
			if (hash !== '' && !hash.includes('='))
				expect(answered.get(pathname), link).toMatch(new RegExp(`\\sid=["']?${hash.slice(1)}["'\\s>]`));
			expect(pathname, 'a page ends in a slash').toMatch(/\/$|\.\w+$/);
		}
	});
}

test('the first Tab reaches the skip link, and it leads past the header', async ({ page: tab }) => {
	await tab.goto('/about/');
	await tab.keyboard.press('Tab');
	const skip = tab.locator('.skip');
	await expect(skip).toBeFocused();
	expect((await skip.boundingBox())?.height).toBeGreaterThanOrEqual(48);
	await tab.keyboard.press('Enter');
	await expect(tab.locator('main')).toBeFocused();
	await tab.keyboard.press('Tab');
	expect(await tab.evaluate(() => document.activeElement?.closest('header'))).toBeNull();
});

test('what is not there is the not-found page, and a missing slash is put right', async ({ page: tab }) => {
	expect((await tab.goto('/nowhere/'))?.status()).toBe(404);
	await expect(tab.getByRole('heading', { level: 1 })).toHaveText('No signal');
	await tab.goto('/about?from=a#cautions');
	expect(new URL(tab.url()).pathname).toBe('/about/');
});

test('on paper a page is its words, black on white', async ({ page: tab }) => {
	await tab.emulateMedia({ media: 'print', colorScheme: 'dark' });
	await tab.goto('/about/');
	await expect(tab.locator('nav')).toBeHidden();
	await expect(tab.locator('footer')).toBeHidden();
	await expect(tab.locator('.caution').first()).toBeVisible();
	const ink = await tab
		.locator('body')
		.evaluate((body) => [getComputedStyle(body).color, getComputedStyle(body).backgroundColor]);
	expect(ink).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
});
