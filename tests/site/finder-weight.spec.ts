import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { tap } from './finder/hidden.ts';

// kB here is 1000 bytes, each file compressed by itself with gzip: what a plain host sends.

test.use({ serviceWorkers: 'block' });

const page = 27;
const worker = 86;
const reading = 12;

test('the finder keeps to its weight: the page at once, the worker with the first tap, what reads with a kept walk', async ({
	page: tab,
	context,
}) => {
	const scripts = new Map<string, number>();
	context.on('response', async (response) => {
		const { pathname } = new URL(response.url());
		if (pathname.endsWith('.js')) scripts.set(pathname, gzipSync(await response.body(), { level: 9 }).length / 1000);
	});
	const total = () => [...scripts.values()].reduce((sum, kB) => sum + kB, 0);
	await tab.goto('/finder/');
	await tab.waitForLoadState('networkidle');
	const atRest = total();
	await tap(tab.getByRole('button', { name: '4 fixtures', exact: true }));
	await tap(tab.locator('[data-choice="desk"]'));
	await tap(tab.locator('[data-choice="tallow-6"]'));
	await tap(tab.locator('[data-choice="wash-2"]'));
	await tap(tab.locator('[data-choice="dark"]'));
	await expect(tab.locator('[data-check]')).toBeVisible();
	const walking = total();
	await tab.reload();
	await expect(tab.locator('[data-check]')).toBeVisible();
	const resumed = total();
	console.log(
		`finder ${atRest.toFixed(1)} kB of script, ${walking.toFixed(1)} with the worker, ${resumed.toFixed(1)} once a walk is taken up again`,
	);
	expect(scripts.size).toBeGreaterThan(3);
	expect(atRest).toBeLessThanOrEqual(page);
	expect(walking).toBeLessThanOrEqual(page + worker);
	expect(resumed).toBeLessThanOrEqual(page + worker + reading);
});
