import { request as ask, createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, type Page, test } from '@playwright/test';
import { type SiteServer, serve } from '../../src/site/server/index.ts';
import { built } from './pages.ts';
import { keptOf, untilKept } from './versions.ts';

let site: SiteServer;
test.beforeEach(async () => {
	site = await serve(built, 0, 'quick');
});
test.afterEach(() => site.close().catch(() => undefined));

const box = (tab: Page) => tab.locator('[data-kept]');
const heading = (tab: Page) => tab.getByRole('heading', { level: 1 });
const BUSY = { timeout: 60_000 };

/** A browser set to save data: Chromium says so by this. */
const saving = (tab: Page) =>
	tab.addInitScript(() => {
		Object.defineProperty(navigator, 'connection', { value: { saveData: true } });
	});
/** A page that is never idle, so that what waits for that does not come. */
const neverIdle = (tab: Page) =>
	tab.addInitScript(() => {
		globalThis.requestIdleCallback = () => 0;
	});

// a first visit fetched all there is, also for who pays for each megabyte
test('who saves data keeps nothing until asking, is told how much it is, and then has it all', async ({
	page: tab,
}) => {
	await saving(tab);
	await tab.goto(`${site.origin}/about/`);
	await expect(box(tab)).toContainText(/Nothing is kept yet.*\d\.\d MB to fetch\./);
	await tab.waitForTimeout(3000);
	expect(await tab.evaluate(() => navigator.serviceWorker.getRegistrations().then((all) => all.length))).toBe(0);
	expect(await tab.evaluate(() => caches.keys())).toEqual([]);
	await tab.goto(`${site.origin}/bench/`);
	expect(await tab.evaluate(() => caches.keys())).toEqual([]);

	await tab.goto(`${site.origin}/about/`);
	await box(tab).getByRole('button', { name: 'Keep all of it' }).click();
	await expect(box(tab)).toContainText('It works with no network.', BUSY);
	await expect(box(tab).getByRole('button')).toBeHidden();
	await untilKept(tab);
	await site.close();
	await tab.goto(`${site.origin}/lessons/bands/`);
	await expect(heading(tab)).toBeVisible();
});

test('the pages come at once, and what was not kept yet says so with no network, until it is asked for', async ({
	page: tab,
}) => {
	await neverIdle(tab);
	await tab.goto(`${site.origin}/about/`);
	await expect(box(tab)).toContainText(/\d\.\d MB of \d\.\d MB is on this device\./, BUSY);
	const state = await keptOf(tab);
	// the least a crew stands there with: less than a third of the whole
	expect(state?.kept).toBeGreaterThan(0);
	expect(state?.kept).toBeLessThan((state?.of ?? 0) / 3);

	site.use('/nowhere-at-all');
	for (const page of ['/', '/bench/', '/drills/', '/finder/', '/glossary/', '/reference/line/', '/papers/']) {
		await tab.goto(`${site.origin}${page}`);
		await expect(heading(tab)).not.toHaveText('Not on this device yet');
		await expect(tab.locator('.coming').or(tab.locator('main')).first()).toBeVisible();
	}
	await site.close();
	await tab.goto(`${site.origin}/lessons/bands/`);
	await expect(heading(tab)).toHaveText('Not on this device yet');
	await tab.getByRole('button', { name: 'Keep the rest now' }).click();
	await expect(box(tab)).toContainText('couldn’t be fetched', BUSY);
	await expect(box(tab).getByRole('button', { name: 'Keep the rest now' })).toBeVisible();

	site = await serve(built, Number(new URL(site.origin).port), 'quick');
	await box(tab).getByRole('button', { name: 'Keep the rest now' }).click();
	await expect(box(tab)).toContainText('It works with no network.', BUSY);
	await site.close();
	await tab.goto(`${site.origin}/lessons/bands/`);
	await expect(heading(tab)).not.toHaveText('Not on this device yet');
});

test('a lesson that was opened stays, and no other', async ({ page: tab }) => {
	await neverIdle(tab);
	await tab.goto(`${site.origin}/`);
	await expect.poll(async () => (await keptOf(tab))?.kept ?? 0, BUSY).toBeGreaterThan(0);
	await tab.goto(`${site.origin}/lessons/bands/`);
	await expect(heading(tab)).toBeVisible();
	await site.close();
	await tab.goto(`${site.origin}/lessons/bands/`);
	await expect(heading(tab)).not.toHaveText('Not on this device yet');
	await tab.goto(`${site.origin}/lessons/daisy-chain/`);
	await expect(heading(tab)).toHaveText('Not on this device yet');
});

test('a browser that keeps nothing is told that it needs a network', async ({ page: tab }) => {
	await tab.addInitScript(() => {
		ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException('refused', 'SecurityError'));
	});
	await tab.goto(`${site.origin}/about/`);
	await expect(box(tab)).toContainText('This browser can’t keep the site');
});

// Symptom: 'x of y MB is on this device' and no more, and in Firefox an error page. Cause: a browser ends a worker that is asked nothing
// for a minute; over a poor network keeping the site takes longer, and nobody asked the worker to go on.
test('a worker that is ended in the middle of keeping the site is asked to go on', async ({ page: tab }) => {
	let isHeld = true;
	let held = 0;
	// a network on which no lesson comes
	const slow = createServer(({ url = '', headers }, response) => {
		if (isHeld && /^\/lessons\/(?!plan\/)./.test(url)) {
			held++;
			return;
		}
		ask(`${site.origin}${url}`, { headers: { ...headers, host: new URL(site.origin).host } }, (answer) => {
			response.writeHead(answer.statusCode ?? 500, answer.headers);
			answer.pipe(response);
		}).end();
	});
	await new Promise<void>((resolve) => slow.listen(0, '127.0.0.1', resolve));
	try {
		await tab.goto(`http://127.0.0.1:${(slow.address() as AddressInfo).port}/about/`);
		await expect.poll(() => held, BUSY).toBeGreaterThan(0);
		await expect(box(tab)).not.toContainText('It works with no network.');
		const session = await tab.context().newCDPSession(tab);
		await session.send('ServiceWorker.enable');
		await session.send('ServiceWorker.stopAllWorkers');
		isHeld = false;
		await expect(box(tab)).toContainText('It works with no network.', BUSY);
	} finally {
		slow.closeAllConnections();
		slow.close();
	}
});
