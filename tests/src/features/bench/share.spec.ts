import { expect, type Page, test } from '@playwright/test';
import { readSheet } from '../../../../shared/sheet/index.ts';
import { linkOf } from '../../../../src/features/rig/index.ts';
import { drawer, key, layOut, lightOf, openFresh, wash } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

const lights = (tab: Page) => tab.locator('.card-light').allTextContents();

test('a link opened elsewhere gives the same rig', async ({ page: tab, browser, baseURL }) => {
	await openFresh(tab);
	await layOut(tab, 'Mixed panels');
	const desk = await drawer(tab, 'desk');
	await desk.getByRole('textbox', { name: 'Blue, channel 6', exact: true }).fill('255');
	await tab.keyboard.press('Enter');
	await key(tab, 'Down').click();
	await key(tab, 'Set').click();
	await tab.locator('.row [data-port="bar-1:out"]').click();
	await tab.getByRole('button', { name: 'Take the cable away' }).click();
	// a second after its data has gone it goes dark; from then on nothing changes by itself
	await expect(lightOf(tab, 'Old wash')).toHaveText('dark');
	const before = await lights(tab);
	const face = await tab.locator('.display').textContent();
	await tab.getByRole('button', { name: 'Share' }).click();
	const field = tab.getByRole('textbox', { name: 'Link' });
	await expect(field).toHaveValue(/#rig=1\./);
	const link = await field.inputValue();

	const context = await browser.newContext({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });
	const other = await context.newPage();
	await other.goto(link);
	await expect(other.locator('.card').first()).toBeVisible();
	expect(await lights(other)).toEqual(before);
	expect(await other.locator('.display').textContent()).toBe(face);
	await expect(other.locator('.row [data-port="bar-1:out"]')).toHaveAccessibleName('Bar 1, data out: free');
	// from here it is kept there: the address is plain, and loading again keeps what is done since
	expect(other.url()).toBe(`${baseURL}/bench/`);
	await other.getByRole('switch', { name: 'Power switch' }).click();
	await expect(lightOf(other, 'Wash 1')).toHaveText('dark');
	await other.reload();
	await expect(lightOf(other, 'Wash 1')).toHaveText('dark');
	await context.close();
});

for (const [what, fragment] of [
	['cut short', '#rig=1.tVXBctsgEP0VD2clY4Gs2vqC'],
	['of junk', '#rig=1.%%%'],
	['of no rig', '#rig='],
	['from another version', '#rig=7.abcd'],
] as const) {
	test(`a link ${what} opens an empty bench with one sentence, and leaves the person’s own alone`, async ({
		page: tab,
	}) => {
		const errors: string[] = [];
		tab.on('pageerror', (error) => errors.push(error.message));
		await openFresh(tab);
		await layOut(tab, 'Two universes');
		await expect(tab.locator('.card')).toHaveCount(5);
		await tab.waitForTimeout(1000);
		await tab.goto('about:blank');
		await tab.goto(`/bench/${fragment}`);
		await expect(tab.getByRole('alert').filter({ hasText: 'The bench is empty for now.' })).toBeVisible();
		await expect(tab.getByText('There’s nothing on the bench.')).toBeVisible();
		await expect(tab.locator('.card')).toHaveCount(0);
		await tab.getByRole('button', { name: 'Bring mine back' }).click();
		await expect(tab.locator('.card')).toHaveCount(5);
		expect(errors).toEqual([]);
	});
}

test('a link whose insides do not fit together says so in one sentence', async ({ page: tab }) => {
	const sheet = readSheet({ version: 1, name: 'x', fixtures: [wash(1)] });
	const forged = { ...sheet, terminators: ['desk:a'] };
	await tab.goto(`/bench/${await linkOf({ sheet: forged, log: [] })}`);
	await expect(tab.getByText('This link holds no rig that fits together')).toBeVisible();
	await expect(tab.getByText('There’s nothing on the bench.')).toBeVisible();
	await layOut(tab, 'One battery wash');
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');
});

test('a log that fits no rig, or asks for years of work, is refused and not played', async ({ page: tab }) => {
	const sheet = readSheet({ version: 1, name: 'x', fixtures: [wash(1)] });
	await tab.goto(`/bench/${await linkOf({ sheet, log: [{ type: 'desk.master', level: 3 }] })}`);
	await expect(tab.getByText('This link holds no rig that fits together')).toBeVisible();
	await tab.goto('about:blank');
	const held = { type: 'key.down', fixture: 'wash-1', key: 'up' } as const;
	const log = Array.from({ length: 300 }, () => ({ type: 'clock.wait', ms: 2_000_000_000 }) as const);
	await tab.goto(`/bench/${await linkOf({ sheet, log: [held, ...log] })}`);
	// whether it is played or refused, the page answers
	await expect(tab.locator('.card, .bench-empty').first()).toBeVisible();
});

test('a link pressed while the bench is open opens there', async ({ page: tab }) => {
	await openFresh(tab);
	await key(tab, 'Down').click();
	await expect.poll(() => tab.evaluate(() => localStorage.getItem('prep-bay.bench'))).not.toBeNull();
	const sheet = readSheet({ version: 1, name: 'x', fixtures: [wash(1), wash(2)] });
	const fragment = await linkOf({ sheet, log: [] });
	await tab.evaluate((hash) => {
		location.hash = hash;
	}, fragment);
	await expect(tab.locator('li.card')).toHaveCount(2);
	await tab.getByRole('button', { name: 'Bring mine back' }).click();
	await expect(tab.locator('li.card')).toHaveCount(4);
	await expect(tab.locator('.display')).toHaveText('DATA');
});

test('the bench is kept on the device, and a damaged one is set aside and said', async ({ page: tab }) => {
	await openFresh(tab);
	await layOut(tab, 'A leader and three followers');
	await tab.reload();
	await expect(lightOf(tab, 'Wash 1')).toContainText('changing by itself');
	await tab.evaluate(() => {
		const kept = localStorage.getItem('prep-bay.bench') ?? '';
		localStorage.setItem('prep-bay.bench', kept.slice(0, kept.length / 2));
		// nothing may write over it on the way out
		Storage.prototype.setItem = () => undefined;
	});
	await tab.reload();
	await expect(tab.getByRole('alert').filter({ hasText: 'has been set aside' })).toBeVisible();
	await expect(tab.locator('li.card')).toHaveCount(4);
	const aside = await tab.evaluate(() =>
		Object.entries(localStorage).flatMap(([key, text]) =>
			key.startsWith('prep-bay.bench.aside.') ? [String(text)] : [],
		),
	);
	expect(aside).toHaveLength(1);
	expect(JSON.parse(aside[0] ?? 'null')).toMatchObject({ why: 'damaged', text: expect.stringContaining('"version"') });
});

test('with no store at all the bench works, and says that nothing is kept', async ({ page: tab }) => {
	await tab.addInitScript(() => {
		Object.defineProperty(window, 'localStorage', {
			get() {
				throw new DOMException('refused', 'SecurityError');
			},
		});
	});
	await openFresh(tab);
	await tab.getByRole('switch', { name: 'Power switch' }).click();
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');
	await expect(tab.getByText('This device keeps nothing for this page')).toBeVisible();
});
