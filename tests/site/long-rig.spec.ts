import { expect, type Page, test } from '@playwright/test';
import { pasteRig } from './pasted.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

/** Rows drawn at one go: as many as `growing.ts` takes. */
const AT_ONCE = 40;
const LIST = ['Fixture\tName', ...Array.from({ length: 500 }, (_, i) => `Cobble\tFloor ${i + 1}`)];

declare global {
	interface Window {
		/** Lines that came onto the page, by the picture they came in. */
		drawn: number[];
	}
}

/** Has the page count the lines that come onto it. @param prints whether it is printed as soon as the first are there */
async function countLines(tab: Page, prints: boolean): Promise<void> {
	await tab.addInitScript((asPrinted) => {
		window.drawn = [];
		new MutationObserver((changes) => {
			const came = changes
				.flatMap(({ addedNodes }) => [...addedNodes])
				.flatMap((node) =>
					(node instanceof Element ? [node, ...node.querySelectorAll('*')] : []).filter((node) =>
						node.matches('.rig-line'),
					),
				);
			if (came.length === 0) return;
			window.drawn.push(new Set(came).size);
			if (asPrinted) setTimeout(() => dispatchEvent(new Event('beforeprint')), 0);
		}).observe(document, { childList: true, subtree: true });
	}, prints);
}

test('500 rows come onto the page bit by bit, each once; what is changed draws no other', async ({ page: tab }) => {
	await countLines(tab, false);
	await pasteRig(tab, LIST);
	const drawn = await tab.evaluate(() => window.drawn);
	expect(drawn.reduce((sum, each) => sum + each, 0)).toBe(500);
	expect(Math.max(...drawn)).toBeLessThanOrEqual(AT_ONCE);
	await tab.locator('.rig-line').nth(2).click();
	await tab.getByLabel('Name', { exact: true }).fill('Floor three');
	await tab.getByRole('button', { name: 'Done', exact: true }).first().click();
	await expect(tab.locator('.rig-line').nth(2)).toContainText('Floor three');
	expect(await tab.evaluate((at) => window.drawn.slice(at), drawn.length)).toEqual([1]);
});

test('all of them are there at once where the page is printed', async ({ page: tab, context }) => {
	await pasteRig(tab, LIST);
	const again = await context.newPage();
	await countLines(again, true);
	await again.goto(tab.url());
	await expect(again.locator('.rig-line')).toHaveCount(500, { timeout: 30_000 });
	expect(Math.max(...(await again.evaluate(() => window.drawn)))).toBeGreaterThan(AT_ONCE);
});
