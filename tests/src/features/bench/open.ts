import { expect, type Locator, type Page } from '@playwright/test';
import { type RigSheet, readSheet } from '../../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../../sim/event/index.ts';
import { linkOf } from '../../../../src/features/rig/index.ts';

/** Opens the bench on a sheet of the test's own, as a link would. */
export async function openSheet(tab: Page, sheet: unknown, log: readonly RigEvent[] = []): Promise<void> {
	await tab.goto(`/bench/${await linkOf({ sheet: readSheet(sheet), log })}`);
	await settled(tab);
}

/** Opens the bench of a first visit. */
export async function openFresh(tab: Page): Promise<void> {
	await tab.goto('/bench/');
	await settled(tab);
}

/** Lays a ready-made bench out, by its name, as a person would. */
export async function layOut(tab: Page, name: string): Promise<void> {
	await tab.getByRole('button', { name: 'Set up' }).click();
	await tab.getByRole('dialog').getByRole('button', { name, exact: true }).click();
	await expect(tab.getByRole('dialog')).toHaveCount(0);
}

async function settled(tab: Page): Promise<void> {
	await expect(tab.locator('astro-island')).not.toHaveAttribute('ssr', '');
	await expect(tab.locator('.stage')).toBeVisible();
}

/** One battery wash, as the sheets of these tests need them. */
export const wash = (n: number, settings: RigSheet['fixtures'][number]['settings'] = {}) => ({
	id: `wash-${n}`,
	name: `Wash ${n}`,
	profile: 'tallow-6',
	place: { x: 2 * n, y: 0, throw: 3 },
	settings,
});

/** The light of a fixture in words, on its card in the row. */
export const lightOf = (tab: Page, name: string): Locator =>
	tab.locator('.card', { has: tab.getByText(name, { exact: true }) }).locator('.card-light');

/** A key on the panel in hand. */
export const key = (tab: Page, name: 'Back' | 'Down' | 'Up' | 'Set' | 'Left' | 'Right' | 'Page'): Locator =>
	tab.locator('.panel').getByRole('button', { name, exact: true });

/** What the display in hand says, blanks at the ends left out. */
export const display = (tab: Page): Promise<string> =>
	tab
		.locator('.display')
		.textContent()
		.then((text) => (text ?? '').trim());

/** A socket, wherever it is drawn first. */
export const socket = (tab: Page, port: string): Locator => tab.locator(`.row [data-port="${port}"]`);

/** Where one thing has room below the row: brings it up by its tab. On a wide screen there are no tabs. */
export async function bring(tab: Page, name: 'Panel' | 'Faders' | 'Cables'): Promise<void> {
	const one = tab.locator('.sheet-tab', { hasText: name });
	if (await one.isVisible()) await one.click();
}

/** Opens a tool by its name: by the tab it is under, and by its own. */
export async function drawer(tab: Page, id: string): Promise<Locator> {
	const box = tab.locator(`[data-tool="${id}"]`);
	if (id === 'desk') await bring(tab, 'Faders');
	else if (id === 'cables') await bring(tab, 'Cables');
	else if (!(await box.isVisible())) {
		// called by its own name where it is the only other one
		const last = tab.locator('.sheet-tab').last();
		if (await last.isVisible()) await last.click();
	}
	const own = tab.locator(id === 'desk' ? '[data-tool="desk"] > .button' : `.tool-tab[data-of="${id}"]`);
	if ((await own.isVisible()) && (await own.getAttribute('aria-expanded')) !== 'true') await own.click();
	await expect(box.locator('> :not(h2)').first()).toBeVisible();
	await expect(box.locator('.coming')).toHaveCount(0);
	return box;
}

/** A fixture's name on its card: a press takes it in hand. */
export const take = (tab: Page, name: string): Locator =>
	tab.getByRole('button', { name: new RegExp(`^Select \\d+ ${name}$`) });
