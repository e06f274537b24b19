import { expect, type Locator, type Page, test } from '@playwright/test';
import { display, key, lightOf, openSheet, take, wash } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

/** Moves the focus by Tab, as a person would, until it is there. */
async function tabTo(tab: Page, target: Locator, keyName: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
	for (let i = 0; i < 150; i++) {
		await tab.keyboard.press(keyName);
		if (await target.evaluate((element) => element === document.activeElement)) return;
	}
	throw new Error(`no ${keyName} leads to ${target}`);
}

test('mode, address, desk level and reason trail, by keyboard alone', async ({ page: tab }) => {
	await openSheet(tab, {
		version: 1,
		name: 'Lantern Row Hall',
		fixtures: [wash(1, { work: 'line' })],
		desk: {
			name: 'Prep desk',
			outputs: [{ id: 'a', universe: 1 }],
			patch: [{ fixture: 'wash-1', universe: 1, address: 5, mode: 'short' }],
		},
		cables: [{ id: 'cable-1', kind: 'data', length: 5, from: 'desk:a', to: 'wash-1:in' }],
	});
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');

	const panel = tab.getByRole('group', { name: 'Display of Wash 1' });
	await tabTo(tab, panel);
	for (const pressed of ['ArrowDown', 'Enter', 'Enter']) await tab.keyboard.press(pressed);
	for (let i = 0; i < 4; i++) await tab.keyboard.press('ArrowUp');
	await tab.keyboard.press('Enter');
	for (const pressed of ['ArrowDown', 'Enter', 'ArrowDown']) await tab.keyboard.press(pressed);
	expect(await display(tab)).toBe('SL 6');
	await tab.keyboard.press('Enter');
	await expect(tab.getByText('Display reads MODE')).toBeAttached();
	await tab.keyboard.press('Escape');
	expect(await display(tab)).toBe('DATA');
	// held: the arrow repeats, and its release ends it
	await tab.keyboard.down('ArrowDown');
	await expect.poll(() => display(tab)).toBe('SRCE');
	await tab.keyboard.up('ArrowDown');

	const amber = tab.getByRole('textbox', { name: 'Amber, channel 6' });
	await expect(amber).toBeVisible();
	await tabTo(tab, amber);
	await tab.keyboard.type('50%');
	await tab.keyboard.press('Enter');
	await expect(amber).toHaveValue('128 (50 %)');
	await expect(lightOf(tab, 'Wash 1')).toContainText('amber');
	await expect(tab.locator('[role="status"]').filter({ hasText: 'Wash 1 came up' })).toBeAttached();
	await tab.keyboard.press('Tab');
	await expect(tab.getByRole('slider', { name: 'Slider of Amber, channel 6' })).toBeFocused();
	await tab.keyboard.press('End');
	await expect(amber).toHaveValue('255 (100 %)');

	const why = tab.locator('.card-why');
	await tabTo(tab, why, 'Shift+Tab');
	await tab.keyboard.press('Enter');
	await expect(tab.getByRole('dialog')).toContainText('It reads channels 5 to 10');
	await tab.keyboard.press('Escape');
	await expect(tab.getByRole('dialog')).toHaveCount(0);
	await expect(why).toBeFocused();
});

test('a cable is plugged and pulled by keyboard, at the sockets and in the list', async ({ page: tab }) => {
	await openSheet(tab, {
		version: 1,
		name: 'Lantern Row Hall',
		fixtures: [wash(1, { work: 'line' }), wash(2, { work: 'line' })],
	});
	await tabTo(tab, tab.locator('.row [data-port="wash-1:out"]'));
	await tab.keyboard.press('Enter');
	await expect(tab.getByText('A 5 m data cable is plugged into Wash 1, data out.')).toBeVisible();
	await tabTo(tab, tab.locator('.row [data-port="wash-2:in"]'));
	await tab.keyboard.press(' ');
	await expect(tab.locator('.row [data-port="wash-2:in"]')).toHaveAccessibleName('Wash 2, data in: cable 1');
	await expect(tab.locator('.hand')).toHaveCount(0);

	await tabTo(tab, tab.locator('.tool-tab[data-of="cables"]'));
	await tab.keyboard.press('Enter');
	const unplug = tab.getByRole('button', { name: 'Unplug cable 1 from Wash 2, data in' });
	await expect(unplug).toBeVisible();
	await tabTo(tab, unplug);
	await tab.keyboard.press('Enter');
	await expect(tab.locator('.row [data-port="wash-2:in"]')).toHaveAccessibleName('Wash 2, data in: free');
	// symptom: after each of these the focus was at the top of the page. cause: what had it was gone, or switched off
	await expect(tab.locator('.cable-lines select')).toBeFocused();
	await tabTo(tab, tab.getByRole('button', { name: 'Take away cable 1' }));
	await tab.keyboard.press('Enter');
	await expect(tab.getByText('No cables yet.')).toBeVisible();
	await expect(tab.locator('.cable-list :focus')).toHaveCount(1);

	const [from, to] = [tab.locator('.lay select').first(), tab.locator('.lay select').nth(1)];
	await from.selectOption('wash-1:out');
	await to.selectOption('wash-2:in');
	const lay = tab.locator('.lay button').first();
	await lay.focus();
	await tab.keyboard.press('Enter');
	await expect(tab.locator('.cable-lines li')).toHaveCount(1);
	await expect(tab.locator('.cable-list :focus')).toHaveCount(1);
	// left by a person, it is left
	await tab.getByRole('heading', { level: 1 }).click();
	await tab.waitForTimeout(300);
	await expect(tab.locator('.cable-list :focus')).toHaveCount(0);
});

// from the first of 24 cards it was 96 stops
test('from a card to its keys it is eight stops of Tab at most, however long the row', async ({ page: tab }) => {
	await openSheet(tab, {
		version: 1,
		name: 'Lantern Row Hall',
		fixtures: Array.from({ length: 24 }, (_, i) => wash(i + 1)),
	});
	for (const name of ['Wash 1', 'Wash 24']) {
		await take(tab, name).focus();
		await tab.keyboard.press('Enter');
		await expect(tab.locator('.back').getByRole('heading', { name, exact: true })).toBeVisible();
		await tab.keyboard.press('Tab');
		await expect(tab.getByRole('button', { name: 'To its panel' })).toBeFocused();
		await tab.keyboard.press('Enter');
		await expect(tab.getByRole('group', { name: `Display of ${name}` })).toBeFocused();
		let stops = 1;
		for (; stops <= 8; stops++) {
			await tab.keyboard.press('Tab');
			if (await key(tab, 'Set').evaluate((element) => element === document.activeElement)) break;
		}
		expect(stops).toBeLessThanOrEqual(7);
	}
});
