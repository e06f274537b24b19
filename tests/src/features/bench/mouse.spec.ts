import { expect, test } from '@playwright/test';
import { display, drawer, key, layOut, lightOf, openFresh, socket, take } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

test('a fixture never seen before is powered, walked to mode and address, linked, and lit, by mouse', async ({
	page: tab,
}) => {
	await openFresh(tab);
	await layOut(tab, 'One battery wash');
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');
	expect(await display(tab)).toBe('');
	await tab.getByRole('switch', { name: 'Power switch' }).click();
	await expect(tab.locator('.display')).toHaveText('SRCE');
	await expect(lightOf(tab, 'Wash 1')).toContainText('white');

	// start address 10: into DATA, STRT, and nine up
	await key(tab, 'Down').click();
	await key(tab, 'Set').click();
	expect(await display(tab)).toBe('STRT');
	await key(tab, 'Set').click();
	for (let i = 0; i < 9; i++) await key(tab, 'Up').click();
	await expect(tab.locator('.display')).toHaveText('  10', { useInnerText: true });
	await key(tab, 'Set').click();
	// the mode the desk thinks it has
	await key(tab, 'Down').click();
	expect(await display(tab)).toBe('MODE');
	await key(tab, 'Set').click();
	await key(tab, 'Up').click();
	expect(await display(tab)).toBe('SL 9');
	await key(tab, 'Set').click();
	// and data decides
	await key(tab, 'Back').click();
	await key(tab, 'Up').click();
	await key(tab, 'Set').click();
	expect(await display(tab)).toBe('FROM');
	await key(tab, 'Set').click();
	await key(tab, 'Up').click();
	await key(tab, 'Up').click();
	expect(await display(tab)).toBe('LINE');
	await key(tab, 'Set').click();
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');

	await tab.getByRole('button', { name: 'Why does Wash 1 look like that?' }).click();
	const trail = tab.getByRole('dialog').locator('.trail');
	// nobody sends, no cable leads there, and so there never was data: each stops it, and nothing comes after
	await expect(trail.locator('[data-effect="stops"] .trail-effect')).toHaveText(Array(3).fill('stops here'));
	await expect(trail.locator('li').last()).toHaveAttribute('data-effect', 'stops');
	await tab.getByRole('dialog').getByRole('button', { name: 'Close' }).click();

	await socket(tab, 'desk:a').click();
	await socket(tab, 'wash-1:in').click();
	await expect(lightOf(tab, 'Wash 1')).toContainText('pink');
	await expect(tab.locator('.lamp[data-lamp="data"]')).toContainText('steady');

	await tab.getByRole('button', { name: 'Why does Wash 1 look like that?' }).click();
	await expect(trail.locator('[data-effect="stops"]')).toHaveCount(0);
	await expect(trail).toContainText('Prep desk, output A sends universe 1');
	await tab.keyboard.press('Escape');

	const log = await drawer(tab, 'log');
	await expect(log.locator('li').first()).toContainText('New cable');
	await tab.getByRole('button', { name: 'Undo' }).first().click();
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');
});

test('Up held down repeats and speeds up, as the model says', async ({ page: tab }) => {
	await openFresh(tab);
	await layOut(tab, 'One battery wash');
	await tab.getByRole('switch', { name: 'Power switch' }).click();
	await key(tab, 'Down').click();
	await key(tab, 'Set').click();
	await key(tab, 'Set').click();
	const up = await key(tab, 'Up').boundingBox();
	if (!up) throw new Error('no key');
	await tab.mouse.move(up.x + 20, up.y + 20);
	await tab.mouse.down();
	// one press, then repeats of one, then of ten: past 30 only by big steps in any sane time
	await expect.poll(async () => Number(await display(tab))).toBeGreaterThan(30);
	await tab.mouse.up();
	const reached = await display(tab);
	await tab.waitForTimeout(700);
	expect(await display(tab)).toBe(reached);
});

test('ten switches set an address, and the slide a mode', async ({ page: tab }) => {
	await openFresh(tab);
	await layOut(tab, 'Mixed panels');
	await take(tab, 'Old wash').click();
	await expect(lightOf(tab, 'Old wash')).toContainText('sky blue');
	// 21 is 1 + 4 + 16: with the first down it listens a channel too early
	await tab.getByRole('switch', { name: 'Switch 1: up' }).click();
	await expect(lightOf(tab, 'Old wash')).not.toContainText('sky blue');
	await tab.getByRole('switch', { name: 'Switch 1: down' }).click();
	await expect(lightOf(tab, 'Old wash')).toContainText('sky blue');
	await tab.getByRole('group', { name: 'Slots' }).getByRole('radio', { name: '7' }).check();
	await expect(lightOf(tab, 'Old wash')).not.toContainText('sky blue');
	await expect(tab.getByRole('heading', { name: /Mains electricity/ })).toBeVisible();
});

test('the wall shows what the desk asks for, and a press on a lamp takes it in hand', async ({ page: tab }) => {
	await openFresh(tab);
	const pool = tab.locator('.wall-pool[data-pool="wash-2.0"]');
	await expect(pool).toHaveAttribute('color', /^#f[0-9a-f]{5}$/);
	await tab.locator('.wall-lamp').nth(1).locator('.wall-body').click();
	await expect(tab.locator('.back').getByRole('heading', { name: 'Wash 2' })).toBeVisible();
	const desk = await drawer(tab, 'desk');
	await desk.getByRole('button', { name: 'Blackout: all to 0' }).click();
	await expect(pool).toHaveAttribute('color', '#000000');
	await expect(lightOf(tab, 'Wash 2')).toHaveText('dark');
});
