import { constants, deflateRawSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';
import { readSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import { linkOf } from '../../src/features/rig/index.ts';
import { wash } from '../src/features/bench/open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

/** The longest a page may be held at a stretch, ms. */
const BAR = 200;
/** What other work on the machine may add to that before it counts: a page that is frozen stands for seconds. */
const LOAD = 400;

/**
 * A long frame as the browser reports it (W3C Long Animation Frames): what its scripts took, and from when it worked out style and
 * layout to its end (0 where it drew nothing), are apart from the browser's own work.
 */
type Frame = PerformanceEntry & {
	readonly scripts: readonly { readonly startTime: number; readonly duration: number }[];
	readonly styleAndLayoutStart: number;
};

/**
 * Has the page note how long its scripts, style and layout took in each long frame. What the browser does beside them is its own:
 * Debian's Chromium 150 takes over a second to open any address of a megabyte, with no script of ours in it, and as long to lay out a
 * megabyte that a person pasted into a box.
 * @param isDrawingOurs whether style and layout count
 */
async function watch(tab: Page, isDrawingOurs = true): Promise<void> {
	await tab.addInitScript((isOurs) => {
		const held: number[] = [];
		Object.assign(window, { held });
		new PerformanceObserver((list) => {
			for (const { startTime, duration, scripts, styleAndLayoutStart: layout } of list.getEntries() as Frame[]) {
				// scripts that layout calls, such as those that watch a size, are within its time
				const before = scripts.filter((script) => !isOurs || layout === 0 || script.startTime < layout);
				const drawing = isOurs && layout > 0 ? startTime + duration - layout : 0;
				held.push(before.reduce((sum, script) => sum + script.duration, drawing));
			}
		}).observe({ entryTypes: ['long-animation-frame'] });
	}, isDrawingOurs);
}

async function expectFree(tab: Page, what: string): Promise<void> {
	const longest = await tab.evaluate(() => Math.max(0, ...(window as unknown as { held: number[] }).held));
	console.log(`  held ${Math.round(longest)} ms by ${what} (bar ${BAR}, and ${LOAD} for a busy machine)`);
	expect(longest, what).toBeLessThanOrEqual(BAR + LOAD);
}

const packed = (text: string | Buffer): string => deflateRawSync(text).toString('base64url');

/** Bytes that stand for so many megabytes of blanks: ten at a time, each flushed so that they can be put in a row. */
function bomb(megabytes: number): string {
	const piece = deflateRawSync(Buffer.alloc(10_000_000, ' '), { finishFlush: constants.Z_FULL_FLUSH });
	const end = Buffer.from([3, 0]);
	return Buffer.concat([...Array.from({ length: megabytes / 10 }, () => piece), end]).toString('base64url');
}

const washes = (count: number) =>
	readSheet({
		version: 1,
		name: 'Long',
		hall: { width: 2 * count + 4, height: 6 },
		fixtures: Array.from({ length: count }, (_, i) => wash(i + 1)),
	});
const sheet = JSON.stringify(washes(2));

const LINKS: readonly (readonly [what: string, packed: string])[] = [
	['700 MB in 0.9 MB', bomb(700)],
	['2.5 million empty entries', packed(`[${sheet},[${'{},'.repeat(2_500_000)}{}]]`)],
	['2.5 million fixtures', packed(`[{"version":1,"name":"x","fixtures":[${'{},'.repeat(2_500_000)}{}]},[]]`)],
	['brackets two million deep', packed('['.repeat(2_000_000))],
	['a sheet nested half a million deep', packed(`[{"a":${'{"a":'.repeat(500_000)}0${'}'.repeat(500_000)}},[]]`)],
];

for (const [what, bytes] of LINKS) {
	test(`a bench’s link of ${what} is refused in one sentence, and holds nobody up`, async ({ page: tab }) => {
		await watch(tab);
		await tab.goto(`/bench/#rig=1.${bytes}`);
		await expect(tab.getByRole('alert').filter({ hasText: 'The bench is empty for now.' })).toBeVisible();
		await expectFree(tab, what);
	});
}

test('a bench’s link of 600 long waits, with keys held on every fixture, is refused before it is played', async ({
	page: tab,
}) => {
	await watch(tab);
	const many = washes(64);
	const held = many.fixtures.map(({ id }): RigEvent => ({ type: 'key.down', fixture: id, key: 'up' }));
	const waits = Array.from({ length: 600 }, (): RigEvent => ({ type: 'clock.wait', ms: 2_000_000_000 }));
	await tab.goto(`/bench/${await linkOf({ sheet: many, log: [...held, ...waits] })}`);
	await expect(tab.getByRole('alert').filter({ hasText: 'The bench is empty for now.' })).toBeVisible();
	await expectFree(tab, '600 long waits');
});

test('a link that plays long pauses for the page, says how far it is, and can be stopped', async ({ page: tab }) => {
	await watch(tab);
	const many = washes(48);
	const log = Array.from(
		{ length: 19_000 },
		(_, i): RigEvent =>
			i % 2 === 0
				? { type: 'key.tap', fixture: `wash-${1 + ((i / 2) % 48)}`, key: i % 4 === 0 ? 'down' : 'up' }
				: { type: 'clock.wait', ms: 70_000 },
	);
	// the page's clock is made to run fast, so that the bar is there however quick the machine
	await tab.addInitScript(() => {
		const real = performance.now.bind(performance);
		performance.now = () => 20 * real();
	});
	await tab.goto(`/bench/${await linkOf({ sheet: many, log })}`);
	const stop = tab.getByRole('button', { name: 'Stop', exact: true });
	await expect(tab.getByText('This bench has a long history.')).toBeVisible();
	await stop.click();
	await expect(tab.getByRole('alert').filter({ hasText: 'You stopped this rig from being opened.' })).toBeVisible();
	await expectFree(tab, 'a link of 19,000 events, stopped');
});

test('an honest hour of practice opens from its link, and holds nobody up', async ({ page: tab }) => {
	await watch(tab);
	const log = Array.from({ length: 4800 }, (_, i): RigEvent => {
		if (i % 2 === 1) return { type: 'clock.wait', ms: i % 400 === 1 ? 240_000 : 700 };
		return i % 4 === 0
			? { type: 'key.tap', fixture: 'wash-1', key: i % 8 === 0 ? 'down' : 'up' }
			: { type: 'power.switch', fixture: 'wash-2', on: i % 8 === 2 };
	});
	await tab.goto(`/bench/${await linkOf({ sheet: washes(4), log })}`);
	await expect(tab.locator('li.card')).toHaveCount(4);
	await expectFree(tab, 'an hour of practice');
});

test('a quiz’s and a result’s link, and a file, go through the same bounds', async ({ page: tab }) => {
	await watch(tab);
	for (const what of ['paper', 'result'])
		for (const [name, bytes] of LINKS) {
			await tab.goto('about:blank');
			await tab.goto(`/papers/sit/#${what}=1.${bytes}.00000000`);
			await expect(
				tab.locator('main [role="alert"]').filter({ hasText: /\w/ }).first(),
				`${what}: ${name}`,
			).toBeVisible();
			await expectFree(tab, `${what}: ${name}`);
		}
});

test('a rig pasted into the fault finder goes through the same bounds', async ({ page: tab }) => {
	await watch(tab, false);
	await tab.goto('/finder/');
	const own = tab.getByText('A rig sheet of your own', { exact: false }).first();
	if (await own.isVisible()) await own.click();
	for (const [name, bytes] of LINKS) {
		const box = tab.locator('.own-sheet textarea');
		await box.evaluate((element, text) => {
			(element as HTMLTextAreaElement).value = text;
			element.dispatchEvent(new Event('input', { bubbles: true }));
		}, `#rig=1.${bytes}`);
		await tab.locator('.own-sheet').getByRole('button').last().click();
		await expect(tab.locator('main [role="alert"]').filter({ hasText: /\w/ }).first(), name).toBeVisible();
		await expectFree(tab, `pasted into the finder: ${name}`);
	}
});
