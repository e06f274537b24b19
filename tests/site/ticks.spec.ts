import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault } from '../../sim/event/index.ts';
import { answer, readingOf } from '../src/features/finder/hidden.ts';
import { axe } from './axe.ts';
import { looks } from './looks.ts';

test.use({ serviceWorkers: 'block' });

/** A finger's width in the dark, px. */
const THUMB = 56;

const LIST = [
	'Fixture\tName\tMode\tPlace',
	'Tallow 6\tFloor 1\t9 ch\t0',
	'Picket 8\tBar 1\t35 ch\t2',
	'Cobble\tOld 1\t7 ch\t4',
].join('\n');

const open = async (tab: Page, address = '/rig/'): Promise<void> => {
	await tab.goto(address);
	await expect(tab.locator('[data-ready]')).toBeVisible({ timeout: 30_000 });
};

/** Three mixed fixtures, the bar overhead, with the sheet to tick open. */
async function begin(tab: Page): Promise<void> {
	await open(tab);
	await tab.getByRole('button', { name: 'Paste a list' }).click();
	await tab.getByLabel('Your list').fill(LIST);
	await tab.getByRole('button', { name: 'Add 3 fixtures' }).click();
	await tab.locator('.rig-line').nth(1).click();
	await tab.getByLabel('Overhead').check();
	await tab.getByRole('button', { name: 'Done' }).click();
	await tickOff(tab);
}

async function tickOff(tab: Page, who = 'ab'): Promise<void> {
	await tab.getByRole('button', { name: 'Tick off' }).click();
	await tab.getByLabel('Your initials').fill(who);
	await tab.getByRole('button', { name: 'Start ticking' }).click();
	await expect(tab.locator('.tick-list > li')).toHaveCount(3);
}

const bar = (tab: Page) => tab.locator('.tick-bar');
const tickNext = (tab: Page) =>
	bar(tab)
		.getByRole('button', { name: /^Tick: / })
		.click();
const openCard = (tab: Page, name: string) => tab.locator('.tick-line', { hasText: name }).click();

/** The link that goes to another phone. */
async function linkOf(tab: Page): Promise<string> {
	await tab.getByRole('button', { name: 'Send ticks and plan' }).click();
	const link = tab.getByLabel('Link', { exact: true });
	await expect(link).toHaveValue(/#plan=1\./);
	const { hash } = new URL(await link.inputValue());
	await tab.getByRole('button', { name: 'Close' }).click();
	return hash;
}

test('a row is ticked from charged to lit by thumb alone, and is there again when the page is', async ({
	page: tab,
}) => {
	await tab.setViewportSize({ width: 390, height: 844 });
	await begin(tab);
	await expect(bar(tab)).toContainText('Floor 1: Charged');
	await bar(tab).getByRole('button', { name: 'Show it: Floor 1' }).click();
	const seen: string[] = [];
	for (let n = 0; n < 19; n++) {
		await expect(bar(tab)).toBeInViewport();
		// the step, or the caution that stands whole before it
		await expect(tab.locator('.tick-steps > [data-next="true"]')).toBeInViewport();
		seen.push((await bar(tab).locator('.tick-next').textContent()) ?? '');
		await tickNext(tab);
	}
	await expect(bar(tab)).toContainText('All ticked');
	// the bond right after the clamp; all linked before the first is lit
	const at = (text: RegExp): number => seen.findIndex((each) => text.test(each));
	expect(at(/Bar 1: Second fixing/)).toBe(at(/Bar 1: Hung/) + 1);
	expect(at(/Bar 1: Supply off/)).toBeLessThan(at(/Bar 1: Hung/));
	expect(seen.slice(-3).every((each) => /: Lit$/.test(each))).toBe(true);
	await tab.reload();
	await expect(tab.locator('.tick-list > li')).toHaveCount(3, { timeout: 30_000 });
	await expect(tab.locator('.tick-count', { hasText: 'all done' })).toHaveCount(3);
	await openCard(tab, 'Bar 1');
	await expect(tab.locator('.tick-step', { hasText: 'Second fixing' })).toContainText('AB, ');
	await expect(tab.getByLabel('Your initials')).toHaveCount(0);
});

test('lit, or hung, before the second fixing is said and not forbidden', async ({ page: tab }) => {
	await begin(tab);
	await openCard(tab, 'Bar 1');
	await tab.getByRole('checkbox', { name: /^Lit/ }).check();
	await expect(bar(tab).getByRole('alert')).toContainText('second fixing isn’t ticked');
	// where the eye is too, however far the card has scrolled
	await expect(bar(tab).locator('.tick-told').first()).toBeInViewport();
	await expect(tab.getByRole('checkbox', { name: /^Lit/ })).toBeChecked();
	await tab.getByRole('checkbox', { name: /^Supply off/ }).check();
	// with its supply off it is not lit
	await expect(tab.getByRole('checkbox', { name: /^Lit/ })).not.toBeChecked();
	await tab.getByRole('checkbox', { name: 'Hung' }).check();
	await expect(bar(tab).getByRole('alert')).toContainText('second fixing isn’t ticked');
	await tab.getByRole('checkbox', { name: 'Second fixing' }).check();
	await expect(bar(tab).getByRole('alert')).toBeEmpty();
	await expect(tab.locator('.tick-card .notice')).toHaveCount(0);
});

test('a changed plan asks again for what it changed, and for no more', async ({ page: tab }) => {
	await begin(tab);
	await openCard(tab, 'Floor 1');
	for (const step of ['Charged', 'Mode set', 'Start address set'])
		await tab.getByRole('checkbox', { name: step }).check();
	await tab.getByRole('button', { name: 'Plan', exact: true }).click();
	await tab.locator('.rig-line').first().click();
	await tab.getByLabel('Start address', { exact: true }).fill('201');
	await tab.getByRole('button', { name: 'Done' }).click();
	await tab.getByRole('button', { name: 'Tick off' }).click();
	await openCard(tab, 'Floor 1');
	await expect(tab.locator('[data-standing="stale"]')).toHaveCount(1);
	await expect(tab.locator('[data-standing="stale"]')).toContainText('201');
	await expect(tab.getByRole('checkbox', { name: 'Mode set' })).toBeChecked();
});

test('two phones tick, their ticks go both ways by link, and what they said differently is shown', async ({
	page: tab,
	browser,
}) => {
	await begin(tab);
	await openCard(tab, 'Floor 1');
	await tab.getByRole('checkbox', { name: 'Charged' }).check();
	const other = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
	await open(other, `/rig/${await linkOf(tab)}`);
	await expect(other.getByText('1 new tick or note came in from AB.')).toBeVisible();
	await other.getByLabel('Your initials').fill('cd');
	await other.getByRole('button', { name: 'Start ticking' }).click();
	await openCard(other, 'Floor 1');
	await expect(other.getByRole('checkbox', { name: 'Charged' })).toBeChecked();
	await other.getByRole('checkbox', { name: 'Charged' }).uncheck();
	await other.getByRole('checkbox', { name: 'Mode set' }).check();
	await other.getByLabel('Note: Floor 1').fill('foot loose');
	await other.getByRole('button', { name: 'Keep the note' }).click();
	// meanwhile, not knowing
	await tab.getByRole('checkbox', { name: 'Charged' }).uncheck();
	await tab.getByRole('checkbox', { name: 'Charged' }).check();
	await tab.getByLabel('Note: Floor 1').fill('lens cracked');
	await tab.getByRole('button', { name: 'Keep the note' }).click();
	// the same tab, so the same page hears of a link
	await tab.evaluate(
		(hash) => {
			location.hash = hash;
		},
		await linkOf(other),
	);
	await expect(tab.getByText('3 new ticks and notes came in from CD.')).toBeVisible();
	await openCard(tab, 'Floor 1');
	const split = tab.locator('.tick-split');
	await expect(split).toContainText('Done, says AB');
	await expect(split).toContainText('Not done, says CD');
	await expect(tab.locator('.tick-note')).toContainText('foot loose');
	await expect(tab.locator('.tick-note')).toContainText('lens cracked');
	await expect(tab.getByRole('checkbox', { name: 'Mode set' })).toBeChecked();
	await split.getByRole('button', { name: 'It’s done', exact: true }).click();
	await expect(tab.getByRole('checkbox', { name: 'Charged' })).toBeChecked();
	await other.context().close();
});

test('ticks of another phone come in by file; a file of anything else gets a sentence', async ({ page: tab }) => {
	await begin(tab);
	await openCard(tab, 'Floor 1');
	await tab.getByRole('checkbox', { name: 'Charged' }).check();
	await tab.getByRole('button', { name: 'Send ticks and plan' }).click();
	const [download] = await Promise.all([
		tab.waitForEvent('download'),
		tab.getByRole('button', { name: 'Save to a file' }).click(),
	]);
	const text = readFileSync(await download.path(), 'utf8');
	await tab.getByRole('button', { name: 'Close' }).click();
	const file = (name: string, body: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(body) });
	const input = tab.locator('input[type="file"]');
	await input.setInputFiles(file('same.json', text));
	await expect(tab.getByText('Nothing new')).toBeVisible();
	await input.setInputFiles(
		file('more.json', text.replace('"step":"charged"', '"step":"mode"').replace('"AB"', '"CD"')),
	);
	await expect(tab.getByText('1 new tick or note came in from CD.')).toBeVisible();
	await input.setInputFiles(file('other.json', text.replace(/"id":"[0-9a-f]{16}"/, '"id":"00000000000000aa"')));
	await expect(tab.getByText('That file is of another rig.')).toBeVisible();
	await input.setInputFiles(file('bad.json', '{"version":1'));
	await expect(tab.getByText('holds no ticks of a rig')).toBeVisible();
});

test('two tabs tick the same rig and neither loses a tick', async ({ page: tab, context }) => {
	await begin(tab);
	const other = await context.newPage();
	await open(other, '/rig/#ticks');
	await openCard(tab, 'Floor 1');
	await openCard(other, 'Floor 1');
	await tab.getByRole('checkbox', { name: 'Charged' }).check();
	await other.getByRole('checkbox', { name: 'Mode set' }).check();
	for (const each of [tab, other])
		for (const step of ['Charged', 'Mode set']) await expect(each.getByRole('checkbox', { name: step })).toBeChecked();
	await tab.reload();
	await openCard(tab, 'Floor 1');
	for (const step of ['Charged', 'Mode set']) await expect(tab.getByRole('checkbox', { name: step })).toBeChecked();
});

test('a light that won’t come on opens the finder on it, and the way back leads to its card’s sheet', async ({
	page: tab,
}) => {
	await begin(tab);
	await openCard(tab, 'Bar 1');
	await tab.getByRole('button', { name: 'It won’t come on: find the fault of Bar 1' }).click();
	await expect(tab).toHaveURL(/\/finder\/$/);
	await expect(tab.locator('main')).toContainText('Bar 1', { timeout: 30_000 });
	await tab.goBack();
	await expect(tab.locator('.tick-list > li')).toHaveCount(3, { timeout: 30_000 });
});

for (const { colorScheme, width } of looks)
	test(`ticking holds to axe, to its width and to the thumb, ${colorScheme}, ${width}`, async ({ page: tab }) => {
		await tab.emulateMedia({ colorScheme });
		await tab.setViewportSize({ width, height: 844 });
		await begin(tab);
		const fits = async (): Promise<void> => {
			const { violations } = await axe(tab);
			expect.soft(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
			expect.soft(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
			const low = await tab
				.locator('.tick-line, .tick-step, .tick-bar .button, .tick-dark .button')
				.evaluateAll(
					(all, least) => all.filter((it) => it.clientHeight < least).map((it) => it.textContent),
					THUMB - 4,
				);
			expect.soft(low).toEqual([]);
		};
		await fits();
		await openCard(tab, 'Bar 1');
		await tab.getByRole('checkbox', { name: 'Hung' }).check();
		await fits();
	});

test('a row is ticked by keyboard alone', async ({ page: tab }) => {
	await begin(tab);
	await bar(tab).getByRole('button', { name: 'Show it: Floor 1' }).focus();
	await tab.keyboard.press('Enter');
	// the card has the focus, and its first step is the next stop past its caution
	await expect(tab.locator('.tick-card > .tick-line')).toBeFocused();
	await tab.keyboard.press('Tab');
	await expect(tab.getByRole('checkbox', { name: 'Charged' })).toBeFocused();
	await tab.keyboard.press('Space');
	await expect(tab.getByRole('checkbox', { name: 'Charged' })).toBeChecked();
});

/** Ticks open, one fixture in the dark: walks the finder to its end with what a rig with this fault shows. */
async function findFault(tab: Page, name: string, complaint: string, of: Omit<PlacedFault, 'place'>, toPlan = false) {
	await openCard(tab, name);
	await tab.getByRole('button', { name: `It won’t come on: find the fault of ${name}` }).click();
	await expect(tab).toHaveURL(/\/finder\/$/);
	await tab.locator(`[data-choice="${complaint}"]`).click({ timeout: 30_000 });
	const kept = await tab.evaluate(() => localStorage.getItem('prep-bay.finder'));
	const sheet: RigSheet = JSON.parse(kept ?? '').walk.rig.sheet;
	// the page gives each row an id that no other ever had
	const place = sheet.fixtures.find((fixture) => fixture.name === name)?.id ?? '';
	const fault: PlacedFault = { ...of, place };
	const read = readingOf({ rig: 'four-in-line', fixture: fault.place, complaint: 'dark', fault }, sheet);
	await expect(tab.locator('[data-check], [data-because]').first()).toBeAttached({ timeout: 30_000 });
	if (!toPlan) return answer(tab, read);
	while ((await tab.locator('[data-way="change-plan"]').count()) === 0) await answer(tab, read, 1);
	return [];
}

test('what the finder found is noted on the sheet with one tap, with who and when, and lit is ticked there', async ({
	page: tab,
}) => {
	await tab.setViewportSize({ width: 390, height: 844 });
	await begin(tab);
	await findFault(tab, 'Floor 1', 'dark', { fault: 'switched-off' });
	await tab.getByRole('link', { name: 'Note it on tonight’s rig' }).click();
	await expect(tab).toHaveURL(/\/rig\/#ticks$/);
	const found = tab.locator('.tick-found');
	await expect(found).toContainText('Switched off', { timeout: 30_000 });
	const { violations } = await axe(tab);
	expect(violations.map(({ id }) => id)).toEqual([]);
	expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
	await found.getByRole('button', { name: 'Note it and tick ‘Lit’' }).click();
	await expect(found).toHaveCount(0);
	await expect(tab.locator('.tick-note p').first()).toContainText(/It was: Switched off.+AB, /);
	await expect(tab.getByRole('checkbox', { name: /^Lit/ })).toBeChecked();
	// the finder’s walk is told of it by way of the worker
	await expect.poll(() => tab.evaluate(() => localStorage.getItem('prep-bay.finder'))).not.toContain('"found"');
	await tab.reload();
	await expect(tab.locator('.tick-list > li')).toHaveCount(3, { timeout: 30_000 });
	await openCard(tab, 'Floor 1');
	await expect(tab.locator('.tick-note p').first()).toContainText('It was: Switched off');
	await expect(found).toHaveCount(0);
});

test('a light at another start address: the plan is changed instead, and what would clash is said first', async ({
	page: tab,
}) => {
	await begin(tab);
	await findFault(tab, 'Bar 1', 'dark', { fault: 'wrong-address', detail: 'default' }, true);
	await tab.getByRole('link', { name: 'The plan is wrong: change it' }).click();
	const found = tab.locator('.tick-found');
	await expect(found).toContainText('Which changes, the plan or the light?', { timeout: 30_000 });
	await found.getByLabel('Start address on the light').fill('1');
	await found.getByLabel('Start address on the light').blur();
	await expect(found.locator('.tick-told')).toContainText('share channels');
	await found.getByLabel('Start address on the light').fill('101');
	await found.getByLabel('Start address on the light').blur();
	await expect(found.locator('.tick-told')).toHaveCount(0);
	await found.getByRole('button', { name: /^The plan: put it at 101/ }).click();
	await expect(tab.locator('.tick-line', { hasText: 'Bar 1' })).toContainText('101');
	await expect(tab.locator('.tick-note p').first()).toContainText('The plan was changed to 101');
});
