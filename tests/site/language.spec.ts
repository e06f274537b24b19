import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { benchWords, whyWords } from '#words/bench/index.ts';
import { keyNames } from '#words/rig/index.ts';
import { type PaperRecipeInput, readRecipe, setPaper } from '../../shared/paper/index.ts';
import { makeDrill, shortestWay } from '../../sim/drill/index.ts';
import { paperFragment } from '../../src/features/papers/exchange/link.ts';
import { type SiteServer, serve } from '../../src/site/server/index.ts';
import { saidHere, strays } from '../language/bare.ts';
import { bracketed } from '../language/brackets.ts';
import { buildMadeUp, madeUpSite } from '../language/build.ts';
import { drawer } from '../src/features/bench/open.ts';
import { answer, begin, type Hidden, readingOf } from '../src/features/finder/hidden.ts';
import { rightAnswer } from '../src/features/papers/rightAnswer.ts';
import { pages, sampled } from './pages.ts';

// The site in a made-up language, every word of it in brackets: a word without them stands in code, where no language reaches it.

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });
// one build for all of them
test.describe.configure({ mode: 'default' });

let site: SiteServer;
test.beforeAll(async () => {
	test.setTimeout(300_000);
	const took = await buildMadeUp();
	console.log(`language: built in ${(took / 1000).toFixed(1)} s`);
	site = await serve(madeUpSite, 0, 'quick');
});
test.afterAll(() => site?.close());

/** What a page says that the language did not give it, with where it stands. */
async function straysOn(tab: Page, where: string): Promise<string[]> {
	const said = await tab.evaluate(saidHere);
	expect(said.join(''), `${where} says something`).toContain('⟦');
	return said.flatMap((text) => (strays(text).length > 0 ? `${where}: ${text.trim().slice(0, 200)}` : []));
}

const clean = async (tab: Page, where: string) => expect.soft(await straysOn(tab, where)).toEqual([]);

/** What is folded, opened: a page's own folds say what they hold only then. */
async function unfold(tab: Page): Promise<void> {
	await tab.evaluate(() => {
		for (const fold of document.querySelectorAll('details')) fold.open = true;
	});
}

test('every page, as it comes', async ({ page: tab }) => {
	test.slow();
	const found: string[] = [];
	for (const page of pages) {
		// of the lessons, which one file makes, some are waited for until nothing more comes
		await tab.goto(`${site.origin}${page}`, { waitUntil: sampled.includes(page) ? 'networkidle' : 'domcontentloaded' });
		found.push(...(await straysOn(tab, page)));
	}
	expect(found).toEqual([]);
	await tab.goto(`${site.origin}/`);
	expect(await tab.locator('html').getAttribute('lang')).toBe('ja-x-zz');
	// a word put back where it was before is found, in a text and in an attribute
	await tab.locator('h1').evaluate((heading) => {
		heading.append(' Caution');
		heading.setAttribute('aria-label', 'Wash lit');
	});
	expect(await straysOn(tab, '/')).toEqual(['/: Wash lit', '/: Caution']);
});

test('what a page says where scripts are off, and what a device is told of the site', () => {
	const found = pages.flatMap((page) => {
		const markup = readFileSync(path.join(madeUpSite, page.endsWith('/') ? `${page}index.html` : page), 'utf8');
		return [...markup.matchAll(/<noscript>(.*?)<\/noscript>/gs)]
			.map(([, inside = '']) => inside.replaceAll(/<[^>]*>/g, ' '))
			.filter((text) => strays(text).length > 0);
	});
	const manifest = JSON.parse(readFileSync(path.join(madeUpSite, 'site.webmanifest'), 'utf8')) as Record<
		string,
		string
	>;
	found.push(...['name', 'short_name', 'description'].flatMap((key) => strays(manifest[key] ?? 'no such word')));
	expect(found).toEqual([]);
});

test('the bench at work: every drawer, a press, why, laid out anew, and what a bad link is told', async ({
	page: tab,
}) => {
	await tab.goto(`${site.origin}/bench/`);
	await expect(tab.locator('.stage')).toBeVisible();
	for (const tool of ['desk', 'cables', 'remote', 'sound', 'breaker', 'clock', 'log']) {
		await drawer(tab, tool);
		await clean(tab, `the bench with ${tool} open`);
	}
	await tab.locator('.panel button').first().click();
	await tab.locator('.card-why').first().click();
	await expect(tab.locator('.trail, [role="dialog"], dialog').first()).toBeVisible();
	await clean(tab, 'the bench with its why');
	await tab
		.getByRole('button', { name: bracketed(whyWords.close), exact: true })
		.first()
		.click();
	for (const words of [benchWords.layOut, benchWords.share]) {
		await tab.getByRole('button', { name: bracketed(words), exact: true }).click();
		await expect(tab.getByRole('dialog')).toBeVisible();
		await clean(tab, `the bench, ${words}`);
		await tab.getByRole('dialog').getByRole('button').last().click();
		await expect(tab.getByRole('dialog')).toHaveCount(0);
	}
	await tab.goto(`${site.origin}/#`);
	await tab.goto(`${site.origin}/bench/#rig=1.AAAA`);
	await expect(tab.locator('.notice').first()).toBeVisible();
	await clean(tab, 'the bench on a bad link');
});

test('a drill under way: a hint, marked too soon, done, and in the list', async ({ page: tab }) => {
	await tab.goto(`${site.origin}/drills/do/#kind=loss-setting&seed=15`);
	await tab.locator('.drill-begin .button-main').click();
	await expect(tab.locator('.stage')).toBeVisible();
	await tab.locator('.thumb-bar button').nth(1).click();
	await expect(tab.locator('.drill-hint')).toBeVisible();
	await clean(tab, 'a drill with a hint');
	await tab.locator('.thumb-bar .button-main').click();
	await expect(tab.locator('.drill-mark[data-done="false"]')).toBeVisible();
	await clean(tab, 'a drill marked too soon');
	for (const event of shortestWay(makeDrill('loss-setting', 15))) {
		if (event.type !== 'key.tap') throw new Error(`this way has a ${event.type}`);
		await tab
			.locator('.panel')
			.getByRole('button', { name: bracketed(keyNames[event.key]), exact: true })
			.click();
	}
	await tab.locator('.thumb-bar .button-main').click();
	await expect(tab.locator('.drill-mark[data-done="true"]')).toBeVisible();
	await clean(tab, 'a drill done');
	await tab.goto(`${site.origin}/drills/`);
	await expect(tab.locator('.drills-next')).toBeVisible();
	await clean(tab, 'the list of drills');
});

const RECIPE: PaperRecipeInput = {
	version: 1,
	title: '2031',
	count: 4,
	kinds: ['percent-of-value', 'value-function', 'band-edge'],
	feedback: 'each',
};

test('a paper: built, printed with its key, sat with an answer wrong, and marked', async ({ page: tab }) => {
	const fragment = await paperFragment({ recipe: readRecipe(RECIPE), seed: 3 });
	await tab.goto(`${site.origin}/papers/print/${fragment}`);
	await expect(tab.locator('main ol > li').first()).toBeVisible();
	await clean(tab, 'a printed paper');
	await tab.goto(`${site.origin}/papers/sit/${fragment}`);
	await clean(tab, 'a paper before it begins');
	await tab.locator('main .button-main').click();
	const { items } = setPaper(readRecipe(RECIPE), 3);
	for (const item of items) {
		const right = rightAnswer(item);
		await expect(tab.locator('.sit-where')).toBeVisible();
		const box = tab.locator('.sit input:not([type="radio"]):not([type="checkbox"])');
		if (right.form === 'one') await tab.locator('.sit-option input').first().check();
		else await box.first().fill('1');
		await clean(tab, `question ${item.kind}`);
		await tab.locator('.sit-bar .button-main').click();
		await clean(tab, `question ${item.kind}, marked`);
		await tab.locator('.sit-bar .button-main').click();
	}
	await tab.locator('.sit-review .button-main').click();
	await expect(tab.locator('.sit-score-big')).toBeVisible();
	await clean(tab, 'a paper handed in');
	await tab.goto(`${site.origin}/papers/${new URL(await tab.locator('.papers-link').first().inputValue()).hash}`);
	await expect(tab.locator('.class-table tbody tr')).toHaveCount(1);
	await expect(tab.locator('.learn')).toBeVisible();
	await clean(tab, 'the trainer’s page with a result');
	await tab.goto(`${site.origin}/kept/`);
	await clean(tab, 'what is kept');
});

const HIDDEN: Hidden = {
	rig: 'one-wash',
	fixture: 'wash-1',
	complaint: 'dark',
	fault: { fault: 'switched-off', place: 'wash-1' },
};

test('the finder, walked to a verdict, with its log and suspects', async ({ page: tab }) => {
	await tab.goto(`${site.origin}/finder/`);
	await begin(tab, HIDDEN);
	for (let turn = 0; turn < 30; turn++) {
		await unfold(tab);
		await clean(tab, `the finder, step ${turn}`);
		if ((await answer(tab, readingOf(HIDDEN), 1)).length === 0) break;
	}
	await expect(tab.locator('[data-because="mended"]')).toBeVisible();
	await tab.locator('.walk-log-line').click();
	await clean(tab, 'the finder with its verdict and log');
});

test('the printed tree, and a hidden fault looked for and given up', async ({ page: tab }) => {
	await tab.goto(`${site.origin}/finder/tree/#rig=one-wash&fixture=wash-1&complaint=dark`);
	await expect(tab.locator('main table, main ol').first()).toBeVisible({ timeout: 60_000 });
	await unfold(tab);
	await clean(tab, 'the printed tree');
	await tab.goto(`${site.origin}/finder/practise/#rig=one-wash&seed=5&count=1`);
	await expect(tab.locator('.hidden-one')).toBeVisible({ timeout: 60_000 });
	await unfold(tab);
	await tab.locator('.hidden-check').first().click();
	await tab.locator('[data-way="do"]').first().click();
	await expect(tab.locator('.hidden-one')).toHaveAttribute('data-done', '1');
	await clean(tab, 'hidden faults, a check done');
	await tab.locator('[data-way="give-up"]').click();
	await expect(tab.locator('.hidden-review')).toBeVisible({ timeout: 60_000 });
	await unfold(tab);
	await clean(tab, 'hidden faults, given up');
});

test('a lesson at work, its questions, the review after it, and the search', async ({ page: tab }) => {
	await tab.goto(`${site.origin}/lessons/bands/`);
	await tab.locator('.practice').scrollIntoViewIfNeeded();
	await expect(tab.locator('.stage')).toBeVisible();
	for (const step of await tab.locator('.practice-step').all()) {
		await step.click();
		await clean(tab, 'a lesson at work');
	}
	await tab.locator('.checks-begin .button-main').scrollIntoViewIfNeeded();
	// pressed before its script is there, it does nothing yet
	await expect(tab.locator('astro-island:not([ssr]) .checks-begin')).toBeVisible();
	await tab.locator('.checks-begin .button-main').click();
	await expect(tab.locator('.checks-begin')).toHaveCount(0);
	await clean(tab, 'the questions of a lesson');
	await tab.goto(`${site.origin}/review/`);
	await clean(tab, 'the review');
	await tab.goto(`${site.origin}/search/`);
	for (const query of ['terminator', 'flicker cable', '98765']) {
		await tab.locator('input[type="search"]').fill(query);
		await tab.waitForTimeout(500);
		await clean(tab, `looking up ${query}`);
	}
	await expect(tab.locator('main')).toContainText('⟦');
});
