import { expect, type Locator, type Page, test } from '@playwright/test';
import { shortestWay, type Task } from '../../sim/drill/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import { practiceOf } from '../../src/features/lessons/index.ts';
import { serve } from '../../src/site/server/index.ts';
import { lessonFiles, taskFrom } from '../content/lessons.ts';
import { bring, drawer, key, take } from '../src/features/bench/open.ts';
import { axe } from './axe.ts';
import { built, isLesson, pages } from './pages.ts';
import { untilKept } from './versions.ts';

const NAMES = { back: 'Back', down: 'Down', up: 'Up', set: 'Set' } as const;
const PRESSED = { back: 'Escape', down: 'ArrowDown', up: 'ArrowUp', set: 'Enter' } as const;

/** What chance draws in these tests, where it is told what to: a seed whose task is done at one panel with keys. */
const SEED = 295;

/** A lesson's task, as that seed draws it. */
function taskOf(id: string): Task {
	const lesson = lessonFiles().find((each) => each.lesson.id === id)?.lesson;
	if (!lesson) throw new Error(`no lesson ${id}`);
	return taskFrom(lesson, SEED).task;
}

/** Has the tab draw that seed. */
const drawSeed = (tab: Page): Promise<unknown> =>
	tab.addInitScript((seed) => {
		crypto.getRandomValues = ((values: Uint32Array) => values.fill(seed)) as typeof crypto.getRandomValues;
	}, SEED);

/** The keys of a lesson's task, from its shortest way. */
function keysOf(id: string): (keyof typeof NAMES)[] {
	return shortestWay(taskOf(id)).map((event) => {
		if (event.type !== 'key.tap' || !(event.key in NAMES)) throw new Error(`this way has a ${event.type}`);
		return event.key as keyof typeof NAMES;
	});
}

const step = (tab: Page, name: string): Locator => tab.locator('.practice-step', { hasText: name });
const begin = (tab: Page): Locator => tab.locator('.drill-begin .button-main');
const markIt = (tab: Page): Locator => tab.getByRole('button', { name: 'Mark it', exact: true });
const mark = (tab: Page): Locator => tab.locator('.drill-mark');

/** Scrolls the bench into view, and waits until it stands. */
async function benchOf(tab: Page): Promise<void> {
	await tab.locator('.practice').scrollIntoViewIfNeeded();
	await expect(tab.locator('.stage')).toBeVisible({ timeout: 30_000 });
}

/** Opens what is a line on a phone. */
const unfold = (place: Locator): Promise<void> => place.locator('.on-phone').tap();

/** Words in view, folded ones left out. */
const wordsIn = async (places: Locator): Promise<number> =>
	(await places.allInnerTexts()).reduce((sum, text) => sum + (text.match(/\S+/g)?.length ?? 0), 0);

/** Does one step of a way on the bench, by touch. */
async function touch(tab: Page, { sheet }: Task, event: RigEvent): Promise<void> {
	if ('fixture' in event && sheet.fixtures.length > 1) {
		const name = sheet.fixtures.find(({ id }) => id === event.fixture)?.name ?? '';
		await take(tab, name).tap();
	}
	switch (event.type) {
		case 'key.tap':
			await bring(tab, 'Panel');
			return key(tab, NAMES[event.key as keyof typeof NAMES]).tap();
		case 'switch.flip':
			await bring(tab, 'Panel');
			return tab.getByRole('switch', { name: new RegExp(`^Switch ${event.switch}:`) }).tap();
		case 'slide.move': {
			await bring(tab, 'Panel');
			const slide = tab.locator('.panel .slide').nth(event.slide === 'mode' ? 0 : event.slide === 'loss' ? 1 : 2);
			return slide.locator('.slide-stop').nth(event.to).tap();
		}
		case 'desk.level': {
			const strip = (await drawer(tab, 'desk')).getByRole('textbox', { name: new RegExp(`, channel ${event.slot}$`) });
			await strip.fill(`${event.level}`);
			return strip.press('Enter');
		}
		case 'remote.press': {
			const word = event.button.replace(/^held:/, '').replace(/^[a-z]/, (first) => `[${first}${first.toUpperCase()}]`);
			const button = (await drawer(tab, 'remote')).getByRole('button', { name: new RegExp(`^${word}$`) });
			return button.tap();
		}
		case 'power.switch':
			await bring(tab, 'Panel');
			return tab.getByRole('switch', { name: 'Power switch' }).tap();
		case 'mains.plug': {
			await bring(tab, 'Panel');
			await tab.locator('.case-power select').selectOption(event.into);
			return;
		}
		default:
			throw new Error(`no touch for ${event.type}`);
	}
}

/** Answers a round of checks with whatever comes first, and sees it marked each time. */
async function roundOf(tab: Page, count: number, press: (target: Locator) => Promise<void>): Promise<void> {
	await tab.locator('.lesson-checks').scrollIntoViewIfNeeded();
	const begin = tab.getByRole('button', { name: 'Ask me' });
	await expect(tab.locator('.lesson-checks astro-island')).not.toHaveAttribute('ssr', '');
	await press(begin);
	for (let n = 1; n <= count; n++) {
		await expect(tab.getByRole('heading', { name: `Question ${n} of ${count}` })).toBeVisible();
		await press(tab.getByRole('button', { name: 'I don’t know' }));
		await expect(tab.locator('.sit-feedback')).toBeVisible();
		await press(tab.getByRole('button', { name: n < count ? 'Next question' : 'How did it go?' }));
	}
	await expect(tab.getByRole('heading', { name: `0 of ${count} right` })).toBeFocused();
}

test.describe('by touch, 390 wide', () => {
	test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

	test('a lesson is read, tried, slipped, done, checked, and kept over a reload', async ({ page: tab }) => {
		const scripts: string[] = [];
		tab.on('request', (request) => request.resourceType() === 'script' && scripts.push(request.url()));
		await tab.goto('/lessons/lock-and-defaults/');
		await tab.waitForLoadState('networkidle');
		expect(scripts, 'no script before a bench scrolls into view').toEqual([]);
		await benchOf(tab);
		expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
		await step(tab, 'A deliberate mistake').tap();
		await expect(tab.locator('.back-light')).toContainText('dark');
		// found before it is told
		await expect(tab.locator('.practice-words')).not.toContainText('leaned on the keys');
		await unfold(tab.locator('.predict'));
		await tab.locator('.predict').getByRole('radio').first().check();
		await tab.getByRole('button', { name: 'That’s my answer' }).tap();
		await expect(tab.locator('.practice-words')).toContainText('leaned on the keys');
		await step(tab, 'Your turn').tap();
		await expect(tab.locator('.practice .drill-what')).toContainText('locked');
		await begin(tab).tap();
		await expect(markIt(tab)).toBeVisible();
		await markIt(tab).tap();
		await expect(mark(tab).getByRole('heading')).toHaveText('Not yet');
		// hints lead there, step by step
		for (let told = 0; told < 3; told++) await tab.getByRole('button', { name: 'Hint', exact: true }).tap();
		await expect(tab.locator('.drill-hint')).toContainText('Hold Set');
		expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
		await roundOf(tab, 3, (target) => target.tap());
	});

	// a lesson told each caution three times, in screenfuls, between its words and its bench
	test('what has been read in full is a line at the bench, and opens', async ({ page: tab }) => {
		await tab.goto('/lessons/floor-bracket-clamp-bond/');
		await benchOf(tab);
		const again = tab.locator('.practice .caution', { hasText: 'Overhead' });
		await expect(again).toContainText('rated for the load');
		await expect(again.locator('li').first()).toBeHidden();
		await again.locator('summary').tap();
		await expect(again.locator('.caution-harm')).toContainText('can kill');
		await expect(again.locator('li').first()).toBeVisible();
	});

	// the bench began five screens down, the walls of five lessons still did not fit, and four words in ten were cautions
	test('the bench of every lesson begins within two screens, and cautions leave room for the lesson', async ({
		page: tab,
	}) => {
		// every lesson's page, one after another
		test.slow();
		const seen = { words: 0, cautions: 0 };
		for (const page of pages.filter(isLesson)) {
			await tab.goto(page);
			expect.soft((await tab.locator('.practice').boundingBox())?.y, page).toBeLessThanOrEqual(2 * 844);
			// the wall stands right below the words of the bench
			const above = await tab.locator('.practice-words').boundingBox();
			const wall = (above?.y ?? Infinity) + (above?.height ?? 0);
			expect.soft(wall, `the wall of ${page}`).toBeLessThanOrEqual(2 * 844);
			const inCautions = await wordsIn(tab.locator('.caution'));
			expect.soft(inCautions, page).toBeGreaterThan(0);
			// what is a line on a phone is of the lesson all the same
			const folded = (await tab.locator('.practice-rest').allTextContents()).join(' ');
			seen.words += (await wordsIn(tab.locator('main'))) + (folded.match(/\S+/g)?.length ?? 0);
			seen.cautions += inCautions;
		}
		// 24.6 % with cautions a line wherever a lesson's own hands stay off, 27.6 % with those of five lessons whole again for a reader with safety in mind
		expect(seen.cautions / seen.words).toBeLessThan(0.28);
	});

	for (const id of [
		'the-case',
		'label-and-test',
		'floor-bracket-clamp-bond',
		'text-and-switches',
		'bands',
		'as-one-or-apart',
		'look-before-you-swap',
		'cool-coil-charge-log',
	])
		test(`${id}, one of each part of the course, is done`, async ({ page: tab }) => {
			const task = taskOf(id);
			await drawSeed(tab);
			await tab.goto(`/lessons/${id}/`);
			await benchOf(tab);
			await step(tab, 'Your turn').tap();
			await expect(tab.locator('.drill-begin .caution')).toHaveCount(task.cautions.length);
			await begin(tab).tap();
			await expect(markIt(tab)).toBeVisible();
			for (const event of shortestWay(task)) await touch(tab, task, event);
			await markIt(tab).tap();
			await expect(mark(tab).getByRole('heading')).toHaveText('Done');
			expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
		});

	// what was to be tried was told before it was done
	test('a prediction is picked, done, and told, and the bench shows it', async ({ page: tab }) => {
		const lesson = lessonFiles().find((each) => each.lesson.id === 'remote-and-sensor')?.lesson;
		const [asked] = lesson ? practiceOf(lesson).predict : [];
		if (!asked) throw new Error('no prediction');
		await tab.goto('/lessons/remote-and-sensor/');
		await benchOf(tab);
		const predict = tab.locator('.predict');
		const answer = predict.getByRole('button', { name: 'That’s my answer' });
		// folded, so that the wall is close; what to try too
		await expect(answer).toBeHidden();
		await unfold(predict);
		await answer.tap();
		await expect(predict.getByRole('alert')).toContainText('Pick an answer');
		await predict.getByRole('radio').nth(asked.right).check();
		await answer.tap();
		await expect(predict.locator('.predict-end')).toBeFocused();
		await expect(predict).not.toContainText('Right');
		await predict.getByRole('button', { name: 'Do it for me' }).tap();
		await expect(take(tab, 'Wash 1').locator('xpath=ancestor::li')).toContainText('green');
		await predict.getByRole('button', { name: 'Was I right?' }).tap();
		await expect(predict.locator('.notice-good')).toContainText(asked.options[asked.right] ?? '');
		expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
	});

	// of most lessons the task was one fixed drill, done by heart the second time
	test('a task is drawn afresh at each go, and a reload keeps the one under way', async ({ page: tab }) => {
		const says = tab.locator('.practice .drill-what');
		const drawn = new Set<string | null>();
		await tab.goto('/lessons/modes-and-footprints/');
		for (let go = 0; go < 3; go++) {
			await benchOf(tab);
			await step(tab, 'Your turn').tap();
			await expect(begin(tab)).toBeVisible();
			drawn.add(await says.textContent());
			if (go < 2) await tab.reload();
		}
		expect(drawn.size).toBeGreaterThan(1);
		await begin(tab).tap();
		await expect(markIt(tab)).toBeVisible();
		await key(tab, 'Down').tap();
		const [words, display] = [await says.textContent(), await tab.locator('.display').textContent()];
		await tab.reload();
		await benchOf(tab);
		await step(tab, 'Your turn').tap();
		await expect(markIt(tab)).toBeVisible();
		await expect(tab.getByText('You were in the middle of this.')).toBeVisible();
		await expect(says).toHaveText(words ?? '');
		await expect(tab.locator('.display')).toHaveText(display ?? '');
	});

	test('what is done is marked on the list, and a reload keeps it', async ({ page: tab }) => {
		await drawSeed(tab);
		await tab.goto('/lessons/a-panel-you-never-saw/');
		await benchOf(tab);
		await step(tab, 'Your turn').tap();
		await begin(tab).tap();
		await expect(markIt(tab)).toBeVisible();
		for (const each of keysOf('a-panel-you-never-saw')) await key(tab, NAMES[each]).tap();
		await markIt(tab).tap();
		await expect(mark(tab).getByRole('heading')).toHaveText('Done');
		await expect(tab.locator('.practice .notice-good')).toContainText('kept on this device');
		await tab.reload();
		await expect(tab.locator('.lesson-where .course-done')).toHaveText('Done');
		await tab.goto('/lessons/');
		const row = tab.locator('[data-lesson="a-panel-you-never-saw"]');
		await expect(row.locator('.course-done')).toHaveText('Done');
		await tab.reload();
		await expect(row.locator('.course-done')).toHaveText('Done');
		await expect(tab.locator('.course-done')).toHaveCount(1);
	});
});

test.describe('on a wide screen', () => {
	test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

	test('a lesson is done by keyboard alone', async ({ page: tab }) => {
		const tabTo = async (target: Locator) => {
			for (let i = 0; i < 120; i++) {
				await tab.keyboard.press('Tab');
				if (await target.evaluate((element) => element === document.activeElement)) return;
			}
			throw new Error(`no Tab leads to ${target}`);
		};
		await drawSeed(tab);
		await tab.goto('/lessons/label-and-test/');
		await tab.locator('.lesson-jumps a', { hasText: 'On the bench' }).focus();
		await tab.keyboard.press('Enter');
		await benchOf(tab);
		await tabTo(step(tab, 'Your turn'));
		await tab.keyboard.press('Enter');
		await expect(begin(tab)).toBeVisible();
		await tabTo(begin(tab));
		await tab.keyboard.press('Enter');
		await expect(markIt(tab)).toBeVisible();
		await tabTo(tab.locator('.display'));
		for (const each of keysOf('label-and-test')) await tab.keyboard.press(PRESSED[each]);
		await tabTo(markIt(tab));
		await tab.keyboard.press('Enter');
		await expect(mark(tab).getByRole('heading')).toHaveText('Done');
		await expect(mark(tab).getByRole('heading')).toBeFocused();
	});

	test('sliders recompute, terms lead to the glossary, and axe finds nothing with a slip on the bench', async ({
		page: tab,
	}) => {
		await tab.goto('/lessons/charge-and-hours/');
		const reckon = tab.locator('.reckon');
		await reckon.scrollIntoViewIfNeeded();
		await expect(tab.locator('astro-island:has(.reckon)')).not.toHaveAttribute('ssr', '');
		const before = await reckon.locator('dl').textContent();
		await reckon.getByRole('slider', { name: 'Brightness' }).fill('50');
		await expect(reckon.locator('dl')).not.toHaveText(before ?? '');
		const term = tab.locator('.lesson-words a[href^="/glossary/"]').first();
		const href = (await term.getAttribute('href')) ?? '';
		expect(href).toMatch(/^\/glossary\/#[a-z0-9-]+$/);
		await benchOf(tab);
		await step(tab, 'A deliberate mistake').click();
		await expect(tab.locator('.stage')).toBeVisible();
		const { violations } = await axe(tab);
		expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
	});

	test('a long fixture cannot be slid nearer than the sum holds, and the throw comes back with a small one', async ({
		page: tab,
	}) => {
		await tab.goto('/lessons/throw-pool-overlap/');
		const reckon = tab.locator('.reckon', { hasText: 'How wide, how bright?' });
		await reckon.scrollIntoViewIfNeeded();
		await expect(tab.locator('astro-island', { has: reckon })).not.toHaveAttribute('ssr', '');
		const throwOf = reckon.getByRole('slider', { name: 'Throw' });
		await expect(throwOf).toHaveValue('3');
		await reckon.getByRole('combobox').selectOption('picket-8');
		await expect(throwOf).toHaveAttribute('min', '5');
		await expect(throwOf).toHaveValue('5');
		await expect(reckon.locator('dl')).toContainText('2 × 5 m');
		await reckon.getByRole('combobox').selectOption('tallow-6');
		await expect(throwOf).toHaveValue('3');
		await expect(reckon.locator('dl')).toContainText('2 × 3 m');
	});

	test('a card and a plan print with no frame round them', async ({ page: tab }) => {
		await tab.emulateMedia({ media: 'print' });
		await tab.goto('/lessons/plan/');
		await expect(tab.locator('.site-nav')).toBeHidden();
		await expect(tab.locator('.plan table').first()).toBeVisible();
		await tab.goto('/lessons/bands/');
		await expect(tab.locator('.lesson-card-sheet')).toBeVisible();
		await expect(tab.locator('.practice')).toBeHidden();
	});
});

test('with the network off a lesson never opened before is done', async ({ page: tab }) => {
	const site = await serve(built, 0, 'quick');
	await drawSeed(tab);
	await tab.goto(`${site.origin}/`);
	await untilKept(tab);
	await site.close();
	await tab.goto(`${site.origin}/lessons/a-panel-you-never-saw/`);
	await benchOf(tab);
	await step(tab, 'Your turn').click();
	await begin(tab).click();
	await expect(markIt(tab)).toBeVisible();
	for (const each of keysOf('a-panel-you-never-saw')) await key(tab, NAMES[each]).click();
	await markIt(tab).click();
	await expect(mark(tab).getByRole('heading')).toHaveText('Done');
	await roundOf(tab, 3, (target) => target.click());
});
