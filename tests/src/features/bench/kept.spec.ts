import { expect, type Page, test } from '@playwright/test';
import { readSheet } from '../../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../../sim/event/index.ts';
import { linkOf } from '../../../../src/features/rig/index.ts';
import { layOut, lightOf, openFresh, wash } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

const KEY = 'prep-bay.bench';
const cards = (tab: Page) => tab.locator('li.card');
const kept = (tab: Page) => tab.evaluate((key) => localStorage.getItem(key), KEY);
/** A bench of so many washes, laid by a link. */
const linkTo = (count: number) =>
	linkOf({
		sheet: readSheet({
			version: 1,
			name: `Row of ${count}`,
			fixtures: Array.from({ length: count }, (_, i) => wash(i + 1)),
		}),
		log: [],
	});

async function openList(tab: Page) {
	await tab.getByRole('button', { name: /^Kept benches/ }).click();
	const list = tab.getByRole('dialog', { name: 'Kept benches' });
	await expect(list.getByRole('listitem').first()).toBeVisible();
	return list;
}

// the tab that was left last wrote its own bench under the one key, though nobody had touched it
test('leaving an untouched tab takes nothing from the tab that was worked in', async ({ page: tab, context }) => {
	await openFresh(tab);
	await layOut(tab, 'One battery wash');
	await tab.waitForTimeout(1200);
	const idle = await context.newPage();
	await openFresh(idle);
	await expect(cards(idle)).toHaveCount(1);
	await layOut(tab, 'A leader and three followers');
	await expect(cards(tab)).toHaveCount(4);
	await tab.waitForTimeout(1200);
	const before = await kept(tab);
	await idle.goto('about:blank');
	expect(await kept(tab)).toBe(before);
	await tab.reload();
	await expect(lightOf(tab, 'Wash 1')).toContainText('changing by itself');
});

test('of two tabs that are both worked in, both benches are kept, listed, and can be brought back', async ({
	page: tab,
	context,
}) => {
	await openFresh(tab);
	const other = await context.newPage();
	await openFresh(other);
	await layOut(tab, 'A leader and three followers');
	await tab.waitForTimeout(1200);
	await layOut(other, 'One battery wash');
	await expect(other.getByText('Another tab kept a bench of its own here.')).toBeVisible();
	await tab.close();
	const list = await openList(other);
	await expect(list.getByRole('listitem')).toHaveCount(1);
	await expect(list).toContainText('4 fixtures');
	await list.getByRole('button', { name: /^Bring back / }).click();
	await expect(cards(other)).toHaveCount(4);
	await expect(lightOf(other, 'Wash 1')).toContainText('changing by itself');
	// what stood there went where the other had been
	const again = await openList(other);
	await expect(again.getByRole('listitem')).toHaveCount(1);
	await expect(again).toContainText('1 fixture,');
	await other.reload();
	await expect(cards(other)).toHaveCount(4);
});

// the second link's bench was set aside under the one name of the first: one's own was gone, and 'kept' it said
test('a second link leaves one’s own bench where it can be brought back', async ({ page: tab }) => {
	await openFresh(tab);
	await layOut(tab, 'One battery wash');
	await tab.waitForTimeout(1200);
	for (const count of [2, 3]) {
		await tab.goto('about:blank');
		await tab.goto(`/bench/${await linkTo(count)}`);
		await expect(cards(tab)).toHaveCount(count);
		await tab.waitForTimeout(1200);
	}
	const list = await openList(tab);
	await expect(list.getByRole('listitem')).toHaveCount(2);
	await list.getByRole('button', { name: /^Bring back .* 1 fixture,/ }).click();
	await expect(cards(tab)).toHaveCount(1);
});

test('a bench of a newer version is left as it is, said, and still whole when another has been kept', async ({
	page: tab,
}) => {
	const newer = '{"version":2,"kept":{"of":"tomorrow"}}';
	await tab.addInitScript(
		([key, text]) => {
			if (localStorage.length === 0) localStorage.setItem(key, text);
		},
		[KEY, newer] as const,
	);
	await openFresh(tab);
	await expect(tab.getByRole('alert').filter({ hasText: 'made by a newer version' })).toBeVisible();
	await tab.goto('about:blank');
	await openFresh(tab);
	expect(await kept(tab)).toBe(newer);
	await layOut(tab, 'One battery wash');
	await expect.poll(() => kept(tab)).not.toBe(newer);
	const list = await openList(tab);
	await expect(list.getByRole('listitem')).toContainText('A bench made by a newer version');
	const saved = tab.waitForEvent('download');
	await list.getByRole('button', { name: /^Save to a file/ }).click();
	const file = await (await saved).createReadStream();
	let text = '';
	for await (const part of file) text += String(part);
	expect(text).toBe(newer);
});

// what took longer than six seconds to play was set aside as damaged: the page's clock is made to run fast here
test('a bench with a long history is no damage: it opens, or is stopped and kept', async ({ page: tab }) => {
	const sheet = readSheet({ version: 1, name: 'Long', fixtures: [wash(1), wash(2)] });
	const log = Array.from(
		{ length: 6000 },
		(_, i): RigEvent =>
			i % 2 === 0 ? { type: 'power.switch', fixture: 'wash-1', on: i % 4 === 2 } : { type: 'clock.wait', ms: 500 },
	);
	const text = JSON.stringify({ version: 1, kept: [sheet, log] });
	await tab.addInitScript(
		([key, kept]) => {
			if (localStorage.length === 0) localStorage.setItem(key, kept);
			const real = performance.now.bind(performance);
			performance.now = () => 100 * real();
		},
		[KEY, text] as const,
	);
	await openFresh(tab);
	await expect(cards(tab)).toHaveCount(2);
	await expect(lightOf(tab, 'Wash 1')).toBeVisible();
	await expect(tab.getByText('set aside')).toHaveCount(0);
	expect(JSON.parse((await kept(tab)) ?? 'null')).toMatchObject({ kept: [{ name: 'Long' }, {}] });
});

test('a damaged bench is set aside beside those that were before it', async ({ page: tab }) => {
	await tab.addInitScript((key) => {
		if (localStorage.length > 0) return;
		localStorage.setItem(`${key}.damaged`, 'an earlier one');
		localStorage.setItem(key, '{"version":1,"kept":[');
	}, KEY);
	await openFresh(tab);
	await expect(tab.getByRole('alert').filter({ hasText: 'has been set aside' })).toBeVisible();
	const list = await openList(tab);
	await expect(list.getByRole('listitem')).toHaveCount(2);
	await list.getByRole('button', { name: 'Delete A bench that can’t be read' }).first().click();
	await list.getByRole('button', { name: 'Delete for good' }).click();
	await expect(list.getByRole('listitem')).toHaveCount(1);
});
