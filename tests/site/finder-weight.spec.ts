import { expect, test } from '@playwright/test';
import { tap } from './finder/hidden.ts';
import { told, weighScripts } from './weigh.ts';

test.use({ serviceWorkers: 'block' });

// kB of 1000 bytes
const page = 24;
const worker = 68;
const reading = 11;

test('the finder keeps to its weight: the page at once, the worker with the first tap, what reads with a kept walk', async ({
	page: tab,
	context,
}) => {
	const total = weighScripts(context);
	await tab.goto('/finder/');
	await tab.waitForLoadState('networkidle');
	const atRest = await total();
	await tap(tab.getByRole('button', { name: '4 fixtures', exact: true }));
	await tap(tab.locator('[data-choice="desk"]'));
	await tap(tab.locator('[data-choice="tallow-6"]'));
	await tap(tab.locator('[data-choice="wash-2"]'));
	await tap(tab.locator('[data-choice="dark"]'));
	await expect(tab.locator('[data-check]')).toBeVisible();
	const walking = await total();
	await tab.reload();
	await expect(tab.locator('[data-check]')).toBeVisible();
	const resumed = await total();
	console.log(
		`finder ${told(atRest)} of script, ${told(walking)} with the worker, ${told(resumed)} once a walk is taken up again`,
	);
	expect(walking.sent).toBeGreaterThan(atRest.sent + 20);
	expect(atRest.sent).toBeLessThanOrEqual(page);
	expect(walking.sent).toBeLessThanOrEqual(page + worker);
	expect(resumed.sent).toBeLessThanOrEqual(page + worker + reading);
});
