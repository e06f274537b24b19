import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { mvrWords } from '#words/mvr/index.ts';
import { planWords, startWords } from '#words/plan/index.ts';
import { writeMvr } from '../../shared/mvr/index.ts';
import { emptyPlan, withRows } from '../../shared/plan/index.ts';
import { archive, fixture, matrix, scene } from '../shared/mvr/made.ts';
import { nameOf } from '../shared/plan/plans.ts';
import { expectNothingWrong } from './axe.ts';

test.use({ serviceWorkers: 'block' });

/** Rows with start addresses, the second fed from the third: not what the room would have. */
const rig = (() => {
	const plan = withRows(
		emptyPlan('Hall'),
		[
			{ profile: 'tallow-6', address: 1, x: 1 },
			{ profile: 'tallow-6', address: 21, x: 3 },
			{ profile: 'picket-8', address: 101, x: 5 },
		],
		nameOf,
	);
	const last = plan.rows.at(-1)?.id ?? '';
	return { ...plan, rows: plan.rows.map((row, i) => (i === 1 ? { ...row, after: last } : row)) };
})();

const mvr = (bytes: Uint8Array, name = 'hall.mvr') => ({
	name,
	mimeType: 'application/octet-stream',
	buffer: Buffer.from(bytes),
});

async function openDialog(tab: Page): Promise<void> {
	await tab.goto('/rig/');
	await tab.getByRole('button', { name: startWords.mvr }).click({ timeout: 30_000 });
	await expect(tab.getByRole('button', { name: mvrWords.choose })).toBeVisible();
}
const choose = (tab: Page, bytes: Uint8Array) => tab.getByLabel(mvrWords.choose).setInputFiles(mvr(bytes));

test('a rig goes out as an MVR file and comes back with its start addresses and cables', async ({ page: tab }) => {
	await openDialog(tab);
	await choose(tab, writeMvr(rig).bytes);
	await expect(tab.getByRole('dialog').getByRole('status')).toHaveText(mvrWords.found(3, 2), { timeout: 30_000 });
	await expectNothingWrong(tab);
	await tab.getByRole('button', { name: mvrWords.use(3) }).click();
	await expect(tab.locator('.rig-line')).toHaveCount(3);
	await expect(tab.locator('.rig-address')).toHaveText(['1 / 001', '1 / 021', '1 / 101']);
	await tab.getByRole('button', { name: planWords.tabs.line, exact: true }).click();
	await expect(tab.locator('.sheet-table tbody tr, table tbody tr')).toHaveCount(3);
	const cables = await tab.locator('table tbody tr').allInnerTexts();
	expect(cables[2]).toMatch(/picket.*tallow/is);
	await tab.getByRole('button', { name: planWords.send }).click();
	await tab.getByRole('button', { name: planWords.saveMvr }).click();
	await expect(tab.getByText(mvrWords.saveLead)).toBeVisible({ timeout: 30_000 });
	await expectNothingWrong(tab);
	const saved = tab.waitForEvent('download');
	await tab.getByRole('button', { name: mvrWords.save }).click();
	const download = await saved;
	expect(download.suggestedFilename()).toBe(mvrWords.fileName);
	// what came in goes out again, fixture for fixture
	const bytes = readFileSync(await download.path());
	await openDialog2(tab);
	await choose(tab, bytes);
	await expect(tab.getByRole('dialog').getByRole('status')).toHaveText(mvrWords.found(3, 2), { timeout: 30_000 });
});

async function openDialog2(tab: Page): Promise<void> {
	await tab.keyboard.press('Escape');
	await tab.getByRole('button', { name: planWords.another }).click();
	await tab.getByRole('button', { name: startWords.mvr }).click();
}

test('what a file leaves open is picked, and remembered; all that is lost is told first', async ({ page: tab }) => {
	const inside = `<GDTFSpec>strange.gdtf</GDTFSpec><GDTFMode>Odd</GDTFMode>${matrix(0, 900, 4000)}`;
	const file = archive(scene(`${fixture('Front 1', inside)}${fixture('Front 2', inside)}<Truss uuid="7"/>`));
	await openDialog(tab);
	await choose(tab, file);
	const use = tab.getByRole('button', { name: /^Use \d/ });
	await expect(use).toBeDisabled({ timeout: 30_000 });
	const kind = tab.getByLabel(mvrWords.kind('strange.gdtf', 2));
	await kind.selectOption({ index: 1 });
	await tab.getByLabel(mvrWords.mode('Odd')).selectOption({ index: 1 });
	await expect(use).toHaveText(mvrWords.use(2));
	await expect(tab.locator('.rig-lost')).toContainText('truss');
	await use.click();
	await expect(tab.locator('.rig-line')).toHaveCount(2);
	await expect(tab.locator('.rig-place').first()).toContainText('overhead');
	await openDialog2(tab);
	await choose(tab, file);
	await expect(use).toHaveText(mvrWords.use(2), { timeout: 30_000 });
});

test('a file that is none is refused in a sentence, and another can be chosen', async ({ page: tab }) => {
	await openDialog(tab);
	await choose(tab, new TextEncoder().encode('no archive'));
	await expect(tab.getByRole('alert')).toContainText('This is no MVR file', { timeout: 30_000 });
	await choose(tab, writeMvr(rig).bytes);
	await expect(tab.getByRole('dialog').getByRole('status')).toHaveText(mvrWords.found(3, 2), { timeout: 30_000 });
	await expect(tab.getByRole('alert')).toHaveCount(0);
});
