import { expect, type Page, test } from '@playwright/test';
import { frame } from '#words/site/index.ts';
import { bring } from '../src/features/bench/open.ts';
import { begin } from '../src/features/finder/hidden.ts';
import { markupOf, pages } from './pages.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

/** Pages that nobody goes to from home: reached by a link that was sent, by printing, or by accident. */
const notFromHome = ['/404.html', '/not-kept/', '/papers/print/', '/papers/sit/'];

const linksOf = (page: string): string[] =>
	[...markupOf(page).matchAll(/<a\s[^>]*?href="([^"#?]*)/g)]
		.map(([, href = '']) => href)
		.filter((it) => pages.includes(it));

test('every page is within two taps of home', () => {
	const oneTap = new Set(linksOf('/'));
	const twoTaps = new Set([...oneTap].flatMap(linksOf));
	expect(pages.filter((page) => page !== '/' && !oneTap.has(page) && !twoTaps.has(page))).toEqual(notFromHome);
});

test('a page stands under the way one would go there', () => {
	const current = (page: string): (string | undefined)[] =>
		[...markupOf(page).matchAll(/<a\s[^>]*?href="([^"]*)"[^>]*aria-current="true"/g)].map(([, href]) => href);
	expect(current('/lessons/bands/')).toEqual(['/learn/']);
	expect(current('/drills/do/')).toEqual(['/learn/']);
	expect(current('/review/')).toEqual(['/learn/']);
	expect(current('/papers/sit/')).toEqual(['/learn/']);
	expect(current('/lessons/plan/')).toEqual(['/teach/']);
	expect(current('/papers/')).toEqual(['/teach/']);
	expect(current('/finder/tree/')).toEqual(['/finder/']);
	expect(current('/reference/levels/')).toEqual(['/search/']);
});

/** What stays at the foot of the glass while the page goes by, by what it is; what has no room there is not counted. */
const barsAtTheFoot = (tab: Page): Promise<string[]> =>
	tab.evaluate(() =>
		[...document.querySelectorAll('body *')]
			.filter((it) => {
				const { position, insetBlockEnd } = getComputedStyle(it);
				const { height } = it.getBoundingClientRect();
				return (position === 'fixed' || (position === 'sticky' && insetBlockEnd !== 'auto')) && height > 0;
			})
			.map((it) => it.parentElement?.className.split(' ')[0] ?? '')
			.sort(),
	);

const leave = (tab: Page) => tab.getByRole('link', { name: frame.leave });

test('on a phone a low head and one bar at the foot, with a word on each way', async ({ page: tab }) => {
	await tab.goto('/');
	expect((await tab.locator('.site-head').boundingBox())?.height).toBeLessThanOrEqual(50);
	const ways = tab.locator('.site-nav ul a');
	expect(await ways.count()).toBeLessThanOrEqual(5);
	for (const way of await ways.all()) {
		const { y = 0, height = 0, width = 0 } = (await way.boundingBox()) ?? {};
		expect(height).toBeGreaterThanOrEqual(48);
		expect(width).toBeGreaterThanOrEqual(48);
		expect(y + height).toBeGreaterThan(835);
		await expect(way).not.toHaveText('');
	}
	expect(await barsAtTheFoot(tab)).toEqual(['site-nav']);
	await expect(leave(tab)).toBeHidden();
	// the end of the page can be read above it
	await tab.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
	const foot = await tab.locator('.site-foot').boundingBox();
	expect((foot?.y ?? 0) + (foot?.height ?? 0)).toBeLessThanOrEqual((await ways.first().boundingBox())?.y ?? 0);
	await tab.getByRole('link', { name: 'Learn', exact: true }).click();
	await tab.getByRole('link', { name: 'Drills', exact: true }).click();
	await expect(tab).toHaveURL(/\/drills\/$/);
});

test('a drill’s bar takes the place of the ways, and a cross leads out', async ({ page: tab }) => {
	await tab.goto('/drills/do/#kind=address-keys&seed=295');
	const start = tab.getByRole('button', { name: /^Begin/ });
	await expect(start).toBeVisible();
	expect(await barsAtTheFoot(tab)).toEqual(['site-nav']);
	await start.click();
	await expect(tab.locator('.thumb-bar')).toBeVisible();
	await expect(tab.locator('.site-nav ul')).toBeHidden();
	await leave(tab).click();
	await expect(tab).toHaveURL(/\/drills\/$/);
	await expect(tab.locator('.site-nav ul')).toBeVisible();
});

test('a lesson’s task leads back to the course, and on a free bench its tabs are the one bar at the foot', async ({
	page: tab,
}) => {
	await tab.goto('/lessons/bands/');
	await expect(tab.locator('.leave')).toHaveAttribute('href', '/lessons/');
	await tab.goto('/bench/');
	await expect(tab.locator('.sheet-tabs')).toBeVisible();
	await expect(tab.locator('.site-nav ul')).toBeHidden();
	await bring(tab, 'Cables');
	await tab.locator('.row [data-port="wash-2:in"]').click();
	await expect(tab.locator('.hand')).toBeVisible();
	await expect(tab.locator('.site-nav ul')).toBeHidden();
	await leave(tab).click();
	await expect(tab).toHaveURL(/\/$/);
	await expect(tab.locator('.site-nav ul')).toBeVisible();
});

test('in a walk of the finder its answers are the bar', async ({ page: tab }) => {
	await tab.goto('/finder/');
	await expect(tab.locator('.site-nav ul')).toBeVisible();
	await begin(tab, {
		rig: 'four-in-line',
		fixture: 'wash-3',
		complaint: 'no-answer',
		fault: { fault: 'cable-out', place: 'cable-2', detail: 'to' },
	});
	await expect(tab.locator('.answers')).toBeVisible();
	await expect(tab.locator('.site-nav ul')).toBeHidden();
	await leave(tab).click();
	await expect(tab).toHaveURL(/\/$/);
});

test('on a low glass nothing stays: at 400 percent, or a phone on its side with its keyboard up', async ({
	page: tab,
}) => {
	await tab.setViewportSize({ width: 320, height: 256 });
	await tab.goto('/about/');
	expect(await barsAtTheFoot(tab)).toEqual([]);
	await expect(tab.getByRole('link', { name: 'Learn', exact: true })).toBeVisible();
	expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
