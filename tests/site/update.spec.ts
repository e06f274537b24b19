import { cpSync } from 'node:fs';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { siteFiles } from '../../src/site/offline/index.ts';
import { type SiteServer, serve } from '../../src/site/server/index.ts';
import { pages } from './pages.ts';
import { drop, keptOf, makeVersion, untilKept, version, versionsOf } from './versions.ts';

let one: string;
let two: string;
let site: SiteServer;

test.beforeAll(async () => {
	[one, two] = await Promise.all([version('one'), version('two')]);
});
test.beforeEach(async ({ page: tab }) => {
	site = await serve(one, 0, 'quick');
	await tab.goto(`${site.origin}/`);
	await untilKept(tab);
});
test.afterEach(() => site.close().catch(() => undefined));

const notice = (tab: Page) => tab.locator('.update-sheet');

/** One page of each make: they take turns through the same worker. */
const walked = ['/', '/bench/', '/drills/do/', '/finder/', '/glossary/', '/lessons/ten-cases/', '/papers/'];

async function expectAll(tab: Page, name: string): Promise<void> {
	expect(pages).toEqual(expect.arrayContaining([...walked]));
	for (const page of walked) {
		await tab.goto(`${site.origin}${page}`);
		expect(await versionsOf(tab), page).toEqual([name, name]);
	}
}

test('a new version waits until it is taken, then stands in every open page at once', async ({
	page: tab,
	context,
}) => {
	// what versions up to 2026 kept is under another name, and of no use any more
	await tab.evaluate(() => caches.open('workbox-precache-v2').then((cache) => cache.put('/old', new Response('old'))));
	site.use(two);
	await tab.goto(`${site.origin}/about/`);
	await expect(notice(tab)).toBeVisible();
	// ready, and not a part of it shows
	await expectAll(tab, 'one');
	const other = await context.newPage();
	await expectAll(other, 'one');

	await other.goto(`${site.origin}/bench/`);
	await expect(notice(other)).toBeVisible();
	await tab.goto(`${site.origin}/about/`);
	await expect(notice(tab)).toBeVisible();
	await notice(tab).getByRole('button', { name: 'Take it now' }).click();
	for (const it of [tab, other]) await expect.poll(() => versionsOf(it).catch(() => null)).toEqual(['two', 'two']);
	await expect(notice(tab)).toBeHidden();
	await expectAll(tab, 'two');
	await site.close();
	await expectAll(tab, 'two');
	// and of the version before nothing is left
	const { names, files } = await tab.evaluate(async () => ({
		names: await caches.keys(),
		files: (await (await caches.open('prep-bay.files')).keys()).length,
	}));
	expect(names).toEqual(['prep-bay.files']);
	const { kept, of } = (await keptOf(tab)) ?? { kept: 0, of: 1 };
	expect(kept).toBe(of);
	// the mark that the whole site is kept stands among them
	expect(files).toBe(siteFiles(two).first.length + siteFiles(two).later.length + 1);
});

test('later means later: the notice goes, the old version stays whole', async ({ page: tab }) => {
	site.use(two);
	await tab.goto(`${site.origin}/about/`);
	await notice(tab).getByRole('button', { name: 'Later' }).click();
	await expect(notice(tab)).toBeHidden();
	await site.close();
	await expectAll(tab, 'one');
});

test('when every page is closed the new version is there at the next visit', async ({ page: tab, context }) => {
	site.use(two);
	await tab.goto(`${site.origin}/about/`);
	await expect(notice(tab)).toBeVisible();
	await tab.close();
	await expect
		.poll(
			async () => {
				const next = await context.newPage();
				await next.goto(`${site.origin}/`);
				const versions = await versionsOf(next);
				await next.close();
				return versions;
			},
			// Chromium may start the old worker anew as it ends: the new one then waits half a minute (src/site/updates/watch.ts)
			{ timeout: 60_000 },
		)
		.toEqual(['two', 'two']);
});

test('a host caught halfway through an update changes nothing, until the rest is there', async ({ page: tab }) => {
	const half = await makeVersion('half');
	try {
		// the new worker's list is up; one page is still the old one's
		cpSync(path.join(one, 'about/index.html'), path.join(half, 'about/index.html'));
		site.use(half);
		const refused = await tab.evaluate(async () => {
			const registration = await navigator.serviceWorker.ready;
			const found = new Promise<string>((resolve) => {
				registration.addEventListener('updatefound', () => {
					const worker = registration.installing;
					worker?.addEventListener('statechange', () => {
						if (worker.state === 'redundant' || worker.state === 'installed') resolve(worker.state);
					});
				});
			});
			await registration.update();
			return found;
		});
		expect(refused).toBe('redundant');
		await expectAll(tab, 'one');
		await expect(notice(tab)).toHaveCount(0);

		site.use(two);
		await tab.goto(`${site.origin}/about/`);
		await expect(notice(tab)).toBeVisible();
	} finally {
		drop(half);
	}
});

// the same with nothing asked for is counted above: not a file more than the pages need
test('a new version brings what was once asked for along', async ({ page: tab }) => {
	const [oldFiles, newFiles] = [siteFiles(one).asked, siteFiles(two).asked];
	expect(newFiles).toHaveLength(2);
	expect(newFiles).not.toEqual(oldFiles);
	const kept = () =>
		tab.evaluate(async () =>
			(await (await caches.open('prep-bay.files')).keys()).map(({ url }) => new URL(url).pathname.slice(1)),
		);
	expect((await kept()).filter((file) => oldFiles.includes(file))).toEqual([]);
	await tab.evaluate((address) => fetch(address).then((answer) => answer.text()), `/${oldFiles[0]}`);
	await expect.poll(async () => (await kept()).includes(oldFiles[0] ?? '')).toBe(true);
	site.use(two);
	await tab.goto(`${site.origin}/about/`);
	await expect(notice(tab)).toBeVisible();
	expect(await kept()).toEqual(expect.arrayContaining([...newFiles]));
	await notice(tab).getByRole('button', { name: 'Take it now' }).click();
	await expect.poll(() => versionsOf(tab).catch(() => null)).toEqual(['two', 'two']);
	// and the version after that one still knows
	await expect.poll(async () => (await kept()).some((file) => oldFiles.includes(file))).toBe(false);
	expect(await kept()).toEqual(expect.arrayContaining([...newFiles]));
});
