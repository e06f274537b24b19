import { expect, type Page, test } from '@playwright/test';
import { layOutWords } from '#words/bench/index.ts';
import { quickWords } from '#words/finder/index.ts';
import { trainerWords } from '#words/papers/index.ts';
import { startWords } from '#words/plan/index.ts';
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
