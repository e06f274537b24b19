import { expect, type Page } from '@playwright/test';

/** Presses the button of this name. */
export const press = (tab: Page, name: string): Promise<void> => tab.getByRole('button', { name, exact: true }).click();

/** A rig that was pasted on the page of tonight's rig, with all of its rows drawn. @param lines one of headings, then one a fixture */
export async function pasteRig(tab: Page, lines: readonly string[]): Promise<void> {
	await tab.goto('/rig/');
	await press(tab, 'Paste a list');
	await tab.getByLabel('Your list').fill(lines.join('\n'));
	await press(tab, `Add ${lines.length - 1} fixtures`);
	await expect(tab.locator('.rig-line')).toHaveCount(lines.length - 1, { timeout: 30_000 });
}
