import { expect, type Page, test } from '@playwright/test';
import { cautions } from '#words/cautions/index.ts';
import { manualWords, cardWords as words } from '#words/stock/index.ts';
import { expectNothingWrong } from './axe.ts';

test.use({ serviceWorkers: 'block' });

const BANDS = Array.from({ length: 24 }, (_, i) => ` ${i * 10}-${i * 10 + 9} colour macro number ${i + 1}`).join('\n');
const entry = (id: string, chart: string, name: string) => ({
	kind: 'chart',
	id,
	name,
	chart,
	shape: 'wash',
	beam: null,
	watts: 60,
	lumens: null,
	feed: 'mains',
	wattHours: null,
	link: null,
	changed: 1_700_000_000_000,
});
const STOCK = JSON.stringify({
	version: 2,
	kept: {
		'own-a': entry(
			'own-a',
			`Long mode\n1 Dimmer\n2 Strobe\n 0-9 open\n 10-255 strobe, slow to fast\n3 Red\n4 UV\n5 Macros\n${BANDS}\n 240-255 ${'verylongword'.repeat(3)}`,
			'Lid wash',
		),
		'own-c': entry('own-c', '1 Dimmer\n2 Strobe\n 0-9 open\n 10-255 strobe, slow to fast [?]\n3 Red', 'Half checked'),
		'own-b': entry('own-b', '1 Red 9-0 off', 'Unready'),
	},
});

async function open(tab: Page): Promise<void> {
	await tab.addInitScript((text) => localStorage.setItem('prep-bay.stock', text), STOCK);
	await tab.goto('/stock/');
	await tab.getByRole('button', { name: words.makeOne('Lid wash') }).press('Enter');
	await expect(tab.locator('.stock-card')).toBeVisible();
}

/** What of the card sticks out of it. */
const cutOff = (tab: Page): Promise<string[]> =>
	tab.locator('.stock-card').evaluate((card) => {
		const edge = card.getBoundingClientRect().right + 0.5;
		return [...card.querySelectorAll('*')]
			.filter((it) => it.getBoundingClientRect().right > edge)
			.map((it) => `${it.tagName} ${it.textContent?.slice(0, 40)}`);
	});

test('a card has all that its fixture has: cautions, figures, modes, every band, and a panel said to be a stand-in', async ({
	page: tab,
}) => {
	await open(tab);
	const card = tab.locator('.stock-card');
	await expect(card).toContainText(cautions.ultraviolet.title);
	await expect(card).toContainText(cautions.flashing.title);
	await expect(card).toContainText('60 W at full');
	await expect(card).toContainText('(assumed)');
	await expect(card).toContainText('Long mode');
	await expect(card.locator('tr').filter({ hasText: 'colour macro number' })).toHaveCount(24);
	await expect(card).toContainText(words.standInHint);
	// the real keys are for a person to write down
	await expect(card.locator('.stock-card-real tr')).toHaveCount(words.realRows.length);
	expect(await card.locator('.stock-card-ways tbody tr').count()).toBeGreaterThan(6);
	await tab.getByRole('button', { name: words.back }).click();
	await tab.getByRole('button', { name: words.makeOne('Unready') }).click();
	await expect(tab.getByRole('alert')).toContainText('Unready isn’t ready');
	await expect(tab.getByRole('button', { name: words.print, exact: true })).toBeDisabled();
});

test('what nobody held against the manual is marked on a card, and it says so', async ({ page: tab }) => {
	await open(tab);
	await expect(tab.locator('.stock-card')).not.toContainText('[?]');
	await tab.getByRole('button', { name: words.back }).click();
	await tab.getByRole('button', { name: words.makeOne('Half checked') }).click();
	await expect(tab.locator('.stock-card')).toContainText(manualWords.unchecked(1));
	await expect(tab.locator('.stock-card tr').filter({ hasText: '[?]' })).toHaveText([/10–255.*slow to fast.*\[\?\]/s]);
	await expectNothingWrong(tab);
	expect(await cutOff(tab)).toEqual([]);
});

test('on paper it is black on white, its own size, and nothing of it is cut', async ({ page: tab }) => {
	await open(tab);
	await tab.emulateMedia({ media: 'print', colorScheme: 'dark' });
	// millimetres to pixels at 96 an inch, less the margins
	for (const [size, wide, points] of [
		['a5', 134, [420, 595]],
		['a6', 95, [298, 420]],
		['half', 125.7, [396, 612]],
	] as const) {
		await tab.emulateMedia({ media: 'screen' });
		await tab.getByRole('radio', { name: words.sizes[size], exact: true }).check();
		await tab.emulateMedia({ media: 'print', colorScheme: 'dark' });
		await tab.setViewportSize({ width: Math.floor((wide / 25.4) * 96), height: 700 });
		expect(await cutOff(tab), size).toEqual([]);
		await expect(tab.getByRole('button', { name: words.back })).toBeHidden();
		const ink = await tab.locator('.stock-card').evaluate((card) => {
			const cell = card.querySelector('td') as Element;
			return [getComputedStyle(card).backgroundColor, getComputedStyle(cell).color];
		});
		expect(ink).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
		const pdf = (await tab.pdf({ preferCSSPageSize: true })).toString('latin1');
		const [, w = 0, h = 0] = /MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)/.exec(pdf) ?? [];
		expect([Math.round(Number(w)), Math.round(Number(h))]).toEqual(points);
	}
});

for (const [width, colorScheme] of [
	[390, 'dark'],
	[1280, 'light'],
] as const)
	test(`axe finds nothing on a card, ${colorScheme}, ${width} wide, and nothing is wider than the page`, async ({
		page: tab,
	}) => {
		await tab.setViewportSize({ width, height: 900 });
		await tab.emulateMedia({ colorScheme });
		await open(tab);
		await expectNothingWrong(tab);
		expect(await cutOff(tab)).toEqual([]);
	});
