import { expect, type Page, test } from '@playwright/test';
import { layOutWords } from '#words/bench/index.ts';
import { cautionIds } from '#words/cautions/index.ts';
import { ownDrills } from '#words/drills/index.ts';
import { quickWords } from '#words/finder/index.ts';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import { trainerWords } from '#words/papers/index.ts';
import { startWords } from '#words/plan/index.ts';
import { ownReference } from '#words/reference/index.ts';
import { ownWords } from '#words/stock/index.ts';
import { expectNothingWrong } from './axe.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

/** Stock as the first version kept it: one fixture, made from a chart. */
const OLD = JSON.stringify({
	version: 1,
	kept: {
		'own-00aa11bb22': {
			id: 'own-00aa11bb22',
			name: 'Row wash',
			chart: '1 Dimmer\n2 Strobe\n 0-9 open\n 10-255 strobe, slow to fast\n3 Red\n4 Green\n5 Blue',
			shape: 'wash',
			beam: null,
			watts: null,
			lumens: null,
			feed: null,
			wattHours: null,
			link: null,
			changed: 1_700_000_000_000,
		},
	},
});

async function withStock(tab: Page, address: string): Promise<void> {
	await tab.addInitScript((text) => {
		if (localStorage.getItem('prep-bay.stock') === null) localStorage.setItem('prep-bay.stock', text);
	}, OLD);
	await tab.goto(address);
}

test('one’s own fixture comes first on the bench', async ({ page: tab }) => {
	await withStock(tab, '/bench/');
	await tab.getByRole('button', { name: 'Set up' }).click();
	const dialog = tab.getByRole('dialog');
	const add = dialog.getByRole('button', { name: layOutWords.addOne('') });
	await expect(add.first()).toHaveText(layOutWords.addOne('Row wash'));
	await add.first().press('Enter');
	await expect(dialog.locator('.on-bench li')).toHaveCount(5);
	await expect(dialog.locator('.on-bench li').last().getByRole('textbox')).toHaveValue(/wash/i);
});

test('one’s own fixture comes first at the finder’s third tap, by keyboard, and leads to a check', async ({
	page: tab,
}) => {
	await withStock(tab, '/finder/');
	await tab.getByRole('button', { name: quickWords.countOne(3), exact: true }).press('Enter');
	await tab.locator('[data-choice=desk]').press('Enter');
	const first = tab.locator('.choice').first();
	await expect(first).toContainText('Row wash');
	await expect(first).toContainText(ownWords.standIn);
	await expectNothingWrong(tab);
	await first.press('Enter');
	await tab.locator('.picks .choice').first().click();
	await expect(tab.getByText(quickWords.assumed)).toBeVisible();
	await tab.locator('.picks .choice').first().click();
	await expect(tab.locator('.walk-main .check, [data-check], .check-card').first()).toBeVisible({ timeout: 30_000 });
	await tab.reload();
	await expect(tab.getByText(quickWords.assumed)).toBeVisible({ timeout: 30_000 });
});

test('one’s own fixture comes first in tonight’s rig', async ({ page: tab }) => {
	await withStock(tab, '/rig/');
	await tab.getByRole('button', { name: startWords.count(4), exact: true }).click();
	const first = tab.locator('.rig-choice').first();
	await expect(first).toContainText('Row wash');
	await expectNothingWrong(tab);
	await first.click();
	await tab.getByRole('button', { name: startWords.firstOf(33), exact: true }).click();
	await expect(tab.locator('main')).toContainText('Row wash');
});

test('a quiz is set on one’s own fixture, and opens for somebody who has none of it, at its first question', async ({
	page: tab,
	browser,
	baseURL,
}) => {
	test.setTimeout(120_000);
	await withStock(tab, '/papers/');
	await tab.getByRole('checkbox', { name: 'Row wash' }).check();
	await expect(tab.getByText(trainerWords.ownPicked)).toBeVisible();
	await tab.getByLabel('Questions', { exact: true }).fill('6');
	await expect(tab.locator('.preview')).toContainText('of 6');
	await expectNothingWrong(tab);
	const box = tab.getByLabel('Link to the quiz');
	await expect(box).toHaveValue(/#paper=/);
	const link = await box.inputValue();
	// kept as it is left, and picked still
	await tab.reload();
	await expect(tab.getByRole('checkbox', { name: 'Row wash' })).toHaveCount(1);
	await expect(tab.getByRole('checkbox', { name: 'Row wash' })).toBeChecked();

	const context = await browser.newContext({ ...(baseURL ? { baseURL } : {}), serviceWorkers: 'block' });
	const other = await context.newPage();
	await other.goto(link);
	const name = other.getByLabel('Your name');
	if (await name.count()) await name.fill('Ada');
	await other
		.getByRole('button', { name: /begin|start/i })
		.first()
		.click({ timeout: 30_000 });
	await expect(other.locator('.sit-bar')).toBeVisible({ timeout: 30_000 });
	await context.close();
});

test('a drill on one’s own fixture says that its panel is a stand-in, and its address opens it for somebody who has none', async ({
	page: tab,
	browser,
}) => {
	await withStock(tab, '/drills/');
	await tab.getByRole('link', { name: ownDrills.first }).press('Enter');
	await tab.getByRole('button', { name: ownDrills.of('Row wash') }).press('Enter');
	await expect(tab.getByRole('heading', { name: ownDrills.of('Row wash') })).toBeFocused();
	await expect(tab.getByText(ownDrills.panelFrom['stand-in'])).toBeVisible();
	await expect(tab.locator('.drill')).toContainText(/(Wash|wash) \d is a Row wash/);
	await expectNothingWrong(tab);
	const words = (await tab.locator('.drill-what').first().textContent()) ?? '-';
	const other = await browser.newPage();
	await other.goto(tab.url());
	await expect(other.locator('.drill-what').first()).toHaveText(words);
	await other.locator('.drill-begin .button-main').click();
	await expect(other.locator('.stage')).toBeVisible({ timeout: 30_000 });
	// damaged, it is refused by a sentence, and the list stands there
	await other.goto(`${tab.url().slice(0, -40)}x`);
	await other.reload();
	await expect(other.getByRole('alert')).toHaveText(ownDrills.failed);
	await other.close();
});

test('a fault is hidden in a rig of one’s own, a place of it is tapped, and the link brings the fixture', async ({
	page: tab,
	browser,
}) => {
	await withStock(tab, '/finder/practise/');
	const rig = tab.getByLabel(hiddenWords.rig, { exact: true });
	await expect(rig.locator('option').first()).toHaveText(hiddenWords.ownRig('Row wash'));
	await rig.selectOption({ label: hiddenWords.ownRig('Row wash') });
	await tab.getByRole('button', { name: hiddenWords.begin, exact: true }).press('Enter');
	await expect(tab.getByText(hiddenWords.ownPanels)).toBeVisible({ timeout: 60_000 });
	await expectNothingWrong(tab);
	const place = tab.locator('.hidden-row [data-kind=fixture] button').first();
	await place.press('Enter');
	await expect(place).toHaveAttribute('aria-pressed', 'true');
	await expect(tab.locator('.hidden-count')).not.toHaveText(hiddenWords.noneFound);
	const complaint = (await tab.locator('.hidden-head h2').textContent()) ?? '-';
	const other = await browser.newPage();
	await other.goto(tab.url());
	await expect(other.locator('.hidden-head h2')).toHaveText(complaint, { timeout: 60_000 });
	await other.close();
});

test('a drill on one’s own whose part does not come says so, and begins once it does', async ({ page: tab }) => {
	await withStock(tab, '/finder/practise/');
	await tab.getByLabel(hiddenWords.rig, { exact: true }).selectOption({ label: hiddenWords.ownRig('Row wash') });
	await tab.waitForLoadState('networkidle');
	await tab.route('**/_astro/*.js', (route) => route.abort());
	const begin = tab.getByRole('button', { name: hiddenWords.begin, exact: true });
	await begin.press('Enter');
	await expect(tab.locator('.field-error')).toHaveText(ownWords.failed);
	await tab.unroute('**/_astro/*.js');
	await begin.press('Enter');
	await expect(tab.getByText(hiddenWords.ownPanels)).toBeVisible({ timeout: 60_000 });
});

test('the tables of one’s own fixture are worked out, with cautions, and say what is assumed', async ({
	page: tab,
}) => {
	await withStock(tab, '/reference/fixtures/');
	await tab.getByRole('link', { name: ownReference.link, exact: true }).press('Enter');
	await expect(tab.getByText(ownReference.panelFrom['stand-in'])).toBeVisible({ timeout: 30_000 });
	await expect(tab.getByRole('table').first()).toBeVisible();
	await expect(tab.locator('.reference-section')).toContainText('slow to fast');
	await expect(tab.locator('.reference-cautions li')).toHaveCount(cautionIds.length);
	await expectNothingWrong(tab);
});

test('a quiz asks about charts nobody has seen unless that is taken out', async ({ page: tab }) => {
	await tab.goto('/papers/');
	const box = tab.getByRole('checkbox', { name: trainerWords.unseen.name });
	await expect(box).toBeChecked();
	await tab.getByRole('checkbox', { name: 'Bands of values' }).check();
	const house = /Tallow|Picket|Cobble|Thimble/;
	const chart = tab.locator('.preview-list li').first();
	await expect(chart).toBeVisible({ timeout: 30_000 });
	await expect(chart).not.toContainText(house);
	await box.uncheck();
	await expect(chart).toContainText(house, { timeout: 30_000 });
});
