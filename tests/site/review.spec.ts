import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { axe } from './axe.ts';
import { untilKept } from './versions.ts';

const DAY = 86_400_000;

const card = (last: number | null, due: number, state: 0 | 2) => ({
	due,
	stability: state === 2 ? 3 : 0,
	difficulty: state === 2 ? 4 : 0,
	state,
	step: 0,
	days: state === 2 ? 3 : 0,
	reps: state === 2 ? 2 : 0,
	lapses: 0,
	last,
	added: 1,
});

/** A deck with two things due, one of them new, and one known. */
const deck = () => {
	const now = Date.now();
	return JSON.stringify({
		version: 1,
		cards: {
			'last-slot@tallow-6.easy': card(now - 6 * DAY, now - DAY, 2),
			'percent-of-value@any.easy': card(null, now - 1, 0),
			'nth-address@cobble.middle': card(now - DAY, now + 9 * DAY, 2),
		},
	});
};

async function open(tab: Page, text: string | null): Promise<void> {
	// laid down from a page that reads none of it: the review may be slow, and would set aside what is damaged before it is looked at
	await tab.goto('/reference/levels/');
	await tab.evaluate((kept) => kept && localStorage.setItem('prep-bay.review', kept), text);
	await tab.goto('/review/');
	await expect(tab.locator('astro-island')).not.toHaveAttribute('ssr', '');
}

test('with nothing learnt it leads to the lessons', async ({ page: tab }) => {
	await open(tab, null);
	await expect(tab.getByRole('heading', { name: 'Nothing to go over yet' })).toBeVisible();
	await tab.getByRole('link', { name: 'To the lessons' }).click();
	await expect(tab).toHaveURL(/\/lessons\/$/);
});

test('what is due is asked by keyboard with the network off, what was asked is not due again, and a reload keeps it', async ({
	page: tab,
	context,
}) => {
	await open(tab, deck());
	// the whole site is on the device once the worker has it
	await untilKept(tab);
	await tab.reload();
	await context.setOffline(true);
	await expect(tab.getByRole('heading', { name: '2 questions due' })).toBeVisible();
	await tab.getByRole('button', { name: 'Begin' }).press('Enter');
	for (let at = 1; at <= 2; at++) {
		const where = tab.getByRole('heading', { name: new RegExp(`^${at} of 2`) });
		await expect(where).toBeFocused();
		await expect(tab.locator('.sit-ask')).toBeVisible();
		await tab.getByRole('button', { name: 'I don’t know' }).press('Enter');
		await expect(tab.locator('.sit-feedback')).toContainText('Right answer');
		await tab.getByRole('button', { name: 'Next' }).press('Enter');
	}
	await expect(tab.getByRole('heading', { name: 'Done for now' })).toBeFocused();
	await expect(tab.locator('.review-end')).toContainText('0 of 2 right.');
	await tab.getByRole('button', { name: 'Next' }).press('Enter');
	await expect(tab.getByRole('heading', { name: 'Nothing is due' })).toBeVisible();
	await context.setOffline(false);
	await tab.reload();
	await expect(tab.getByRole('heading', { name: 'Nothing is due' })).toBeVisible();
	await expect(tab.locator('.review-skills li')).toHaveCount(3);
});

test('it is carried to another device by file, and a damaged entry there loses nothing', async ({
	page: tab,
	browser,
	baseURL,
}) => {
	await open(tab, deck());
	const [download] = await Promise.all([
		tab.waitForEvent('download'),
		tab.getByRole('button', { name: 'Export to a file' }).click(),
	]);
	const file = await readFile(await download.path());
	const other = await browser.newContext({ baseURL: baseURL ?? '', serviceWorkers: 'block' });
	const there = await other.newPage();
	await open(there, '{"version":1,"cards":{"footprint@any.easy":{"due":"soon"}}}');
	await expect(there.getByRole('alert')).toContainText(
		'1 entry kept on this device couldn’t be read and was set aside',
	);
	await there
		.locator('input[type=file]')
		.setInputFiles({ name: 'review.json', mimeType: 'application/json', buffer: file });
	await expect(there.locator('.keeping')).toContainText('Taken in: 3 things learnt.');
	await there
		.locator('input[type=file]')
		.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('<b>') });
	await expect(there.locator('.keeping')).toContainText('This is no review file of Prep Bay, or it’s damaged.');
	await expect(there.locator('.review-skills li')).toHaveCount(3);
	await there.getByRole('button', { name: 'Clear', exact: true }).click();
	await there.getByRole('dialog').getByRole('button', { name: 'Clear it' }).click();
	await expect(there.getByRole('heading', { name: 'Nothing to go over yet' })).toBeVisible();
	expect(await there.evaluate(() => localStorage.getItem('prep-bay.review'))).toBe('{"version":1,"cards":{}}');
	await other.close();
});

for (const colorScheme of ['dark', 'light'] as const)
	test(`axe finds nothing on it at rest or at a question, ${colorScheme}`, async ({ browser, baseURL }) => {
		const context = await browser.newContext({
			colorScheme,
			viewport: { width: 390, height: 844 },
			baseURL: baseURL ?? '',
			serviceWorkers: 'block',
		});
		const tab = await context.newPage();
		await open(tab, deck());
		const clean = async () => {
			const { violations } = await axe(tab);
			expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
		};
		await clean();
		await tab.getByRole('button', { name: 'Begin' }).click();
		await tab.getByRole('button', { name: 'I don’t know' }).click();
		await expect(tab.locator('.sit-feedback')).toBeVisible();
		await clean();
		await context.close();
	});
