import { expect, type Page, test } from '@playwright/test';
import { key, lightOf, openFresh, openSheet, wash } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

interface Counted {
	frames: number;
	timers: number;
	fired: number;
}

/** Counts what the page asks for from its first script on. */
async function count(tab: Page): Promise<void> {
	await tab.addInitScript(() => {
		const counted = { frames: 0, timers: 0, fired: 0 };
		Object.assign(window, { counted });
		const { requestAnimationFrame: frame, setTimeout: timeout, setInterval: interval } = window;
		window.requestAnimationFrame = (step) => {
			counted.frames++;
			return frame.call(window, step);
		};
		const counting =
			(real: typeof timeout | typeof interval) =>
			(act: TimerHandler, ...rest: unknown[]) => {
				counted.timers++;
				const tell = () => {
					counted.fired++;
					if (typeof act === 'function') act();
				};
				return (real as (...all: unknown[]) => number).call(window, tell, ...rest);
			};
		Object.assign(window, { setTimeout: counting(timeout), setInterval: counting(interval) });
	});
}

const counted = (tab: Page): Promise<Counted> =>
	tab.evaluate(() => ({ ...(window as unknown as { counted: Counted }).counted }));

/** What the page asked for in three seconds. */
async function inThreeSeconds(tab: Page): Promise<Counted> {
	const before = await counted(tab);
	await tab.waitForTimeout(3000);
	const after = await counted(tab);
	return {
		frames: after.frames - before.frames,
		timers: after.timers - before.timers,
		fired: after.fired - before.fired,
	};
}

const NONE: Counted = { frames: 0, timers: 0, fired: 0 };

/** Until whatever came of the last change is drawn, told and kept. */
const settle = (tab: Page) => tab.waitForTimeout(6000);

// each bench asked for a frame for ever, and looked at its rig in each, with nothing moving
test('a bench at rest asks for no frame and no timer, and wakes for a key, a fader and a programme', async ({
	page: tab,
}) => {
	await count(tab);
	await openFresh(tab);
	await settle(tab);
	expect(await inThreeSeconds(tab)).toEqual(NONE);
	const before = await tab.locator('.display').textContent();
	await key(tab, 'Down').click();
	await expect(tab.locator('.display')).not.toHaveText(before ?? '');
	await settle(tab);
	expect(await inThreeSeconds(tab)).toEqual(NONE);
	await tab.getByRole('switch', { name: 'Power switch' }).click();
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');
});

test('a bench on which a programme runs still moves, and a key held still repeats', async ({ page: tab }) => {
	await count(tab);
	await openSheet(tab, {
		version: 1,
		name: 'x',
		fixtures: [wash(1, { work: 'programme', programme: 'drift', speed: 80 })],
	});
	await settle(tab);
	expect((await inThreeSeconds(tab)).frames).toBeGreaterThan(20);
	const pool = tab.locator('[data-pool="wash-1.0"]').first();
	const colour = await pool.getAttribute('color');
	await expect.poll(() => pool.getAttribute('color')).not.toBe(colour);
});

test('a drill and a lesson’s bench rest too', async ({ page: tab }) => {
	await count(tab);
	await tab.goto('/drills/do/#kind=address-keys&seed=7');
	await tab.getByRole('button', { name: /^Begin/ }).click();
	await expect(tab.locator('.tools, .stage').first()).toBeVisible();
	await settle(tab);
	expect(await inThreeSeconds(tab)).toEqual(NONE);
	await tab.goto('/lessons/addresses-before-the-van/');
	// fetched when it comes near
	await tab.locator('.lesson-bench').scrollIntoViewIfNeeded();
	await expect(tab.locator('.practice .stage')).toBeVisible();
	await settle(tab);
	expect(await inThreeSeconds(tab)).toEqual(NONE);
});
