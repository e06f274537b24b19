import { expect, type Page, test } from '@playwright/test';

test.use({ serviceWorkers: 'block', colorScheme: 'dark' });

const scheme = (tab: Page) => tab.evaluate(() => getComputedStyle(document.body).backgroundColor);
const dark = 'rgb(23, 25, 28)';
const light = 'rgb(216, 213, 204)';
const backstage = 'rgb(11, 12, 13)';

test('the look follows the device until one is chosen, and the choice is kept', async ({ page: tab }) => {
	await tab.goto('/');
	expect(await scheme(tab)).toBe(dark);
	await tab.emulateMedia({ colorScheme: 'light' });
	expect(await scheme(tab)).toBe(light);
	await tab.getByRole('radio', { name: 'Dark' }).check();
	expect(await scheme(tab)).toBe(dark);
	await tab.goto('/about/');
	expect(await scheme(tab)).toBe(dark);
	await expect(tab.getByRole('radio', { name: 'Dark' })).toBeChecked();
	await tab.getByRole('radio', { name: 'As the device' }).check();
	expect(await scheme(tab)).toBe(light);
	await tab.reload();
	expect(await scheme(tab)).toBe(light);
});

test('the look for backstage is near black whatever the device asks for, and is kept', async ({ page: tab }) => {
	await tab.emulateMedia({ colorScheme: 'light' });
	await tab.goto('/');
	await tab.getByRole('radio', { name: 'Backstage' }).check();
	expect(await scheme(tab)).toBe(backstage);
	await tab.goto('/about/');
	expect(await scheme(tab)).toBe(backstage);
	await expect(tab.getByRole('radio', { name: 'Backstage' })).toBeChecked();
	await tab.emulateMedia({ media: 'print' });
	expect(await scheme(tab), 'paper is white all the same').toBe('rgb(255, 255, 255)');
});

test('the switch works by keyboard', async ({ page: tab }) => {
	await tab.goto('/');
	await tab.getByRole('radio', { name: 'As the device' }).focus();
	await tab.keyboard.press('ArrowRight');
	await expect(tab.getByRole('radio', { name: 'Light' })).toBeChecked();
	expect(await scheme(tab)).toBe(light);
});

test('a choice stands before the first paint', async ({ page: tab }) => {
	await tab.addInitScript(() => localStorage.setItem('prep-bay.theme', 'light'));
	// with every later script held back, only what stands early in the page can have set it
	await tab.route('**/*.js', () => undefined);
	await tab.goto('/', { waitUntil: 'commit' });
	await tab.waitForFunction(() => document.body);
	expect(await tab.evaluate(() => document.documentElement.dataset['theme'])).toBe('light');
});

test('rubbish in the store is taken for no choice', async ({ page: tab }) => {
	await tab.addInitScript(() => localStorage.setItem('prep-bay.theme', '<b>'));
	await tab.goto('/');
	expect(await scheme(tab)).toBe(dark);
	await expect(tab.getByRole('radio', { name: 'As the device' })).toBeChecked();
});

test('with no store at all the switch still switches', async ({ page: tab }) => {
	const errors: string[] = [];
	tab.on('pageerror', (error) => errors.push(error.message));
	await tab.addInitScript(() => {
		Object.defineProperty(window, 'localStorage', {
			get() {
				throw new DOMException('refused', 'SecurityError');
			},
		});
	});
	await tab.goto('/');
	await tab.getByRole('radio', { name: 'Light' }).check();
	expect(await scheme(tab)).toBe(light);
	expect(errors).toEqual([]);
});
