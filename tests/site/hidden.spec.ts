import { expect, type Page, test } from '@playwright/test';
import { repairsOf } from '../src/features/hidden-faults/answer.ts';
import { axe } from './axe.ts';
import { looks } from './looks.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

const drill = { rig: 'leader-and-three', seed: 7, count: 1 } as const;
const link = '/finder/practise/#rig=leader-and-three&seed=7&count=1';

async function open(tab: Page): Promise<void> {
	await tab.goto(link);
	await expect(tab.locator('.hidden-one[data-busy="false"]')).toBeVisible({ timeout: 60_000 });
}

/** Chooses a check and does it. */
async function act(tab: Page, check: string): Promise<void> {
	await tab.locator('[data-sort="all"]').click();
	const row = tab.locator(`[data-check="${check}"]`);
	const place = tab.locator('details.hidden-fold', { has: row });
	if ((await place.getAttribute('open')) === null) await place.locator('summary').click();
	await row.locator('.hidden-check').click();
	const done = Number(await tab.locator('.hidden-one').getAttribute('data-done'));
	await row.locator('[data-way="do"]').click();
	await expect(tab.locator('.hidden-one')).toHaveAttribute('data-done', `${done + 1}`);
	await expect(tab.locator('.hidden-one')).toHaveAttribute('data-busy', 'false');
}

async function finds(tab: Page, where: string): Promise<void> {
	const { violations } = await axe(tab);
	expect(violations.map(({ id, nodes }) => `${where}: ${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
}

test('a look, a reload, the right mend: cleared, scored and judged', async ({ page: tab }) => {
	await open(tab);
	const look = await tab.locator('.hidden-place [data-check]').first().getAttribute('data-check');
	await act(tab, look ?? '');
	await expect(tab.locator('.hidden-log li')).toHaveCount(1);
	const said = (await tab.locator('.hidden-last').textContent()) ?? '';
	expect(said).toContain(': ');
	await expect(tab.locator('.hidden-one > [role="status"]').last()).toContainText(said);
	await tab.reload();
	await expect(tab.locator('.hidden-log li')).toHaveCount(1, { timeout: 60_000 });
	await tab.locator('.hidden-fitting summary').click();
	await expect(tab.locator('.hidden-fitting li').first()).toBeVisible();
	expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
	for (const mend of repairsOf(drill)) await act(tab, mend);
	const review = tab.locator('.hidden-review[data-cleared="true"]');
	await expect(review).toBeVisible();
	await expect(review).toBeFocused();
	await expect(review.locator('.hidden-faults li')).toHaveCount(1);
	await expect(review.locator('.hidden-score')).toHaveText(/^You spent .+\. The finder spends .+ on this rig\.$/);
	await expect(review.locator('.hidden-steps > li')).toHaveCount(2);
	await tab.reload();
	await expect(review).toBeVisible({ timeout: 60_000 });
});

test('giving up shows what it was; another drill is another', async ({ page: tab }) => {
	await open(tab);
	await tab.getByRole('button', { name: 'I give up' }).click();
	await expect(tab.locator('.hidden-review[data-cleared="false"]')).toBeVisible();
	const before = tab.url();
	await tab.getByRole('button', { name: 'Another drill' }).click();
	await expect(tab.locator('.hidden-one[data-done="0"][data-busy="false"]')).toBeVisible({ timeout: 60_000 });
	expect(tab.url()).not.toBe(before);
	expect(tab.url()).toMatch(/#rig=leader-and-three&seed=\d+&count=1$/);
});

test('a drill begins from its number; a bad number and a bad link get a sentence each', async ({ page: tab }) => {
	await tab.goto('/finder/practise/#rig=barn&seed=1&count=1');
	await expect(tab.locator('.notice-wrong')).toHaveText('That link names no drill known here. Begin one below.');
	await tab.getByLabel('Rig').selectOption('leader-and-three');
	await tab.getByLabel('Number of the drill').fill('seven');
	await tab.getByRole('button', { name: 'Begin' }).click();
	await expect(tab.locator('.field-error')).toContainText('Give a whole number');
	await tab.getByLabel('Number of the drill').fill('7');
	await tab.getByRole('button', { name: 'Begin' }).click();
	await expect(tab).toHaveURL(new RegExp(`${link}$`));
	await expect(tab.locator('.hidden-one[data-busy="false"]')).toBeVisible({ timeout: 60_000 });
});

test('the checks are large, searched by words, and one with a caution shows it before it is done', async ({
	page: tab,
}) => {
	await open(tab);
	await tab.locator('[data-sort="all"]').click();
	await tab.getByLabel('Search the checks').fill('zebra');
	await expect(tab.locator('.hidden-count')).toContainText('No check has these words');
	await tab.getByLabel('Search the checks').fill('');
	await tab.locator('[data-sort="mend"]').click();
	await tab.locator('.hidden-checks details').evaluateAll((all) => {
		for (const place of all) (place as HTMLDetailsElement).open = true;
	});
	for (const row of await tab.locator('.hidden-check').all())
		expect((await row.boundingBox())?.height).toBeGreaterThanOrEqual(48);
	await tab.locator('[data-check^="mend-swap-fixture@"] .hidden-check').first().click();
	await expect(tab.locator('.hidden-body .caution').first()).toBeVisible();
});

for (const { colorScheme, width } of looks) {
	test(`axe finds nothing on a drill, ${colorScheme}, ${width} wide`, async ({ page: tab }) => {
		await tab.emulateMedia({ colorScheme });
		await tab.setViewportSize({ width, height: 844 });
		await open(tab);
		await act(tab, (await tab.locator('.hidden-place [data-check]').first().getAttribute('data-check')) ?? '');
		await tab.locator('.hidden-fitting summary').click();
		await finds(tab, 'mid-drill');
		await tab.getByRole('button', { name: 'I give up' }).click();
		await expect(tab.locator('.hidden-review')).toBeVisible();
		await finds(tab, 'the review');
	});
}
