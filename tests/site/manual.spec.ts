import { expect, type Page, test } from '@playwright/test';
import { manualTroubles, marksFrame, markWords, stockWords, manualWords as words } from '#words/stock/index.ts';
import type { PrintedMode } from '../../shared/stock/index.ts';
import { DIMMER, LONG_WORDS, slot } from '../shared/stock/page/charts.ts';
import { HOSTILE } from '../shared/stock/page/hostile.ts';
import { laidOut, PLAIN, widthOf } from '../shared/stock/page/lay.ts';
import { lockedPdf, madePdf } from '../shared/stock/page/pdf.ts';
import { expectNothingWrong } from './axe.ts';

const CHART: PrintedMode = {
	name: '5 channel mode',
	slots: [
		DIMMER,
		slot(2, 'Strobe', [0, 9, 'off'], [10, 255, LONG_WORDS]),
		slot(3, 'Red'),
		slot(4, 'Green'),
		slot(5, 'Blue'),
	],
};
const line = (str: string, y: number) => ({ str, x: 40, y, w: 200, h: 11, turn: 0 });
/** Words on the first page, then a page with a sentence and a chart, then a page that is only a picture. */
const manual = (): Promise<Uint8Array> =>
	madePdf([
		{ items: [line('How to hang this light', 80)] },
		{
			items: [
				line('Read all of this before you switch it on.', 60),
				...laidOut(CHART, { ...PLAIN, h: 10, wrapAt: 30 }, 60, 160),
			],
			isRuled: true,
		},
		{ items: [], isScan: true },
	]);

async function choose(tab: Page, bytes: Uint8Array, name = 'wash.pdf'): Promise<void> {
	await tab.getByLabel(words.name).setInputFiles({ name, mimeType: 'application/pdf', buffer: Buffer.from(bytes) });
}

async function begin(tab: Page): Promise<void> {
	await tab.goto('/stock/');
	await tab.getByRole('button', { name: stockWords.add }).click();
	await expect(tab.getByRole('button', { name: words.open })).toBeVisible();
}

const picture = (tab: Page, page: number) => tab.getByRole('img', { name: words.picture(page) });
/** Waits until the page is drawn. */
async function drawn(tab: Page, page: number): Promise<void> {
	await expect(picture(tab, page)).toBeVisible({ timeout: 30_000 });
	await expect(tab.getByText(words.drawing)).toBeHidden({ timeout: 30_000 });
}

test.describe('with the network there', () => {
	test.use({ serviceWorkers: 'block' });

	test('a manual is opened, its table marked with the mouse, checked, and used; undo takes it out', async ({
		page: tab,
	}) => {
		test.setTimeout(180_000);
		const fetched: string[] = [];
		const barred: string[] = [];
		tab.on('request', (request) => fetched.push(new URL(request.url()).pathname));
		tab.on('console', (message) => {
			if (/content security policy|trusted/i.test(message.text())) barred.push(message.text());
		});
		await begin(tab);
		// nothing of it comes before it is asked for
		expect(fetched.filter((file) => /pdf/i.test(file))).toEqual([]);
		await choose(tab, await manual());
		await drawn(tab, 1);
		expect(fetched.filter((file) => /pdfWorker/.test(file))).toHaveLength(1);
		await tab.getByRole('button', { name: words.next }).click();
		await drawn(tab, 2);
		// there is ink on it
		const isInked = await picture(tab, 2).evaluate((canvas: HTMLCanvasElement) => {
			const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
			return data.some((value, i) => i % 4 === 0 && value < 100);
		});
		expect(isInked).toBe(true);
		await expectNothingWrong(tab);
		await picture(tab, 2).scrollIntoViewIfNeeded();
		const at = await picture(tab, 2).boundingBox();
		if (!at) throw new Error('the page has no place');
		await tab.mouse.move(at.x + 0.05 * at.width, at.y + 0.15 * at.height);
		await tab.mouse.down();
		await tab.mouse.move(at.x + 0.95 * at.width, at.y + 0.55 * at.height, { steps: 4 });
		await tab.mouse.up();
		await tab.getByRole('button', { name: words.read }).click();
		await expect(tab.getByRole('heading', { name: words.found(2) })).toBeFocused();
		await expect(tab.getByText(marksFrame.none)).toBeVisible();
		await expect(tab.locator('.stock-read tbody')).toHaveCount(5);
		await expectNothingWrong(tab);
		await tab.getByRole('button', { name: words.use }).click();
		await expect(tab.getByLabel(stockWords.chart)).toHaveValue(/slow to fast, with a pause at every second flash/);
		await expect(tab.getByRole('button', { name: stockWords.putOne(stockWords.nameNew(1)) })).toBeEnabled();
		await tab.getByRole('button', { name: stockWords.undo }).click();
		await expect(tab.getByLabel(stockWords.chart)).toHaveValue('');
		expect(barred).toEqual([]);
	});

	test('the table is marked by keys alone, and by two taps', async ({ page: tab }) => {
		test.setTimeout(180_000);
		await begin(tab);
		await choose(tab, await manual());
		await drawn(tab, 1);
		await tab.getByRole('button', { name: words.next }).press('Enter');
		await drawn(tab, 2);
		const box = tab.locator('.manual-box');
		await box.focus();
		// the sentence over the table is left out: from above, the box is made lower and moved down
		for (let n = 0; n < 25; n++) await tab.keyboard.press('Shift+ArrowUp');
		for (let n = 0; n < 7; n++) await tab.keyboard.press('ArrowDown');
		await expect(box).toHaveAccessibleName(words.box(0, 14, 100, 64));
		await tab.getByRole('button', { name: words.read }).press('Enter');
		await expect(tab.locator('.stock-read tbody')).toHaveCount(5);
		await expect(tab.getByText(marksFrame.none)).toBeVisible();
		await tab.getByRole('button', { name: words.mark }).click();
		await drawn(tab, 2);
		await tab.getByRole('button', { name: words.whole }).click();
		await picture(tab, 2).click({ position: { x: 12, y: 12 } });
		await expect(tab.getByText(words.corner)).toBeVisible();
		await picture(tab, 2).click({ position: { x: 60, y: 30 } });
		await tab.getByRole('button', { name: words.read }).click();
		await expect(tab.getByRole('alert')).toHaveText(words.none);
	});

	test('what is not understood is marked in place, fixed there, and only then used', async ({ page: tab }) => {
		test.setTimeout(180_000);
		const odd = laidOut(CHART, PLAIN).map((item) => (item.str === '10-255' ? { ...item, str: '10-2SS' } : item));
		await begin(tab);
		await choose(tab, await madePdf([{ items: odd }]));
		await drawn(tab, 1);
		await tab.getByRole('button', { name: words.read }).click();
		await expect(tab.locator('.stock-paper mark').first()).toBeVisible();
		await tab.locator('.stock-marks button').first().click();
		await tab.keyboard.type('10-255');
		await expect(tab.getByText(marksFrame.none)).toBeVisible();
	});

	test('places that were not checked go along as marks, counted, until each is taken out', async ({ page: tab }) => {
		test.setTimeout(180_000);
		const set = (cells: readonly (readonly [string, number, number])[]) =>
			cells.map(([str, x, y]) => ({ str, x, y, w: widthOf(str, 9), h: 9, turn: 0 }));
		const items = [
			...set([
				['1', 40, 60],
				['Strobe', 80, 60],
				['0-99', 140, 60],
				['off', 200, 60],
			]),
			...set([
				['flash', 200, 76],
				['100-255', 140, 84],
				['steady', 200, 84],
			]),
		];
		await begin(tab);
		await choose(tab, await madePdf([{ items }]));
		await drawn(tab, 1);
		await tab.getByRole('button', { name: words.read }).click();
		await expect(tab.getByText(words.unchecked(1))).toBeVisible();
		await expectNothingWrong(tab);
		await tab.getByRole('button', { name: words.use }).click();
		await expect(tab.getByLabel(stockWords.chart)).toHaveValue(/flash.* \[\?\]$/m);
		await expect(tab.getByText(words.unchecked(1))).toBeVisible();
		await tab.getByRole('button', { name: markWords.unchecked() }).click();
		await tab.keyboard.press('Delete');
		await expect(tab.getByText(words.unchecked(1))).toBeHidden();
		await expect(tab.getByLabel(stockWords.chart)).not.toHaveValue(/\[\?\]/);
	});

	test('text that was changed is there after another mark and after a press on Close, and is asked about', async ({
		page: tab,
	}) => {
		test.setTimeout(180_000);
		const underWay = () => tab.evaluate(() => Number(document.documentElement.dataset['underWay'] ?? 0));
		await begin(tab);
		await choose(tab, await madePdf([{ items: laidOut(CHART, PLAIN) }]));
		await drawn(tab, 1);
		await tab.getByRole('button', { name: words.read }).click();
		// nothing was changed yet: nothing is asked, nothing waits
		const before = await underWay();
		await tab.getByLabel(words.text).press('ControlOrMeta+End');
		await tab.keyboard.type('\n6 White');
		await expect.poll(underWay).toBe(before + 1);
		await tab.getByRole('button', { name: words.mark }).click();
		await drawn(tab, 1);
		await tab.getByRole('button', { name: words.read }).click();
		await expect(tab.getByLabel(words.text)).toHaveValue(/\n6 White$/);
		// another part leaves it alone too, and there is a way back to it
		await tab.getByRole('button', { name: words.mark }).click();
		await tab.locator('.manual-box').press('Shift+ArrowUp');
		await tab.getByRole('button', { name: words.read }).click();
		await expect(tab.getByLabel(words.text)).not.toHaveValue(/White/);
		await tab.getByRole('button', { name: words.use }).click();
		await expect(tab.getByText(words.added(1)).first()).toBeVisible();
		await tab.getByRole('button', { name: words.goBack(1) }).click();
		await expect(tab.getByLabel(words.text)).toHaveValue(/\n6 White$/);
		await tab.getByRole('button', { name: words.close }).click();
		await expectNothingWrong(tab);
		await tab.getByRole('button', { name: words.stay }).click();
		await expect(tab.getByLabel(words.text)).toHaveValue(/\n6 White$/);
		await tab.getByRole('button', { name: words.close }).click();
		await tab.getByRole('button', { name: words.closeAnyway }).click();
		await expect(tab.getByLabel(stockWords.chart)).not.toHaveValue(/White/);
	});

	test('files that are no manual end in a sentence: a scan, a locked one, a broken one, another kind', async ({
		page: tab,
	}) => {
		test.setTimeout(180_000);
		await begin(tab);
		const whole = await manual();
		const files: readonly (readonly [string, Uint8Array, string])[] = [
			['locked', await lockedPdf(), manualTroubles.locked],
			['cut short', whole.subarray(0, 300), manualTroubles.damaged],
			['a picture', new Uint8Array(2000).fill(7), manualTroubles['not-pdf']],
			['empty', new Uint8Array(0), manualTroubles['not-pdf']],
			['401 pages', await madePdf(Array.from({ length: 401 }, () => ({ items: [] }))), manualTroubles['too-many']],
			['a scan', await madePdf([{ items: [], isScan: true }]), words.scanned],
		];
		for (const [name, bytes, says] of files) {
			await choose(tab, bytes, `${name}.pdf`);
			await expect(tab.getByRole('alert'), name).toHaveText(says, { timeout: 30_000 });
			await tab.getByRole('button', { name: words.close }).click();
		}
		await expect(tab.getByLabel(stockWords.chart)).toHaveValue('');
	});

	test('files made to harm end in a sentence, or in a page of a bounded size with what is there to read', async ({
		page: tab,
	}) => {
		test.setTimeout(300_000);
		await begin(tab);
		const ends: Record<string, string> = {};
		for (const [name, bytes] of Object.entries(HOSTILE)) {
			await choose(tab, bytes, `${name}.pdf`);
			const sentence = tab.getByRole('alert');
			const canvas = picture(tab, 1);
			await expect(sentence.or(canvas).first(), name).toBeVisible({ timeout: 40_000 });
			if (await canvas.isVisible()) {
				await drawn(tab, 1);
				const dots = await canvas.evaluate(({ width, height }: HTMLCanvasElement) => width * height);
				expect(dots, name).toBeLessThanOrEqual(2400 * 4800);
				if (await tab.getByRole('button', { name: words.read }).isEnabled()) {
					await tab.getByRole('button', { name: words.read }).click();
					await expect(sentence.or(tab.getByLabel(words.text)).first(), name).toBeVisible();
				}
			}
			ends[name] = (await sentence.count()) > 0 ? ((await sentence.first().textContent()) ?? '') : 'read';
			await tab.getByRole('button', { name: words.close }).click();
		}
		const says: readonly string[] = [...Object.values(manualTroubles), words.scanned, words.none, 'read'];
		expect(Object.entries(ends).filter(([, end]) => !says.includes(end))).toEqual([]);
		// and the next one opens all the same
		await choose(tab, await manual());
		await drawn(tab, 1);
	});
});

test.describe('by hand on a screen', () => {
	test.use({ serviceWorkers: 'block', hasTouch: true, viewport: { width: 390, height: 844 } });

	test('two taps mark the table, and a finger that moves scrolls instead', async ({ page: tab }) => {
		test.setTimeout(120_000);
		await begin(tab);
		await choose(tab, await manual());
		await drawn(tab, 1);
		await tab.getByRole('button', { name: words.next }).tap();
		await drawn(tab, 2);
		await picture(tab, 2).scrollIntoViewIfNeeded();
		const box = tab.locator('.manual-box');
		const at = await picture(tab, 2).boundingBox();
		if (!at) throw new Error('the page has no place');
		const tap = (x: number, y: number) => tab.touchscreen.tap(at.x + x * at.width, at.y + y * at.height);
		await tap(0.05, 0.15);
		await expect(tab.getByText(words.corner)).toBeVisible();
		await expect(box).toHaveAccessibleName(words.box(0, 0, 100, 100));
		const shift = ((await picture(tab, 2).boundingBox())?.y ?? 0) - at.y;
		await tab.touchscreen.tap(at.x + 0.95 * at.width, at.y + shift + 0.55 * at.height);
		await expect(tab.getByText(words.corner)).toBeHidden();
		await expect(box).toHaveAccessibleName(words.box(5, 15, 95, 55));
		await tab.getByRole('button', { name: words.read }).tap();
		await expect(tab.locator('.stock-read tbody')).toHaveCount(5);
	});
});

test('with no network it says so; once asked for, it opens with none', async ({ page: tab, context }) => {
	test.setTimeout(300_000);
	await tab.goto('/stock/');
	await tab.evaluate(async () => {
		const { active } = await navigator.serviceWorker.ready;
		await new Promise<void>((done) => {
			const line = new MessageChannel();
			line.port1.onmessage = () => done();
			active?.postMessage({ type: 'keep-all' }, [line.port2]);
		});
	});
	const kept = () =>
		tab.evaluate(
			async () =>
				(await (await caches.open('prep-bay.files')).keys()).filter(({ url }) => /pdf/i.test(new URL(url).pathname))
					.length,
		);
	expect(await kept()).toBe(0);
	await begin(tab);
	await context.setOffline(true);
	await choose(tab, await manual());
	await expect(tab.getByText(words.failed)).toBeVisible({ timeout: 30_000 });
	await context.setOffline(false);
	await tab.getByRole('button', { name: words.again }).click();
	await drawn(tab, 1);
	expect(await kept()).toBe(2);
	await context.setOffline(true);
	await begin(tab);
	await choose(tab, await manual());
	await drawn(tab, 1);
});
