import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { home, learnPage, nextWords } from '#words/site/index.ts';
import { makeHunt } from '../../src/features/home/hunt.ts';
import { expectNothingWrong } from './axe.ts';

test.use({ serviceWorkers: 'block' });

const KEPT: Readonly<Record<string, string>> = JSON.parse(
	readFileSync(new URL('../src/storage/as-written.json', import.meta.url), 'utf8'),
);
const RIG = ['prep-bay.rig.00112233445566aa', 'prep-bay.ticks.00112233445566aa'];
const LEARNT = ['prep-bay.progress', 'prep-bay.review'];

/** Opens a page as somebody who has some of what is kept. */
async function comeBack(tab: Page, page: string, keys: readonly string[]): Promise<void> {
	await tab.addInitScript(
		(all) => {
			for (const [key, text] of all) localStorage.setItem(key, text);
		},
		keys.map((key) => [key, KEPT[key] ?? ''] as const),
	);
	await tab.goto(page);
}

test('at a first visit the dark light is found by two looks and a fix, and no script file is asked for', async ({
	page: tab,
}) => {
	const hunt = makeHunt();
	const scripts: string[] = [];
	tab.on('request', (request) => request.resourceType() === 'script' && scripts.push(request.url()));
	await tab.setViewportSize({ width: 390, height: 844 });
	await tab.goto('/');
	await expect(tab.locator('.returns')).toBeHidden();
	await tab.getByRole('button', { name: home.hunt.ask }).click();
	for (const { title, seen, answers } of hunt.looks) {
		await expect(tab.getByRole('heading', { name: title })).toBeFocused();
		const other = answers.find(({ id }) => id !== seen);
		await tab.getByRole('button', { name: other?.says ?? '', exact: true }).click();
		await expect(tab.getByText(home.hunt.again).and(tab.locator(':visible'))).toHaveCount(1);
		// picture, question and answers are in one thumb's reach
		const right = tab.getByRole('button', { name: answers.find(({ id }) => id === seen)?.says ?? '', exact: true });
		await expect(right).toBeInViewport({ ratio: 1 });
		await right.click();
	}
	await expect(tab.locator('.unlit').first()).toBeHidden();
	await expect(tab.getByText(hunt.cause)).toBeVisible();
	await tab.getByRole('button', { name: home.hunt.do }).click();
	await expect(tab.locator('.unlit').first()).toBeVisible();
	await expect(tab.locator('[data-said]')).toHaveText(home.hunt.done);
	await expect(tab.getByRole('img', { name: home.picture(hunt.lights.length, null) })).toBeVisible();
	await expect(tab.locator('figcaption')).toHaveText(home.pictureLit(hunt.lights.length));
	await expectNothingWrong(tab);
	expect(scripts).toEqual([]);
});

test('the dark light is found by keyboard alone', async ({ page: tab }) => {
	await tab.goto('/');
	await tab.getByRole('button', { name: home.hunt.ask }).press('Enter');
	for (const { seen, answers } of makeHunt().looks) {
		for (let stops = answers.findIndex(({ id }) => id === seen); stops >= 0; stops--) await tab.keyboard.press('Tab');
		await tab.keyboard.press('Enter');
	}
	await tab.keyboard.press('Tab');
	await tab.keyboard.press('Enter');
	await expect(tab.locator('.unlit').first()).toBeVisible();
});

test('who has a rig sees how far it has come, and goes on with it or to the finder on what is dark', async ({
	page: tab,
}) => {
	await comeBack(tab, '/', [...RIG, ...LEARNT]);
	await expect(tab.getByText(nextWords.lit(0, 1))).toBeVisible();
	await expect(tab.locator('.dark-one')).toBeHidden();
	await expect(tab.getByRole('link', { name: nextWords.goOn })).toHaveAttribute('href', '/rig/#ticks');
	await tab.getByRole('button', { name: nextWords.dark }).click();
	await expectNothingWrong(tab);
	await tab.getByRole('group', { name: nextWords.darkWhich }).getByRole('button', { name: 'Wash 1' }).click();
	await tab.waitForURL('/finder/');
	await expect(tab.getByText('Wash 1').first()).toBeVisible();
});

test('a rig that cannot be read leaves the way to start one', async ({ page: tab }) => {
	await tab.addInitScript(() => localStorage.setItem('prep-bay.rig.00112233445566aa', '{"version":1,"pl'));
	await tab.goto('/');
	await expect(tab.getByRole('link', { name: nextWords.start })).toBeVisible();
});

for (const [width, colorScheme] of [
	[390, 'dark'],
	[1280, 'light'],
] as const)
	test(`what is due stands on Learn and at home, ${width} ${colorScheme}`, async ({ page: tab }) => {
		await tab.setViewportSize({ width, height: 844 });
		await tab.emulateMedia({ colorScheme });
		await comeBack(tab, '/learn/', LEARNT);
		const rows = tab.locator('.next-up .rows a');
		await expect(rows).toHaveCount(3);
		await expect(rows.first()).toHaveText(nextWords.review);
		await expect(tab.getByRole('heading', { level: 1 })).toHaveText(learnPage.heading);
		await expectNothingWrong(tab);
		await tab.goto('/');
		await expect(tab.getByRole('link', { name: nextWords.start })).toBeVisible();
		await expect(rows).toHaveCount(2);
		await expectNothingWrong(tab);
	});
