import { type CDPSession, chromium, type Page } from '@playwright/test';
import { expect, test } from 'vitest';
import { planWords, startWords } from '#words/plan/index.ts';
import { emptyPlan, packed, withRows } from '../../shared/plan/index.ts';
import { BUNDLED } from '../../shared/profile/index.ts';
import { planText } from '../../src/features/rig-sheet/keep.ts';
import { serve } from '../../src/site/server/index.ts';
import { browserFlags, findBrowser } from '../house/browser.ts';
import { nameOf } from '../shared/plan/plans.ts';
import { built } from '../site/pages.ts';

/** Fixtures of the rig, and rows of the pasted list. */
const FIXTURES = 500;
const ROWS = 2000;
/** How much slower than this machine. */
const SLOWED = 4;
const TIMES = 7;

const rig = packed(
	withRows(
		emptyPlan('Speed'),
		Array.from({ length: FIXTURES }, (_, i) => ({ profile: BUNDLED[i % 3]?.id ?? '', circuit: `C${i % 20}` })),
		nameOf,
	),
).plan;

/** Milliseconds from an input until the page has drawn what came of it and is free again, least and median of some tries. */
async function timed(
	tab: Page,
	act: (n: number) => Promise<void>,
	times = TIMES,
): Promise<{ least: number; median: number }> {
	const took: number[] = [];
	for (let n = 0; n < times; n++) {
		await tab.evaluate(() => {
			const w = window as unknown as { took: number; from: number };
			w.took = 0;
			const begin = (): void => {
				const from = performance.now();
				requestAnimationFrame(() => {
					const channel = new MessageChannel();
					channel.port1.onmessage = () => {
						w.took = performance.now() - from;
					};
					channel.port2.postMessage(null);
				});
			};
			for (const type of ['click', 'change', 'input', 'paste'])
				addEventListener(type, begin, { capture: true, once: true });
		});
		await act(n);
		await tab.waitForFunction(() => (window as unknown as { took: number }).took > 0, undefined, { polling: 50 });
		took.push(await tab.evaluate(() => (window as unknown as { took: number }).took));
		await tab.waitForTimeout(400);
	}
	took.sort((a, b) => a - b);
	return { least: Math.round(took[0] as number), median: Math.round(took[Math.floor(times / 2)] as number) };
}

test(`a rig of ${FIXTURES} fixtures, ${SLOWED} times slowed: milliseconds from an input to its picture`, {
	timeout: 10 * 60_000,
}, async () => {
	const site = await serve(built);
	const browser = await chromium.launch({ executablePath: await findBrowser(), args: [...browserFlags] });
	const table: Record<string, { least: number; median: number }> = {};
	try {
		const context = await browser.newContext({ serviceWorkers: 'block', viewport: { width: 1280, height: 800 } });
		const tab = await context.newPage();
		tab.setDefaultTimeout(40_000);
		await tab.goto(`${site.origin}/rig/`);
		await tab.evaluate(
			([key, text]) => localStorage.setItem(key as string, text as string),
			['prep-bay.rig.00112233445566aa', planText(rig, 1)],
		);
		await tab.reload();
		await tab.locator('.rig-line').first().waitFor({ timeout: 60_000 });
		const slow: CDPSession = await context.newCDPSession(tab);
		await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
		const lines = tab.locator('.rig-line');
		table['open a row'] = await timed(tab, (n) => lines.nth(3 + n).click());
		const address = tab.locator('.rig-edit input').nth(2);
		table['type a start address'] = await timed(tab, async (n) => {
			await address.fill(String(100 + n));
			await address.press('Tab');
		});
		const x = tab.locator('.rig-edit input').nth(3);
		table['move a light'] = await timed(tab, async (n) => {
			await x.fill(String(10 + n));
			await x.press('Tab');
		});
		table['undo'] = await timed(tab, () => tab.locator('.rig-head .button').first().click(), 5);
		for (const each of ['labels', 'patch', 'line', 'load', 'light', 'ticks', 'changes'] as const) {
			const to = tab.locator('.rig-tab', { hasText: planWords.tabs[each] });
			const back = tab.locator('.rig-tab').first();
			await to.click();
			await tab.waitForTimeout(1500);
			await back.click();
			await tab.waitForTimeout(500);
			table[`tab: ${each}`] = await timed(
				tab,
				async () => {
					await to.click();
				},
				1,
			);
			table[`back from ${each}`] = await timed(tab, () => back.click(), 1);
		}
		await tab.getByRole('button', { name: planWords.another }).click();
		await tab.getByRole('button', { name: startWords.paste }).click();
		const list = [
			'Fixture\tName\tPlace',
			...Array.from({ length: ROWS }, (_, i) => `Tallow 6\tWash ${i}\t${i % 190}`),
		].join('\n');
		table[`paste ${ROWS} rows`] = await timed(
			tab,
			() =>
				tab.locator('dialog textarea').evaluate((box, text) => {
					(box as HTMLTextAreaElement).value = text;
					box.dispatchEvent(new Event('input', { bubbles: true }));
				}, list),
			3,
		);
		table[`use ${ROWS} rows`] = await timed(
			tab,
			() => tab.locator('dialog .button-main', { hasText: 'Add' }).click(),
			1,
		);
	} finally {
		console.table(table);
		await browser.close();
		await site.close();
	}
	expect(Object.keys(table).length).toBeGreaterThan(5);
});
