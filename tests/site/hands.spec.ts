import { expect, type Page, test } from '@playwright/test';
import { openFresh } from '../src/features/bench/open.ts';

// a phone in the hand: touched, and with the two things of the device that a page may ask for
test.use({ serviceWorkers: 'block', hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

declare global {
	interface Window {
		/** Locks on the screen that are held, and buzzes so far. */
		asked: { held: number; buzzes: number };
	}
}

/** Stands in for the device's own: a machine for tests has neither. */
async function withDevice(tab: Page, { refuses = false } = {}): Promise<string[]> {
	const errors: string[] = [];
	tab.on('pageerror', (error) => errors.push(error.message));
	await tab.addInitScript((no) => {
		window.asked = { held: 0, buzzes: 0 };
		const request = () => {
			if (no) return Promise.reject(new DOMException('low battery', 'NotAllowedError'));
			window.asked.held += 1;
			return Promise.resolve({
				release: () => {
					window.asked.held -= 1;
					return Promise.resolve();
				},
			});
		};
		Object.defineProperty(navigator, 'wakeLock', { value: { request } });
		Object.defineProperty(navigator, 'vibrate', {
			value: () => {
				window.asked.buzzes += 1;
				return true;
			},
		});
	}, refuses);
	return errors;
}
const asked = (tab: Page) => tab.evaluate(() => window.asked);
const ready = (tab: Page) => expect(tab.locator('[data-ready]').first()).toBeVisible({ timeout: 30_000 });

async function tickOff(tab: Page): Promise<void> {
	await tab.goto('/rig/');
	await ready(tab);
	await tab.getByRole('button', { name: 'Paste a list' }).tap();
	await tab.getByLabel('Your list').fill('Fixture\tName\tMode\tPlace\nTallow 6\tFloor 1\t9 ch\t0');
	await tab.getByRole('button', { name: 'Add 1 fixture' }).tap();
	await tab.getByRole('button', { name: 'Tick off' }).tap();
	await tab.getByLabel('Your initials').fill('ab');
	await tab.getByRole('button', { name: 'Start ticking' }).tap();
	await expect(tab.locator('.tick-list > li')).toHaveCount(1);
}

test('the screen stays on while a rig is ticked off, and no longer; a tick is felt', async ({ page: tab }) => {
	const errors = await withDevice(tab);
	await tickOff(tab);
	await expect.poll(() => asked(tab)).toEqual({ held: 1, buzzes: 0 });
	const bar = tab.locator('.tick-bar');
	await bar.getByRole('button', { name: /^Show it/ }).tap();
	expect((await asked(tab)).buzzes, 'what only leads on is not felt').toBe(0);
	await bar.getByRole('button', { name: /^Tick: / }).tap();
	expect((await asked(tab)).buzzes).toBe(1);
	await tab.locator('.tick-step').first().tap();
	expect((await asked(tab)).buzzes).toBe(2);
	await tab.getByRole('button', { name: 'Plan', exact: true }).tap();
	await expect.poll(() => asked(tab)).toEqual({ held: 0, buzzes: 2 });
	expect(errors).toEqual([]);
});

test('keys are felt, until that is switched off for good', async ({ page: tab }) => {
	await withDevice(tab);
	await openFresh(tab);
	const key = tab.locator('.key').first();
	await key.tap();
	expect((await asked(tab)).buzzes).toBe(1);
	expect((await asked(tab)).held, 'a bench is played with: its screen goes dark like any').toBe(0);
	await tab.getByLabel('Keys and ticks buzz').uncheck();
	await key.tap();
	expect((await asked(tab)).buzzes).toBe(1);
	await tab.reload();
	await expect(key).toBeVisible();
	await expect(tab.getByLabel('Keys and ticks buzz')).not.toBeChecked();
	await key.tap();
	expect((await asked(tab)).buzzes).toBe(0);
});

test('a device that won’t keep its screen on goes on as ever', async ({ page: tab }) => {
	const errors = await withDevice(tab, { refuses: true });
	await tickOff(tab);
	await tab
		.locator('.tick-bar')
		.getByRole('button', { name: /^Show it/ })
		.tap();
	await expect(tab.locator('.tick-step').first()).toBeVisible();
	expect(errors).toEqual([]);
});

test('where nothing can buzz, no switch is offered', async ({ page: tab }) => {
	await tab.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'vibrate'));
	await tab.goto('/');
	await expect(tab.getByRole('group', { name: 'Look' })).toBeVisible();
	await expect(tab.getByLabel('Keys and ticks buzz')).toBeHidden();
});
