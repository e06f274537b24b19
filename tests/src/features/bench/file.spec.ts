import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { readSheet } from '../../../../shared/sheet/index.ts';
import { layOut, lightOf, openFresh, wash } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

const cards = (tab: Page) => tab.locator('li.card');
/** One of a crowd, within the longest wall. */
const at = (i: number) => ({ ...wash(i + 1), place: { x: 0.5 + i, y: 0, throw: 3 } });
const bench = (count: number, log: readonly unknown[] = []) =>
	JSON.stringify({
		version: 1,
		kept: [readSheet({ version: 1, name: 'x', fixtures: Array.from({ length: count }, (_, i) => at(i)) }), log],
	});

async function openFile(tab: Page, text: string): Promise<void> {
	if ((await tab.getByRole('dialog').count()) === 0) await tab.getByRole('button', { name: 'Share' }).click();
	await tab
		.getByRole('dialog')
		.locator('input[type=file]')
		.setInputFiles({ name: 'bench.json', mimeType: 'application/json', buffer: Buffer.from(text) });
}

// a bench could be saved to a file, and no button opened one
test('a bench saved to a file opens on another device, and the one there is kept', async ({
	page: tab,
	browser,
	baseURL,
}) => {
	await openFresh(tab);
	await layOut(tab, 'A leader and three followers');
	await tab.getByRole('button', { name: 'Share' }).click();
	const coming = tab.waitForEvent('download');
	await tab.getByRole('dialog').getByRole('button', { name: 'Save to a file' }).click();
	const text = readFileSync(await (await coming).path(), 'utf8');

	const context = await browser.newContext({ baseURL: baseURL ?? '', serviceWorkers: 'block' });
	const other = await context.newPage();
	await openFresh(other);
	await layOut(other, 'One battery wash');
	await other.waitForTimeout(1200);
	await openFile(other, text);
	await expect(cards(other)).toHaveCount(4);
	await expect(lightOf(other, 'Wash 1')).toContainText('changing by itself');
	await expect(other.getByText('A bench from a file took the place of your own, which is kept.')).toBeVisible();
	await other.reload();
	await expect(cards(other)).toHaveCount(4);
	await other.getByRole('button', { name: /^Kept benches/ }).click();
	await expect(other.getByRole('dialog')).toContainText('A bench from a file took its place.');
	await other.getByRole('button', { name: /^Bring back .* 1 fixture,/ }).click();
	await expect(cards(other)).toHaveCount(1);
	await context.close();
});

test('a file that is none, of a newer version, or of more than a link may bring gets a sentence, and the bench stays', async ({
	page: tab,
}) => {
	await openFresh(tab);
	await layOut(tab, 'One battery wash');
	const held = { type: 'clock.wait', ms: 2_000_000_000 };
	for (const [text, sentence] of [
		['{"version":1,"kept":[', 'This file holds no bench of Prep Bay, or it’s damaged.'],
		['[[[[', 'This file holds no bench of Prep Bay, or it’s damaged.'],
		['{"version":2,"kept":{}}', 'This file was saved by a newer Prep Bay.'],
		[bench(129), 'This rig has 129 fixtures, and a bench holds 128.'],
		[
			bench(
				1,
				Array.from({ length: 300 }, () => held),
			),
			'days, and a link or a file may bring 400.',
		],
		['{"version":1,"kept":[{},[]]}', 'This file holds no rig that fits together.'],
		[`"${'x'.repeat(8_100_000)}"`, 'This file is larger than any bench that Prep Bay saves.'],
	] as const) {
		await openFile(tab, text);
		await expect(tab.getByRole('dialog').getByRole('alert')).toContainText(sentence);
		await expect(cards(tab)).toHaveCount(1);
	}
});
