import { expect, test } from '@playwright/test';

// a laptop's page at 400 percent, and a phone on its side with its keyboard up (WCAG 2.2, 1.4.10)
test.use({ serviceWorkers: 'block', viewport: { width: 320, height: 256 } });

// the bar took 125 of 256 pixels, and 160 with a hint: its keys and the hint stood in three rows
test('on a low glass a drill’s bar leaves room for the drill', async ({ page: tab }) => {
	await tab.goto('/drills/do/#kind=loss-setting&seed=15');
	await tab.getByRole('button', { name: /^Begin/ }).click();
	const bar = tab.locator('.thumb-bar');
	await expect(bar).toBeVisible();
	const heightOf = async () => (await bar.boundingBox())?.height ?? 0;
	expect(await heightOf()).toBeLessThanOrEqual(256 / 4);

	await bar.getByRole('button', { name: 'Hint', exact: true }).click();
	await expect(bar.locator('.drill-hint')).toBeVisible();
	expect(await heightOf()).toBeLessThanOrEqual(256 * 0.42);
	// nothing in it is cut off for good, or too small for a finger
	for (const button of await bar.getByRole('button').all()) {
		const { x = -1, width = 999, height = 0 } = (await button.boundingBox()) ?? {};
		expect(height).toBeGreaterThanOrEqual(48);
		expect(x).toBeGreaterThanOrEqual(0);
		expect(x + width).toBeLessThanOrEqual(320);
	}
	expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);

	// a key that is reached by Tab is not under the bar
	const key = tab.locator('.panel').getByRole('button', { name: 'Set', exact: true });
	await key.focus();
	const { y = 999, height = 0 } = (await key.boundingBox()) ?? {};
	expect(y + height).toBeLessThanOrEqual((await bar.boundingBox())?.y ?? 0);
	expect(y).toBeGreaterThanOrEqual(0);
});
