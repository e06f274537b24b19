import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { cautions } from '#words/cautions/index.ts';
import { errors } from '#words/errors/index.ts';
import { gdtfNames, leftGroups } from '#words/gdtf/index.ts';
import { figuresFrame, fileWords, stockWords as words } from '#words/stock/index.ts';
import { readArchive, readFixtureType, toProfile, writeArchive, writeGdtf } from '../../shared/gdtf/index.ts';
import { BUNDLED, type Profile } from '../../shared/profile/index.ts';
import { made } from '../shared/gdtf/made.ts';
import { axe, expectNothingWrong } from './axe.ts';
import { told, weighScripts } from './weigh.ts';

test.use({ serviceWorkers: 'block' });

const channel = (name: string, at: number, attribute: string): string =>
	`<DMXChannel Geometry="Body" DMXBreak="1" Offset="${at}"><LogicalChannel Attribute="${attribute}"><ChannelFunction Name="${name}" Attribute="${attribute}" DMXFrom="0/1"/></LogicalChannel></DMXChannel>`;
const RGB = ['R', 'G', 'B'].map((letter, i) => channel(letter, i + 1, `ColorAdd_${letter}`)).join('');
const mode = (name: string, channels: string): string =>
	`<DMXMode Name="${name}" Geometry="Body"><DMXChannels>${channels}</DMXChannels></DMXMode>`;

/** Two modes, one with what is not acted out, and ultraviolet. */
const FILE = writeArchive(
	made({
		type: 'Name="Hand made"',
		modes:
			mode('Short', RGB) +
			mode(
				'Long',
				`${RGB}${channel('Ultra', 4, 'ColorAdd_UV')}${channel('Shutter', 5, 'Shutter1Strobe')}${channel('Show', 6, 'Effects1')}`,
			),
	}),
);

const choose = (tab: Page, bytes: Uint8Array, name = 'any.gdtf'): Promise<void> =>
	tab
		.locator('input[type=file]')
		.setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });

async function open(tab: Page, bytes: Uint8Array, name?: string): Promise<void> {
	await tab.goto('/stock/');
	await expect(tab.getByText(words.none)).toBeVisible();
	await choose(tab, bytes, name);
}

test('a fixture file is read on the device, what is lost and assumed shown first, then kept and put on the bench', async ({
	page: tab,
}) => {
	await open(tab, FILE);
	await expect(tab.getByRole('heading', { name: 'Hand made' })).toBeFocused();
	// what can hurt stands first
	const careful = tab.locator('.caution');
	await expect(careful).toHaveCount(2);
	await expect(careful.nth(0)).toContainText(cautions.ultraviolet.title);
	await expect(careful.nth(1)).toContainText(cautions.flashing.title);
	await expect(tab.getByText(fileWords.standIn)).toBeVisible();
	const lost = tab.locator('.stock-group');
	await expect(lost.first()).toContainText(leftGroups.care);
	await lost.first().getByText(leftGroups.care).click();
	await expect(lost.first().locator('li').first()).toContainText('Effects1');
	await expect(lost.first().locator('.stock-path').first()).toContainText('modes[1]');
	await tab.getByText(figuresFrame.heading).click();
	await expect(tab.locator('.stock-doubts li').first()).toContainText('flashes');
	// nothing is kept so far
	expect(await tab.evaluate(() => localStorage.getItem('prep-bay.stock'))).toBe(null);

	await tab.getByRole('button', { name: fileWords.keep, exact: true }).press('Enter');
	await expect(tab.locator('.stock-list li')).toHaveCount(1);
	await expect(tab.locator('.stock-list')).toContainText(words.fromFile);
	await tab.getByRole('button', { name: words.openOne('Hand made') }).click();
	await tab.getByLabel(words.name, { exact: true }).fill('Row wash');
	await tab.getByLabel(words.watts).fill('90');
	await tab.getByText(figuresFrame.heading).click();
	await expect(tab.locator('.stock-doubts').first()).toContainText('90 W at full');
	await tab.getByRole('button', { name: words.putOne('Row wash') }).press('Enter');
	await expect(tab.locator('.stage')).toBeVisible({ timeout: 30_000 });
	await expect(tab.locator('.back')).toContainText('Row wash');
	await expect(tab.locator('.back')).toContainText('stand-in');
});

test('modes that are not wanted are left out, and none picked is told', async ({ page: tab }) => {
	await open(tab, FILE);
	await tab.getByRole('checkbox', { name: /^Long/ }).uncheck();
	await expect(tab.locator('.stock-group').filter({ hasText: leftGroups.modes })).toHaveCount(1);
	// the real one has that mode all the same
	await expect(tab.locator('.caution').first()).toContainText(cautions.ultraviolet.title);
	await tab.getByRole('checkbox', { name: /^Short/ }).uncheck();
	await expect(tab.getByRole('alert')).toHaveText(fileWords.noMode);
	await expect(tab.getByRole('button', { name: fileWords.keep, exact: true })).toBeDisabled();
	await tab.getByRole('checkbox', { name: /^Short/ }).check();
	await expect(tab.getByRole('button', { name: fileWords.keep, exact: true })).toBeEnabled();
	// while the file is read anew, what was read before cannot be kept: no answer comes within one turn of the page
	const box = await tab.getByRole('checkbox', { name: /^Long/ }).elementHandle();
	const isKept = await tab.getByRole('button', { name: fileWords.keep, exact: true }).evaluate(async (keep, pick) => {
		(pick as HTMLInputElement).click();
		for (let n = 0; n < 10; n++) await Promise.resolve();
		return !(keep as HTMLButtonElement).disabled;
	}, box);
	expect(isKept).toBe(false);
	await tab.getByRole('checkbox', { name: /^Long/ }).uncheck();
	await tab.getByRole('button', { name: fileWords.keep, exact: true }).click();
	await tab.getByRole('button', { name: words.openOne('Hand made') }).click();
	await tab.locator('summary').filter({ hasText: fileWords.chart }).click();
	await expect(tab.locator('.stock-read table')).toHaveCount(1);
});

test('a hostile file ends in a sentence, and the list is there again', async ({ page: tab }) => {
	const bomb = writeArchive(made({ type: `Name="${'x'.repeat(200)}"`, modes: mode('One', `${'<a>'.repeat(2000)}`) }));
	const cut = FILE.slice(0, FILE.length - 40);
	for (const [bytes, name] of [
		[new Uint8Array([80, 75, 3, 4, 0, 0]), 'any.zip'],
		[cut, 'cut.gdtf'],
		[bomb, 'deep.gdtf'],
		[new TextEncoder().encode('hello'), 'words.gdtf'],
	] as const) {
		await open(tab, bytes, name);
		await expect(tab.getByRole('alert')).toHaveText(/^\S.*\.$/);
		await expect(tab.getByRole('button', { name: fileWords.keep, exact: true })).toBeHidden();
		await tab.getByRole('button', { name: fileWords.leave }).press('Enter');
		await expect(tab.getByText(words.none)).toBeVisible();
	}
	await choose(tab, new TextEncoder().encode('{}'), 'other.json');
	await expect(tab.getByRole('alert')).toHaveText(errors['stock.damaged']);
});

test('one’s own is saved as GDTF, once it is said what that cannot hold', async ({ page: tab }) => {
	const [battery] = BUNDLED as [Profile];
	await open(tab, writeGdtf(battery).bytes);
	await tab.getByRole('button', { name: fileWords.keep, exact: true }).click();
	await tab.getByRole('button', { name: words.openOne(battery.name) }).click();
	await tab.getByLabel(words.wattHours).fill('200');
	await tab.getByRole('button', { name: fileWords.writeOne(battery.name) }).press('Enter');
	const dialog = tab.getByRole('dialog');
	await expect(dialog).toContainText('Its battery isn’t in the file. GDTF has no place for one.');
	const { violations } = await axe(tab);
	expect(violations.map(({ id }) => id)).toEqual([]);
	const coming = tab.waitForEvent('download');
	await dialog.getByRole('button', { name: fileWords.writeDo }).press('Enter');
	const saved = await coming;
	expect(saved.suggestedFilename()).toMatch(/\.gdtf$/);
	await expect(dialog).toContainText(fileWords.written);
	const bytes = new Uint8Array(await readFile(await saved.path()));
	const { profile } = toProfile(readFixtureType(readArchive(bytes).description), gdtfNames);
	expect(profile.modes.map(({ slots }) => slots.length)).toEqual(battery.modes.map(({ slots }) => slots.length));
});

for (const [width, colorScheme] of [
	[390, 'dark'],
	[1280, 'light'],
] as const)
	test(`axe finds nothing in what was read, ${colorScheme}, ${width} wide, and nothing is wider than the page`, async ({
		browser,
		baseURL,
	}) => {
		const context = await browser.newContext({
			...(baseURL ? { baseURL } : {}),
			viewport: { width, height: 900 },
			colorScheme,
			serviceWorkers: 'block',
		});
		const tab = await context.newPage();
		const expectNothing = async () => {
			const folded = tab.locator('main details:not([open]) > summary');
			while ((await folded.count()) > 0) await folded.first().click();
			await expectNothingWrong(tab);
		};
		await open(tab, FILE);
		await expect(tab.getByRole('button', { name: fileWords.keep, exact: true })).toBeVisible();
		await expectNothing();
		await tab.getByRole('button', { name: fileWords.keep, exact: true }).click();
		await tab.getByRole('button', { name: words.openOne('Hand made') }).click();
		await expectNothing();
		await context.close();
	});

test('the parser is fetched with the first file, not with the page', async ({ page: tab }) => {
	const scripts = weighScripts(tab);
	await tab.goto('/stock/');
	await expect(tab.getByText(words.none)).toBeVisible();
	await tab.waitForLoadState('networkidle');
	const rest = await scripts();
	await choose(tab, FILE);
	await expect(tab.getByRole('button', { name: fileWords.keep, exact: true })).toBeVisible();
	await tab.waitForLoadState('networkidle');
	const opened = await scripts();
	console.log(`/stock/ scripts at rest ${told(rest)}, with a fixture file open ${told(opened)}`);
	expect(rest.sent).toBeLessThanOrEqual(60);
	expect(opened.sent).toBeGreaterThan(rest.sent);
});
