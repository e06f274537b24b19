import { expect, type Page, test } from '@playwright/test';
import { axe } from '../../../site/axe.ts';
import { looks } from '../../../site/looks.ts';
import { bring, drawer, layOut, openFresh, take } from './open.ts';

test.use({ serviceWorkers: 'block' });

async function clean(tab: Page, what: string): Promise<void> {
	const { violations, passes } = await axe(tab);
	expect(violations.map(({ id, nodes }) => `${what}: ${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
	expect(passes.length).toBeGreaterThan(10);
}

for (const { colorScheme, width } of looks) {
	test(`axe finds nothing on the bench at work, ${colorScheme}, ${width} wide`, async ({ browser, baseURL }) => {
		const context = await browser.newContext({
			colorScheme,
			viewport: { width, height: 844 },
			baseURL: baseURL ?? '',
			serviceWorkers: 'block',
		});
		const tab = await context.newPage();
		await openFresh(tab);
		await layOut(tab, 'Mixed panels');
		await clean(tab, 'mixed panels');

		for (const id of ['desk', 'cables', 'remote', 'sound', 'breaker', 'clock', 'log']) {
			await drawer(tab, id);
			await clean(tab, id);
		}
		const breaker = await drawer(tab, 'breaker');
		await breaker.getByRole('combobox', { name: 'What to break' }).selectOption('cable:cable-1');
		await breaker.getByRole('switch', { name: 'Data minus' }).click();
		await clean(tab, 'a fault in');
		await drawer(tab, 'cables');
		await tab.locator('.row [data-port="wash-2:in"]').click();
		await expect(tab.locator('.hand')).toBeVisible();
		await drawer(tab, 'desk');
		await tab.getByRole('textbox', { name: 'Master' }).fill('much');
		await tab.getByRole('textbox', { name: 'Master' }).press('Enter');
		await clean(tab, 'a hand full, an entry wrong');

		await tab.getByRole('button', { name: 'Why does Bar 1 look like that?' }).click();
		await expect(tab.getByRole('dialog').locator('.trail')).toBeVisible();
		await clean(tab, 'a reason trail');
		await tab.keyboard.press('Escape');

		await bring(tab, 'Panel');
		await take(tab, 'Old wash').click();
		await expect(tab.locator('.dip').first()).toBeVisible();
		await clean(tab, 'switches');
		await tab.getByRole('button', { name: 'Set up' }).click();
		await expect(tab.getByRole('dialog')).toBeVisible();
		await clean(tab, 'laying out');
		await tab.getByRole('button', { name: 'Clear the bench' }).click();
		await clean(tab, 'an empty bench');
		await context.close();
	});
}
