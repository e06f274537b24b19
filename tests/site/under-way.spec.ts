import { expect, type Page, test } from '@playwright/test';
import { type SiteServer, serve } from '../../src/site/server/index.ts';
import { untilKept, version, versionsOf } from './versions.ts';

const DRILL = '/drills/do/#kind=address-keys&seed=7';

const notice = (tab: Page) => tab.locator('.update-sheet');
const face = (tab: Page) => tab.locator('.display').textContent();

/** Begins a drill, takes a hint, and presses a key whose effect shows. */
async function beginDrill(tab: Page, origin: string): Promise<string | null> {
	await tab.goto(`${origin}${DRILL}`);
	await tab.getByRole('button', { name: /^Begin/ }).click();
	await expect(tab.locator('.display')).toBeVisible();
	await tab.getByRole('button', { name: 'Hint', exact: true }).click();
	const before = await face(tab);
	await tab.locator('.panel').getByRole('button', { name: 'Down', exact: true }).click();
	await expect(tab.locator('.display')).not.toHaveText(before ?? '');
	await tab.waitForTimeout(800);
	return face(tab);
}

async function expectAsLeft(tab: Page, shown: string | null): Promise<void> {
	await expect(tab.getByText('You were in the middle of this.')).toBeVisible();
	await expect(tab.locator('.display')).toHaveText(shown ?? '');
}

// a whole version is fetched and checked file by file before it shows: longer on a busy machine
const LONG = { timeout: 60_000 };

test.describe('with a new version', () => {
	test.slow();
	let one: string;
	let two: string;
	let site: SiteServer;

	test.beforeAll(async () => {
		[one, two] = await Promise.all([version('one'), version('two')]);
	});
	test.beforeEach(async ({ page: tab }) => {
		site = await serve(one, 0, 'quick');
		await tab.goto(`${site.origin}/`);
		await untilKept(tab);
	});
	test.afterEach(() => site.close().catch(() => undefined));

	// taken in one tab, a new version loaded every tab again at once: a drill half done in another was gone
	test('a drill in another tab is waited for, each tab says so, and it is there as it was when come back to', async ({
		page: tab,
		context,
	}) => {
		const shown = await beginDrill(tab, site.origin);
		site.use(two);
		const other = await context.newPage();
		await other.goto(`${site.origin}/about/`);
		await expect(notice(other)).toBeVisible(LONG);
		await notice(other).getByRole('button', { name: 'Take it now' }).click();
		await expect(notice(other)).toContainText('Something is under way in another tab');
		await expect(notice(tab)).toContainText('It comes when you have finished here.');
		await tab.waitForTimeout(1500);
		for (const it of [tab, other]) expect(await versionsOf(it)).toEqual(['one', 'one']);
		expect(await face(tab)).toBe(shown);
		// left half done: from then on nothing is under way
		await tab.getByRole('link', { name: 'All drills' }).click();
		await expect.poll(() => versionsOf(other).catch(() => null), LONG).toEqual(['two', 'two']);
		await tab.goto(`${site.origin}${DRILL}`);
		expect(await versionsOf(tab)).toEqual(['two', 'two']);
		await expectAsLeft(tab, shown);
	});

	test('a tab with a drill may ask for it too, and closing the tab is enough', async ({ page: tab, context }) => {
		const other = await context.newPage();
		await other.goto(`${site.origin}/about/`);
		site.use(two);
		await beginDrill(tab, site.origin);
		await expect(notice(tab)).toBeVisible(LONG);
		await notice(tab).getByRole('button', { name: 'Take it now' }).click();
		await expect(notice(tab)).toContainText('The new version comes when you have finished here.');
		await expect(notice(other)).toContainText('This page loads again when it comes.');
		await tab.waitForTimeout(1000);
		expect(await versionsOf(tab)).toEqual(['one', 'one']);
	});
});

// a reload in the middle of a drill began it anew, and forgot the hints that had been taken
test('a drill half done survives loading the page again, and a tab that broke', async ({
	page: tab,
	context,
	baseURL,
}) => {
	const shown = await beginDrill(tab, baseURL ?? '');
	await tab.reload();
	await expectAsLeft(tab, shown);
	const other = await context.newPage();
	await tab.close();
	await other.goto(`${baseURL}${DRILL}`);
	await expectAsLeft(other, shown);
	await other
		.getByRole('button', { name: 'Mark it', exact: true })
		.or(other.locator('.thumb-bar .button-main'))
		.first()
		.click();
	await expect(other.locator('.drill-numbers')).toContainText('1');
	await other.getByRole('button', { name: 'Start again' }).click();
	await expect(other.getByText('You were in the middle of this.')).toHaveCount(0);
	await expect(other.locator('.display')).not.toHaveText(shown ?? '');
});
