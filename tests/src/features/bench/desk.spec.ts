import { expect, test } from '@playwright/test';
import { drawer, layOut, lightOf, openFresh } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

test('a level is typed as value, percent or hexadecimal, and nonsense gets a sentence', async ({ page: tab }) => {
	await openFresh(tab);
	const desk = await drawer(tab, 'desk');
	const red = desk.getByRole('textbox', { name: 'Red, channel 4' });
	for (const [typed, shown] of [
		['128', '128 (50 %)'],
		['50%', '128 (50 %)'],
		['x80', '128 (50 %)'],
		['full', '255 (100 %)'],
	] as const) {
		await red.fill(typed);
		await red.press('Enter');
		await expect(red).toHaveValue(shown);
	}
	await red.fill('300');
	await red.press('Enter');
	await expect(red).toHaveAttribute('aria-invalid', 'true');
	await expect(desk.getByText('A level ends at 255')).toBeVisible();
	await expect(red).toHaveValue('300');
	await red.press('Escape');
	await expect(red).toHaveValue('255 (100 %)');
	await expect(red).toHaveAttribute('aria-invalid', 'false');
});

test('a slider moved is one step to undo, however many values it passed', async ({ page: tab }) => {
	await openFresh(tab);
	const desk = await drawer(tab, 'desk');
	const slider = desk.getByRole('slider', { name: 'Slider of Intensity, channel 1' });
	await slider.scrollIntoViewIfNeeded();
	const box = await slider.boundingBox();
	if (!box) throw new Error('no slider');
	await tab.mouse.move(box.x + box.width - 8, box.y + box.height / 2);
	await tab.mouse.down();
	for (let i = 1; i <= 10; i++) await tab.mouse.move(box.x + box.width - 8 - i * 15, box.y + box.height / 2);
	await tab.mouse.up();
	const entry = desk.getByRole('textbox', { name: 'Intensity, channel 1' });
	await expect(entry).not.toHaveValue('255 (100 %)');
	const log = await drawer(tab, 'log');
	await expect(log.locator('.log-lines li')).toHaveCount(1);
	await log.getByRole('button', { name: 'Undo' }).click();
	await expect(entry).toHaveValue('255 (100 %)');
});

test('a function slot tells its band, and a band chosen sets its middle', async ({ page: tab }) => {
	await openFresh(tab);
	const desk = await drawer(tab, 'desk');
	const band = desk.getByRole('combobox', { name: 'Band of Function, channel 2' });
	await expect(band).toHaveValue('colours');
	await band.selectOption('strobe');
	await expect(desk.getByRole('textbox', { name: 'Function, channel 2' })).toHaveValue('156 (61 %)');
	await expect(lightOf(tab, 'Wash 1')).toContainText('flashing');
	await expect(tab.getByRole('heading', { name: /Flashing light/ })).toBeVisible();
});

test('outputs, universes, master and patch', async ({ page: tab }) => {
	await openFresh(tab);
	const desk = await drawer(tab, 'desk');
	await desk.getByRole('switch', { name: 'Output A' }).click();
	await expect(tab.locator('.lamp[data-lamp="data"]')).toContainText('blinking');
	await desk.getByRole('switch', { name: 'Output A' }).click();
	const universe = desk.getByRole('textbox', { name: 'Universe of output A' });
	await universe.fill('two');
	await universe.press('Enter');
	await expect(desk.getByText('A universe is a whole number from 1 to 63999.')).toBeVisible();
	await universe.fill('2');
	await universe.press('Enter');
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');
	await universe.fill('1');
	await universe.press('Enter');
	await expect(lightOf(tab, 'Wash 1')).toContainText('warm white');
	const master = desk.getByRole('textbox', { name: 'Master' });
	await master.fill('0');
	await master.press('Enter');
	await expect(lightOf(tab, 'Wash 1')).toHaveText('dark');
	await desk.getByRole('heading', { name: 'Patch' }).click();
	const line = desk.getByRole('group', { name: 'Wash 1', exact: true });
	await line.getByRole('textbox', { name: 'Start address' }).fill('510');
	await line.getByRole('textbox', { name: 'Start address' }).press('Enter');
	await expect(desk.getByText('universe 1, channels 510 to 512')).toBeVisible();
	await expect(desk.getByText('Part of it runs past channel 512')).toBeVisible();
});

test('a bench with no desk can be given one, and an added fixture is patched past the others', async ({
	page: tab,
}) => {
	await openFresh(tab);
	await layOut(tab, 'A leader and three followers');
	const desk = await drawer(tab, 'desk');
	await desk.getByRole('button', { name: 'Add a desk' }).click();
	await desk.getByRole('heading', { name: 'Patch' }).click();
	await desk.getByRole('button', { name: 'Patch Wash 1' }).click();
	await desk.getByRole('button', { name: 'Patch Wash 2' }).click();
	await expect(desk.getByText('universe 1, channels 1 to 9')).toBeVisible();
	await expect(desk.getByText('universe 1, channels 10 to 18')).toBeVisible();
});
