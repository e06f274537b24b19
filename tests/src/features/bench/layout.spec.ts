import { expect, type Locator, type Page, test } from '@playwright/test';
import { bring, drawer, key, layOut, openFresh, take } from './open.ts';

test.use({ serviceWorkers: 'block' });

/** Where something ends, in pixels from the top of the glass. */
async function endOf(it: Locator): Promise<number> {
	const box = await it.boundingBox();
	if (!box) throw new Error(`${it} is not drawn`);
	return box.y + box.height;
}

const scrolled = (tab: Page): Promise<number> => tab.evaluate(() => scrollY);

async function beginDrill(tab: Page, kind: string, seed: number): Promise<void> {
	await tab.goto(`/drills/do/#kind=${kind}&seed=${seed}`);
	await tab.getByRole('button', { name: /^Begin/ }).click();
	await expect(tab.locator('.stage')).toBeVisible();
}

test.describe('1280 by 800', () => {
	test.use({ viewport: { width: 1280, height: 800 } });

	// the row ended at 928 and the desk was a drawer below it
	test('wall, row, the panel in hand and its faders are seen at once', async ({ page: tab }) => {
		await openFresh(tab);
		await expect(tab.locator('.strip').last()).toBeVisible();
		expect(await scrolled(tab)).toBe(0);
		for (const part of ['.wall', '.row', '.case', '.case .socket', '.case .toggle'])
			expect.soft(await endOf(tab.locator(part).first()), part).toBeLessThanOrEqual(800);
		expect(await endOf(tab.locator('.strips').first().locator('.strip').last())).toBeLessThanOrEqual(800);
		await expect(tab.locator('.sheet-tabs')).toBeHidden();
	});

	test('one tool is open at a time, beside the faders', async ({ page: tab }) => {
		await openFresh(tab);
		for (const id of ['cables', 'remote', 'sound', 'breaker', 'clock', 'log']) {
			await drawer(tab, id);
			await expect(tab.locator('.tools [data-tool]').filter({ visible: true })).toHaveCount(1);
			await expect(tab.locator('[data-tool="desk"]')).toBeVisible();
		}
		await tab.locator('.tool-tab[data-of="log"]').click();
		await expect(tab.locator('.tools [data-tool]').filter({ visible: true })).toHaveCount(0);
	});

	test('the faders are those of the fixture in hand', async ({ page: tab }) => {
		await openFresh(tab);
		await take(tab, 'Wash 3').click();
		await expect(tab.locator('.desk > :first-child').getByRole('list', { name: /Wash 3/ })).toBeVisible();
		await expect(tab.locator('.group[open]')).toHaveCount(1);
	});
});

test.describe('on a phone, 390 by 844', () => {
	test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

	// Set ended at 1153 on the bench, and at 1265 in a drill
	test('Set is in reach as the bench opens, and as an address drill does', async ({ page: tab }) => {
		const open = [() => openFresh(tab), () => beginDrill(tab, 'address-keys', 295)];
		for (const each of open) {
			await each();
			const foot = await tab.locator('.bench-foot').boundingBox();
			expect(await scrolled(tab)).toBe(0);
			expect(await endOf(key(tab, 'Set'))).toBeLessThanOrEqual(foot?.y ?? 0);
			expect(foot?.y).toBeLessThan(844);
		}
	});

	test('wall and row stay while each sheet is read, and its tabs are at the foot', async ({ page: tab }) => {
		await openFresh(tab);
		await expect(tab.locator('.sheet-tab')).toHaveText(['Panel', 'Faders', 'Cables', 'More']);
		for (const id of ['desk', 'cables', 'breaker']) {
			const box = await drawer(tab, id);
			await expect(tab.locator('.stage-hand')).toBeHidden();
			await tab.evaluate(() => scrollTo(0, 400));
			await expect(tab.locator('.wall')).toBeInViewport({ ratio: 1 });
			await expect(tab.locator('.card').nth(1)).toBeInViewport();
			await expect(tab.locator('.sheet-tab').first()).toBeInViewport({ ratio: 1 });
			// another is read from its top
			await bring(tab, 'Panel');
			await expect(box).toBeHidden();
			await expect(key(tab, 'Set')).toBeInViewport({ ratio: 1 });
		}
	});

	test('with the faders up, another light brings its own', async ({ page: tab }) => {
		await openFresh(tab);
		await drawer(tab, 'desk');
		await take(tab, 'Wash 2').tap();
		const first = tab.locator('.desk .strip').first();
		await expect(tab.locator('.desk').getByRole('list', { name: /Wash 2/ })).toBeVisible();
		expect(await endOf(first)).toBeLessThanOrEqual(844 / 2 + 150);
	});

	test('what a drill is done with is up, and its task is one line that opens', async ({ page: tab }) => {
		await beginDrill(tab, 'remote-three', 3);
		await expect(tab.getByRole('button', { name: 'Brighter' })).toBeInViewport();
		const task = tab.locator('.drill-task');
		expect((await task.boundingBox())?.height).toBeLessThanOrEqual(56);
		await tab.evaluate(() => scrollTo(0, 600));
		await expect(task).toBeInViewport({ ratio: 1 });
		await tab.getByRole('button', { name: 'The whole task' }).tap();
		await expect(tab.locator('.drill-where')).toBeInViewport({ ratio: 1 });
		const what = tab.locator('.drill-what');
		expect(await what.evaluate((it) => it.scrollWidth <= it.clientWidth)).toBe(true);
		// across the glass, and nothing of it over another
		expect((await what.boundingBox())?.width).toBeGreaterThan(300);
		expect(await endOf(what)).toBeLessThanOrEqual((await tab.locator('.drill-where').boundingBox())?.y ?? 0);
	});

	// with the panel away its cautions would have been too
	test('cautions are there whichever sheet is up', async ({ page: tab }) => {
		await openFresh(tab);
		await layOut(tab, 'Mixed panels');
		await take(tab, 'Old wash').tap();
		const caution = tab.getByRole('heading', { name: /Mains electricity/ });
		await expect(caution).toBeVisible();
		for (const id of ['desk', 'cables', 'clock']) {
			await drawer(tab, id);
			await expect(caution, id).toBeVisible();
		}
	});
});

test.describe('a phone on its side, 844 by 390', () => {
	test.use({ viewport: { width: 844, height: 390 }, hasTouch: true, isMobile: true });

	// the keys began at 1052
	test('wall and row on the left, the sheet on the right, keys and faders within half a screen', async ({
		page: tab,
	}) => {
		await openFresh(tab);
		expect(await endOf(key(tab, 'Set'))).toBeLessThanOrEqual(390);
		const [wall, panel] = [await tab.locator('.wall').boundingBox(), await tab.locator('.panel').boundingBox()];
		expect((wall?.x ?? 0) + (wall?.width ?? 0)).toBeLessThanOrEqual(panel?.x ?? 0);
		const desk = await drawer(tab, 'desk');
		expect(await endOf(desk.locator('.strip').nth(1))).toBeLessThanOrEqual(390 * 1.5);
		expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(844);
	});
});
