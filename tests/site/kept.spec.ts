import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { keptWords } from '#words/storage/index.ts';
import { KEPT, type KeptId } from '../../src/storage/index.ts';
import { axe } from './axe.ts';

test.use({ serviceWorkers: 'block' });

/** Something under every key, and set aside in every way that there ever was. */
const written: Readonly<Record<string, string>> = JSON.parse(
	readFileSync(new URL('../src/storage/as-written.json', import.meta.url), 'utf8'),
);

async function openWith(tab: Page, kept: Readonly<Record<string, string>>): Promise<void> {
	await tab.goto('/reference/levels/');
	await tab.evaluate((all) => {
		for (const [key, text] of Object.entries(all)) localStorage.setItem(key, text);
	}, kept);
	await tab.goto('/kept/');
	await expect(tab.getByRole('heading', { name: 'Set aside' })).toBeVisible();
}

const line = (tab: Page, key: string) => tab.locator(`[data-kept="${key}"]`);

async function saved(tab: Page, act: () => Promise<void>): Promise<string> {
	const coming = tab.waitForEvent('download');
	await act();
	return readFileSync(await (await coming).path(), 'utf8');
}

// what was set aside lay in the browser's store, where nobody but a programmer could reach it
test('all that is kept and all that was set aside is listed, saved as it is, and deleted', async ({ page: tab }) => {
	await openWith(tab, { ...written, 'prep-bay.tomorrow': '1' });
	for (const id of Object.keys(KEPT) as KeptId[]) await expect(line(tab, id)).toContainText(keptWords.of[id]);
	await expect(line(tab, 'other')).toContainText(keptWords.other);
	const aside = tab.locator('section', { has: tab.locator('#set-aside') }).getByRole('listitem');
	await expect(aside).toHaveCount(7);
	const { violations } = await axe(tab);
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);

	const one = line(tab, 'prep-bay.progress.damaged');
	expect(await saved(tab, () => one.getByRole('button', { name: /^Save to a file/ }).click())).toBe('[{"bad-1":3}]');
	await one.getByRole('button', { name: /^Delete: / }).click();
	await expect(one).toBeVisible();
	await one.getByRole('button', { name: 'Delete for good' }).click();
	await expect(one).toHaveCount(0);
	await expect(aside).toHaveCount(6);
	await expect(tab.locator('.kept-here')).toBeFocused();
	const own = line(tab, 'progress');
	const text = await saved(tab, () => own.getByRole('button', { name: /^Save to a file/ }).click());
	expect(text).toBe(written[KEPT.progress.key]);
	await own.getByRole('button', { name: /^Delete: / }).click();
	await own.getByRole('button', { name: 'Delete for good' }).click();
	await expect(own).toHaveCount(0);
	expect(await tab.evaluate((key) => localStorage.getItem(key), KEPT.progress.key)).toBeNull();
	expect(await tab.evaluate(() => localStorage.getItem('prep-bay.review'))).toBe(written['prep-bay.review']);

	// another tab is heard
	const other = await tab.context().newPage();
	await other.goto('/reference/levels/');
	await other.evaluate(() => localStorage.setItem('prep-bay.review.damaged', 'more'));
	await other.evaluate(() => localStorage.removeItem('prep-bay.theme'));
	await expect(line(tab, 'theme')).toHaveCount(0);
});

test('records of the class that could not be read are listed there too, each saved or deleted', async ({
	page: tab,
}) => {
	await tab.goto('/papers/');
	await tab.evaluate(
		() =>
			new Promise<void>((done, fail) => {
				const opening = indexedDB.open('prep-bay.papers', 2);
				opening.onerror = () => fail(opening.error);
				opening.onupgradeneeded = () => {
					for (const list of ['papers', 'results', 'names', 'aside', 'counts']) opening.result.createObjectStore(list);
				};
				opening.onsuccess = () => {
					const putting = opening.result.transaction('results', 'readwrite');
					putting.objectStore('results').put({ version: 1, torn: true }, 'dead');
					putting.oncomplete = () => {
						opening.result.close();
						done();
					};
				};
			}),
	);
	await tab.reload();
	await expect(tab.getByText('1 entry kept here couldn’t be read')).toBeVisible({ timeout: 30_000 });
	await tab.goto('/kept/');
	const aside = tab.locator('li', { hasText: 'A record of the class: results dead' });
	await expect(aside).toBeVisible();
	const text = await saved(tab, () => aside.getByRole('button', { name: /^Save to a file/ }).click());
	expect(JSON.parse(text)).toEqual({ version: 1, torn: true });
	await aside.getByRole('button', { name: /^Delete: / }).click();
	await aside.getByRole('button', { name: 'Delete for good' }).click();
	await expect(aside).toHaveCount(0);
	await expect(tab.getByText('Nothing is set aside.')).toBeVisible();
});

test('a browser that keeps nothing says so, and a page with nothing kept too', async ({ page: tab }) => {
	await tab.goto('/kept/');
	await expect(tab.getByText('Nothing is kept yet.')).toBeVisible();
	await tab.addInitScript(() => {
		Object.defineProperty(window, 'localStorage', {
			get() {
				throw new DOMException('refused', 'SecurityError');
			},
		});
	});
	await tab.goto('/kept/');
	await expect(tab.getByText('This browser lets no page keep anything.')).toBeVisible();
});

test('results of a newer version are said and left alone, and a full device leads to what can be deleted', async ({
	page: tab,
}) => {
	const newer = JSON.stringify({ version: 9, kinds: {} });
	await openWith(tab, { [KEPT.progress.key]: newer });
	await tab.goto('/drills/');
	await expect(tab.getByRole('alert')).toContainText('made by a newer version of Prep Bay');
	expect(await tab.evaluate((key) => localStorage.getItem(key), KEPT.progress.key)).toBe(newer);
	await tab.evaluate(() => {
		localStorage.clear();
		localStorage.setItem('prep-bay.progress', '{"version":2,"ki');
	});
	await tab.addInitScript(() => {
		Storage.prototype.setItem = () => {
			throw new DOMException('full', 'QuotaExceededError');
		};
	});
	await tab.reload();
	await expect(tab.getByText('There’s no room left on this device.')).toBeVisible();
	await tab.getByRole('main').getByRole('link', { name: 'All that is kept here' }).click();
	await expect(line(tab, 'progress')).toBeVisible();
});
