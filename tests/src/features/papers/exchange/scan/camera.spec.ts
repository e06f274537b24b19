import { type Browser, expect, type Page, test } from '@playwright/test';
import { errors } from '#words/errors/index.ts';
import { scanWords } from '#words/papers/index.ts';
import { type PaperRecipeInput, readRecipe, setPaper } from '../../../../../../shared/paper/index.ts';
import { paperFragment, resultFragment } from '../../../../../../src/features/papers/exchange/link.ts';
import { qrDrawing } from '../../../../../../src/features/papers/exchange/qr.ts';
import { axe } from '../../../../../site/axe.ts';
import { tabTo } from '../../answering.ts';
import { browserWith, needsCamera, tracksOf, watchCamera } from './camera.ts';

const RECIPE: PaperRecipeInput = { version: 1, title: 'Prep check', count: 3, kinds: ['percent-of-value'] };
const SEED = 3;

const start = (tab: Page) => tab.getByRole('button', { name: scanWords.start });

async function pageIn(browser: Browser, baseURL: string | undefined, permissions = ['camera']): Promise<Page> {
	const viewport = { width: 390, height: 844 };
	const context = await browser.newContext({ serviceWorkers: 'block', baseURL: baseURL ?? '', viewport, permissions });
	const tab = await context.newPage();
	await watchCamera(tab);
	return tab;
}

const paperCode = async (): Promise<string> =>
	`http://venue.test/papers/sit/${await paperFragment({ recipe: readRecipe(RECIPE), seed: SEED })}`;

async function resultCode(): Promise<string> {
	const recipe = readRecipe(RECIPE);
	const paper = setPaper(recipe, SEED);
	const answers = {};
	const slip = { recipe, seed: SEED, version: 1, paper: paper.mark, name: 'Hand 1', answers, claimed: 0 } as const;
	const when = { started: 1_790_000_000_000, ended: 1_790_000_060_000, attempt: '0123456789abcdef' };
	return `http://venue.test/papers/${await resultFragment({ ...slip, ...when }, paper)}`;
}

test('a learner opens a paper by holding its code before the camera, with keys alone; the camera is let go', async ({
	baseURL,
}) => {
	const browser = await browserWith([await paperCode()]);
	await needsCamera(browser, baseURL);
	const tab = await pageIn(browser, baseURL);
	await tab.goto('/papers/sit/');
	await tabTo(tab, start(tab));
	await tab.keyboard.press('Enter');
	await expect(tab.getByRole('button', { name: 'Begin' })).toBeVisible();
	await expect(tab.getByRole('status').filter({ hasText: '‘Prep check’ is open.' })).toHaveCount(1);
	expect(await tracksOf(tab)).toEqual(['ended']);
	await browser.close();
});

test('a learner opens a paper from a picture of its code; one with no code in it gives a sentence', async ({
	browser,
	baseURL,
}) => {
	const tab = await pageIn(browser, baseURL);
	const { size, path } = qrDrawing(await paperCode());
	const pictureOf = async (drawn: string) => {
		await tab.setContent(`<svg viewBox="0 0 ${size} ${size}" width="380">${drawn}</svg>`);
		return { name: 'code.png', mimeType: 'image/png', buffer: await tab.locator('svg').screenshot() };
	};
	const pictures = [await pictureOf(''), await pictureOf(`<path d="${path}"/>`)] as const;
	await tab.goto('/papers/sit/');
	const files = tab.getByLabel('Open a quiz’s file, or a picture of its QR code');
	await files.setInputFiles(pictures[0]);
	await expect(tab.getByRole('alert').filter({ hasText: 'No QR code was found in this picture.' })).toBeVisible();
	await files.setInputFiles(pictures[1]);
	await expect(tab.getByRole('button', { name: 'Begin' })).toBeVisible();
});

test('a trainer takes in one code after another, each once; axe is clean meanwhile, and leaving lets the camera go', async ({
	baseURL,
}) => {
	const browser = await browserWith([await resultCode(), await paperCode()]);
	await needsCamera(browser, baseURL);
	const tab = await pageIn(browser, baseURL);
	await tab.goto('/papers/');
	await start(tab).click();
	await expect(tab.locator('.scan-view[data-on="true"]')).toBeVisible();
	const said = tab.locator('.gather').getByRole('status');
	// the film goes round: by the second time it was here already
	await expect(said.filter({ hasText: /1 result (taken in|was here already)/ })).toHaveCount(1);
	await expect(said.filter({ hasText: '‘Prep check’ is a quiz' })).toHaveCount(1);
	await expect(tab.locator('.gather')).toContainText('Hand 1');
	for (const colorScheme of ['light', 'dark'] as const) {
		await tab.emulateMedia({ colorScheme });
		const { violations } = await axe(tab, '.gather');
		expect(violations.map(({ id }) => id)).toEqual([]);
	}
	await tab.setViewportSize({ width: 320, height: 700 });
	expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
	expect(await tracksOf(tab)).toEqual(['live']);
	await tab.getByRole('button', { name: scanWords.stop }).click();
	await expect.poll(() => tracksOf(tab)).toEqual(['ended']);
	await expect(start(tab)).toBeFocused();

	// gone to another page meanwhile
	await start(tab).click();
	await expect(tab.locator('.scan-view[data-on="true"]')).toBeVisible();
	await tab.evaluate(() => {
		Object.defineProperty(document, 'visibilityState', { value: 'hidden' });
		document.dispatchEvent(new Event('visibilitychange'));
	});
	await expect.poll(() => tracksOf(tab)).toEqual(['ended', 'ended']);
	await expect(start(tab)).toBeVisible();
	await browser.close();
});

test('a camera that is refused, missing, or not given to such a page: a sentence, and the button again', async ({
	baseURL,
}) => {
	const says = async (tab: Page, words: string, address = '/papers/sit/') => {
		await tab.goto(address);
		await start(tab).click();
		await expect(tab.locator('.scan').getByRole('alert')).toHaveText(words);
		await expect(start(tab)).toBeVisible();
	};
	const port = new URL(baseURL ?? '').port;
	const browser = await browserWith(
		['nothing'],
		['--host-resolver-rules=MAP venue.test 127.0.0.1', '--deny-permission-prompts'],
	);
	await needsCamera(browser, baseURL);
	await says(await pageIn(browser, baseURL, []), errors['camera.refused']);
	await says(await pageIn(browser, baseURL), errors['camera.insecure'], `http://venue.test:${port}/papers/sit/`);
	await browser.close();
	const bare = await browserWith(null);
	await says(await pageIn(bare, baseURL), errors['camera.missing']);
	await bare.close();
});
