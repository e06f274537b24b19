import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, expect, type Page, test } from '@playwright/test';
import { readRecipe } from '../../../../../../shared/paper/index.ts';
import { paperFragment } from '../../../../../../src/features/papers/exchange/link.ts';
import { qrDrawing } from '../../../../../../src/features/papers/exchange/qr.ts';
import { noisePng } from './noise.ts';

// Symptom: a photo of gravel, chosen by mistake, froze the page for half a minute. Cause: it was looked at in five sizes on the
// page’s own thread, with no end and no way to stop.

// as a file: handed over as bytes, the test itself would hold up the page
const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-noise-'));
const NOISE = path.join(folder, 'gravel.png');
test.beforeAll(() => writeFileSync(NOISE, noisePng(1600, 1200)));
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

const paperCode = () => paperFragment({ recipe: readRecipe({ version: 1, title: 'Friday', count: 2 }), seed: 3 });

/** Longest the page may be away at a time, ms; and how long a picture is looked at for, ms, with some to spare on a busy machine. */
const LONGEST_TASK = 200;
const LONGEST_LOOK = 20_000;

async function opened(browser: Browser, baseURL: string | undefined, at: string): Promise<Page> {
	const context = await browser.newContext({ serviceWorkers: 'block', baseURL: baseURL ?? '' });
	const tab = await context.newPage();
	await tab.goto(at);
	await expect(tab.locator('input[type="file"]')).toBeVisible();
	await tab.waitForLoadState('networkidle');
	await tab.evaluate(() => {
		const tasks: number[] = [];
		Reflect.set(window, 'tasks', tasks);
		new PerformanceObserver((list) => {
			for (const { duration } of list.getEntries()) tasks.push(duration);
		}).observe({ type: 'longtask' });
	});
	return tab;
}

const longest = (tab: Page) => tab.evaluate(() => Math.max(0, ...(Reflect.get(window, 'tasks') as number[])));

for (const [who, at, said] of [
	['trainer', '/papers/', '.gather-refused'],
	['learner', '/papers/sit/', '[role="alert"]'],
] as const) {
	test(`a picture of noise never holds up the ${who}’s page, comes to an end, and gives a sentence`, async ({
		browser,
		baseURL,
	}) => {
		const tab = await opened(browser, baseURL, at);
		const began = Date.now();
		await tab.locator('input[type="file"]').setInputFiles(NOISE);
		await expect(tab.locator(said).filter({ hasText: 'QR code' })).toContainText('Take it again', {
			timeout: LONGEST_LOOK + 40_000,
		});
		const took = Date.now() - began;
		const away = await longest(tab);
		console.log(`${who}: a picture of noise took ${took} ms; the page was away ${Math.round(away)} ms at most`);
		expect(away).toBeLessThan(LONGEST_TASK);
		expect(took).toBeLessThan(LONGEST_LOOK);
	});

	test(`looking at a picture can be stopped on the ${who}’s page, by keyboard too, and the next thing works`, async ({
		browser,
		baseURL,
	}) => {
		const tab = await opened(browser, baseURL, at);
		const paper = await paperCode();
		await tab.locator('input[type="file"]').setInputFiles(NOISE);
		const stop = tab.getByRole('button', { name: 'Stop reading', exact: true });
		await stop.focus();
		await tab.keyboard.press('Enter');
		await expect(stop).toHaveCount(0);
		await expect(tab.locator(said).filter({ hasText: 'stopped' })).toBeVisible();
		expect(await longest(tab)).toBeLessThan(LONGEST_TASK);
		await tab.locator('textarea').last().fill(paper);
		await tab.getByRole('button', { name: /^(Take them in|Open the quiz)$/ }).click();
		await expect(tab.getByText('‘Friday’ is').first()).toBeAttached();
	});
}

test('what a camera shows is looked at off the page: first noise, then a code, which is read', async ({
	browser,
	baseURL,
}) => {
	const tab = await opened(browser, baseURL, '/papers/sit/');
	await tab.evaluate(
		({ size, path }) => {
			// a film drawn by hand, for browsers with no camera to give
			const canvas = document.createElement('canvas');
			[canvas.width, canvas.height] = [960, 720];
			const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
			const gravel = pen.createImageData(960, 720);
			// the low-order generator of Park and Miller 1988
			let seed = 1;
			for (let at = 0; at < gravel.data.length; at++) {
				if (at % 4 === 0) seed = (seed * 48_271) % 2_147_483_647;
				gravel.data[at] = at % 4 === 3 ? 255 : seed % 256;
			}
			const scale = 680 / size;
			const draw = () => {
				pen.setTransform(1, 0, 0, 1, 0, 0);
				if (Reflect.get(window, 'isCode') === true) {
					pen.fillStyle = '#ddd';
					pen.fillRect(0, 0, 960, 720);
					pen.setTransform(scale, 0, 0, scale, 140, 20);
					pen.fillStyle = '#222';
					pen.fill(new Path2D(path));
				} else pen.putImageData(gravel, 0, 0);
			};
			draw();
			setInterval(draw, 100);
			navigator.mediaDevices.getUserMedia = async () => canvas.captureStream(10);
		},
		qrDrawing(`http://venue.test/papers/sit/${await paperCode()}`),
	);
	await tab.evaluate(() => (Reflect.get(window, 'tasks') as number[]).splice(0));
	await tab.getByRole('button', { name: 'Read a QR code with the camera' }).click();
	await expect(tab.locator('.scan-view[data-on="true"]')).toBeVisible();
	await tab.waitForTimeout(4000);
	expect(await longest(tab)).toBeLessThan(LONGEST_TASK);
	await tab.evaluate(() => Reflect.set(window, 'isCode', true));
	await expect(tab.getByRole('button', { name: 'Begin', exact: true })).toBeVisible({ timeout: LONGEST_LOOK });
});
