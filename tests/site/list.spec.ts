import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { pasteWords, planWords } from '#words/plan/index.ts';

test.use({ serviceWorkers: 'block' });

const LIST = 'Was\tLampe\tWo\n=1+1\tTallow 6\t4';

async function paste(tab: Page, text: string): Promise<void> {
	await tab.getByRole('button', { name: pasteWords.title }).first().click({ timeout: 30_000 });
	await tab.getByLabel(pasteWords.box).fill(text);
}
const column = (tab: Page, n: number) => tab.getByLabel(new RegExp(`^${pasteWords.column(n)}:`));

test('odd headings are matched once; the patch goes out as CSV and comes back', async ({ page: tab }) => {
	await tab.goto('/rig/');
	await paste(tab, LIST);
	await column(tab, 1).selectOption('name');
	await column(tab, 2).selectOption('type');
	await column(tab, 3).selectOption('place');
	await tab.getByLabel(pasteWords.header).check();
	await tab.getByRole('button', { name: pasteWords.add(1) }).click();
	await expect(tab.locator('.rig-line')).toHaveCount(1);
	await paste(tab, LIST);
	await expect(tab.getByText(pasteWords.early)).toBeVisible();
	await expect(column(tab, 2)).toHaveValue('type');
	await tab.getByRole('button', { name: pasteWords.add(1) }).click();
	await expect(tab.locator('.rig-line')).toHaveCount(2);
	await tab.getByRole('button', { name: planWords.send }).click();
	const saved = tab.waitForEvent('download');
	await tab.getByRole('button', { name: planWords.saveCsv }).click();
	const csv = readFileSync(await (await saved).path(), 'utf8');
	expect(csv).toContain(`"'=1+1"`);
	await tab.getByRole('button', { name: planWords.close }).click();
	await paste(tab, csv);
	await expect(tab.getByRole('button', { name: pasteWords.add(2) })).toBeEnabled();
});
