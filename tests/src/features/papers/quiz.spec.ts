import { type Browser, expect, type Page, test } from '@playwright/test';
import { type PaperRecipeInput, readRecipe, setPaper } from '../../../../shared/paper/index.ts';
import { paperFragment } from '../../../../src/features/papers/exchange/link.ts';
import { answerText } from '../../../../src/wording/index.ts';

const recipeOf = (some: Partial<PaperRecipeInput>): PaperRecipeInput => ({
	version: 1,
	title: 'Prep check',
	count: 1,
	...some,
});

async function opened(browser: Browser, baseURL: string | undefined, path: string, recipe: PaperRecipeInput) {
	const context = await browser.newContext({ serviceWorkers: 'block', baseURL: baseURL ?? '' });
	const tab = await context.newPage();
	await tab.setViewportSize({ width: 390, height: 844 });
	await tab.goto(`${path}${await paperFragment({ recipe: readRecipe(recipe), seed: 3 })}`);
	return tab;
}

const words = (tab: Page) => tab.locator('main').textContent();

// Symptom: a quiz’s practical had a Why? on every card, which told what stops the light. Cause: the bench always offered it.
test('a practical of a quiz offers no Why?, hint, way or log: not by touch, by keyboard, or after a reload', async ({
	browser,
	baseURL,
}) => {
	const recipe = recipeOf({ kinds: ['on-the-bench'], levels: ['easy'] });
	const tab = await opened(browser, baseURL, '/papers/sit/', recipe);
	await tab.getByRole('button', { name: 'Begin', exact: true }).click();
	await tab.getByRole('button', { name: 'Open the bench', exact: true }).click();
	const none = async () => {
		await expect(tab.locator('.stage .card').first()).toBeVisible();
		await expect(tab.getByRole('button', { name: /^Why/ })).toHaveCount(0);
		await expect(tab.getByRole('button', { name: /hint|show (me )?the way|give up/i })).toHaveCount(0);
		await expect(tab.locator('[data-tool="log"], [data-tool="breaker"], .trail')).toHaveCount(0);
		await expect(tab.locator('.sit a[href*="/drills/"], .sit a[href*="/bench/"]')).toHaveCount(0);
	};
	await none();
	// every stop of the Tab key on the bench
	const stops = new Set<string>();
	for (let i = 0; i < 60; i++) {
		await tab.keyboard.press('Tab');
		stops.add(await tab.evaluate(() => document.activeElement?.textContent?.trim() ?? ''));
	}
	expect([...stops].filter((stop) => /^why|hint/i.test(stop))).toEqual([]);
	await tab.getByRole('switch', { name: 'Power switch' }).first().click();
	await expect(tab.locator('.sit-bench')).toContainText('1 thing done');
	await tab.reload();
	await none();
});

// Symptom: 'a whole number from 0 to 999' under a question of percent. Cause: what may be stored was said for what may be answered.
test('the box says what range is asked for, and refuses what lies outside with a sentence', async ({
	browser,
	baseURL,
}) => {
	const tab = await opened(browser, baseURL, '/papers/sit/', recipeOf({ kinds: ['nth-address'] }));
	await tab.getByRole('button', { name: 'Begin', exact: true }).click();
	await expect(tab.locator('.sit-number')).toContainText('A whole number from 1 to 512.');
	await tab.getByLabel('Your answer').fill('513');
	await tab.keyboard.press('Tab');
	await expect(tab.locator('.sit-number')).toContainText('That is out of range. Type a number from 1 to 512.');
	await tab.getByLabel('Your answer').fill('512');
	await tab.keyboard.press('Tab');
	await expect(tab.locator('.sit-number')).not.toContainText('out of range');
});

// Symptom: who printed a quiz handed out its key. Cause: all three sheets were ticked from the start.
test('a quiz prints without its key unless that is asked for; an order is keyed by the letters it was printed with', async ({
	browser,
	baseURL,
}) => {
	const recipe = recipeOf({ kinds: ['bands-in-order', 'match-slots'], count: 4 });
	const tab = await opened(browser, baseURL, '/papers/print/', recipe);
	await expect(tab.locator('.sheet')).toHaveCount(2);
	await expect(tab.locator('.sheet-key')).toHaveCount(0);
	const { items } = setPaper(recipe, 3);
	const rights = items.flatMap((item) => {
		const { key } = item;
		return key.form === 'order' ? [answerText(item, { form: 'order', order: key.right })] : [];
	});
	expect(rights.length).toBeGreaterThan(0);
	for (const right of rights) expect(await words(tab)).not.toContain(right);
	await tab.getByText('The key, with workings').click();
	await expect(tab.locator('.sheet')).toHaveCount(3);
	for (const [at, { ask, key }] of items.entries()) {
		if (ask.form !== 'order' || key.form !== 'order') continue;
		// read off the printed question, as the trainer would
		const printed = await tab.locator('.sheet-questions > li').nth(at).locator('.sheet-options b').allInnerTexts();
		const wanted = key.right.map((id) => printed[ask.options.findIndex((option) => option.id === id)]);
		await expect(tab.locator('.sheet-key-right').nth(at)).toContainText(`${wanted.join(' ')}:`);
	}
});
