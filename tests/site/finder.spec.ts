import { expect, type Locator, type Page, test } from '@playwright/test';
import { sheetWords, verdictWords } from '#words/finder/index.ts';
import { serve } from '../../src/site/server/index.ts';
import { answer, begin, type Hidden, idOf, readingOf } from '../src/features/finder/hidden.ts';
import { built } from './pages.ts';
import { untilKept } from './versions.ts';

const phone = { width: 390, height: 664 };
test.use({ viewport: phone });

const hidden: readonly Hidden[] = [
	{
		rig: 'four-in-line',
		fixture: 'wash-3',
		complaint: 'no-answer',
		fault: { fault: 'cable-out', place: 'cable-2', detail: 'to' },
	},
	{ rig: 'four-in-line', fixture: 'wash-2', complaint: 'dark', fault: { fault: 'switched-off', place: 'wash-2' } },
	{ rig: 'four-in-line', fixture: 'wash-4', complaint: 'flicker', fault: { fault: 'minus-open', place: 'cable-4' } },
	{
		rig: 'leader-and-three',
		fixture: 'wash-3',
		complaint: 'follower-silent',
		fault: { fault: 'left-on-sound', place: 'wash-3', detail: 'sound' },
	},
	{ rig: 'leader-and-three', fixture: 'wash-4', complaint: 'dark', fault: { fault: 'battery-flat', place: 'wash-4' } },
	{
		rig: 'leader-and-three',
		fixture: 'wash-2',
		complaint: 'wrong-colour',
		fault: { fault: 'emitter-dead', place: 'wash-2', detail: 'red' },
	},
];
const [first] = hidden as [Hidden];

test.describe('at phone size', () => {
	test.use({ serviceWorkers: 'block' });
	for (const it of hidden) {
		test(`${it.complaint} on ${it.rig}: what the hidden rig shows leads to ${idOf(it)}`, async ({ page: tab }) => {
			await tab.goto('/finder/');
			await begin(tab, it);
			const asked = await answer(tab, readingOf(it));
			expect(new Set(asked).size, 'nothing is asked twice').toBe(asked.length);
			await expect(tab.locator('[data-because="mended"]')).toBeVisible();
			const causes = tab.locator('.verdict [data-suspect]');
			const ids = await causes.evaluateAll((all) => all.map((cause) => (cause as HTMLElement).dataset['suspect']));
			expect(ids).toContain(idOf(it));
			await expect(tab.locator('.tape-strip').first()).toBeVisible();
		});
	}

	test('three taps, and the first question is which one', async ({ page: tab }) => {
		await tab.goto('/finder/');
		await tab.getByRole('button', { name: '6 fixtures', exact: true }).click();
		await tab.getByRole('button', { name: 'To a desk, two universes' }).click();
		await tab.getByRole('button', { name: 'Ten small switches' }).click();
		await expect(tab.getByRole('heading', { name: 'Which one?' })).toBeVisible();
		await expect(tab.locator('.choice')).toHaveCount(6);
		await tab.locator('[data-choice="wash-5"]').click();
		await tab.locator('[data-choice="dark"]').click();
		await expect(tab.locator('[data-check]')).toBeVisible();
		await expect(tab.getByText('stand-ins')).toBeVisible();
	});

	test('answers stand under the thumb, large, with the suspects above', async ({ page: tab }) => {
		await tab.goto('/finder/');
		await begin(tab, first);
		for (const answered of [0, 1]) {
			await expect(tab.locator('.suspects-line')).toBeInViewport();
			await expect(tab.locator('[data-check] h2')).toBeInViewport();
			for (const button of await tab.locator('.answers button').all()) {
				const box = await button.boundingBox();
				expect(box?.height).toBeGreaterThanOrEqual(48);
				expect(box?.y).toBeGreaterThan(phone.height / 2);
				expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(phone.height);
			}
			if (answered === 0) await answer(tab, readingOf(first), 1);
		}
	});

	test('mid-walk it fits a screen 320 wide', async ({ page: tab }) => {
		await tab.setViewportSize({ width: 320, height: 640 });
		await tab.goto('/finder/');
		await begin(tab, first);
		await tab.locator('.why summary').click();
		await tab.locator('.suspects-line').click();
		expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
	});

	test('Back, Not sure and Can’t do this now do what they say', async ({ page: tab }) => {
		await tab.goto('/finder/');
		await begin(tab, first);
		const check = tab.locator('[data-check]');
		const asked = (await check.getAttribute('data-check')) ?? '';
		for (const way of ['Not sure', 'Can’t do this now']) {
			await tab.getByRole('button', { name: way }).click();
			await expect(check).not.toHaveAttribute('data-check', asked);
			await tab.getByRole('button', { name: 'Back' }).click();
			await expect(check).toHaveAttribute('data-check', asked);
		}
	});

	test('what the gig lacks is left out from then on', async ({ page: tab }) => {
		await tab.goto('/finder/');
		const high: Hidden = {
			rig: 'two-universes',
			fixture: 'bar-3',
			complaint: 'dark',
			fault: { fault: 'mains-unplugged', place: 'bar-3' },
		};
		await begin(tab, high);
		// the floor comes first: what is seen from there sends nobody up
		await expect(tab.getByText('Needs a ladder')).toHaveCount(0);
		for (let asked = 0; asked < 8 && (await tab.getByText('Needs a ladder').count()) === 0; asked++)
			await answer(tab, readingOf(high), 1);
		await expect(tab.getByText('Needs a ladder')).toBeVisible();
		await tab.getByRole('button', { name: 'At this gig' }).click();
		await tab.getByRole('switch', { name: 'Ladder' }).click();
		await tab.getByRole('button', { name: 'Close' }).click();
		await expect(tab.getByRole('button', { name: /^At this gig/ })).toContainText('No ladder');
		await expect(tab.getByText('Needs a ladder')).toHaveCount(0);
	});

	test('where nothing known fits, it says so and shows the walk', async ({ page: tab }) => {
		await tab.goto('/finder/');
		await begin(tab, { ...first, rig: 'one-wash', complaint: 'goes-out' });
		await expect(tab.getByRole('heading', { name: verdictWords.titleUnknown })).toBeVisible();
		await expect(tab.getByText('Log of the walk')).toBeVisible();
	});

	test('a reload, and a page opened anew, stand where the walk stood', async ({ page: tab, context }) => {
		await tab.goto('/finder/');
		await begin(tab, first);
		await answer(tab, readingOf(first), 2);
		const check = await tab.locator('[data-check]').getAttribute('data-check');
		const suspects = await tab.locator('.suspects-line').textContent();
		await tab.reload();
		await expect(tab.locator('[data-check]')).toHaveAttribute('data-check', check ?? '');
		await expect(tab.locator('.suspects-line')).toHaveText(suspects ?? '');
		await tab.close();
		const anew = await context.newPage();
		await anew.goto('/finder/');
		await expect(anew.locator('[data-check]')).toHaveAttribute('data-check', check ?? '');
		await expect(anew.locator('.walk-log-line')).toContainText('2');
		await answer(anew, readingOf(first));
		await expect(anew.locator('[data-because="mended"]')).toBeVisible();
	});

	test('damaged storage is set aside and said, and a walk can begin', async ({ page: tab }) => {
		await tab.addInitScript(() => {
			if (sessionStorage.getItem('damaged')) return;
			sessionStorage.setItem('damaged', 'yes');
			localStorage.setItem('prep-bay.finder', '{"version":1,"walk":{"rig":"none"}}');
		});
		await tab.goto('/finder/');
		await expect(tab.locator('.notice', { hasText: 'was damaged. It has been set aside' })).toBeVisible();
		await begin(tab, first);
		await tab.reload();
		await expect(tab.locator('[data-check]')).toBeVisible();
		const aside = await tab.evaluate(() =>
			Object.entries(localStorage).find(([key]) => key.includes('.finder.aside.')),
		);
		expect(aside?.[1]).toContain('rig');
	});

	test('a bad sheet gets a sentence, and a good one its own names', async ({ page: tab }) => {
		await tab.goto('/finder/');
		await tab.getByLabel('Paste a sheet').fill('four washes, all dark');
		await tab.getByRole('button', { name: sheetWords.open }).click();
		await expect(
			tab.getByText('That is no rig sheet and no link to a bench. A sheet begins with { and is JSON.').first(),
		).toBeVisible();
		const sheet = {
			version: 1,
			name: 'The van',
			fixtures: [
				{ id: 'a', name: 'lamp by the till', profile: 'cobble', place: { x: 1, y: 0, throw: 3 }, plug: 'wall' },
				{ id: 'b', name: 'lamp by the stairs', profile: 'cobble', place: { x: 3, y: 0, throw: 3 }, plug: 'wall' },
			],
		};
		await tab.getByLabel('Open a file').setInputFiles({
			name: 'van.json',
			mimeType: 'application/json',
			buffer: Buffer.from(JSON.stringify(sheet)),
		});
		await expect(tab.getByRole('button', { name: 'lamp by the stairs' })).toBeVisible();
	});

	test('on paper there is the log and nothing else', async ({ page: tab }) => {
		await tab.goto('/finder/');
		await begin(tab, first);
		await answer(tab, readingOf(first));
		await tab.emulateMedia({ media: 'print' });
		await expect(tab.locator('.walk-log-list li').first()).toBeVisible();
		await expect(tab.locator('.walk-log h2')).toHaveText('Wash 3, centre right doesn’t answer the desk');
		await expect(tab.locator('.walk-log')).toContainText('Fixed');
		for (const gone of [
			'.verdict',
			'.suspects',
			'.walk-head',
			'.allowed',
			'.walk-log-ways',
			'.finder-top',
			'nav',
			'footer',
		])
			await expect(tab.locator(gone).first(), gone).toBeHidden();
	});

	test('the log can be copied and saved, and verdicts forgotten', async ({ page: tab, context }) => {
		await context.grantPermissions(['clipboard-read', 'clipboard-write']);
		await tab.goto('/finder/');
		await begin(tab, first);
		await answer(tab, readingOf(first));
		await tab.locator('.walk-log-line').click();
		await tab.getByRole('button', { name: 'Copy' }).click();
		await expect(tab.getByText('Copied.').first()).toBeAttached();
		expect(await tab.evaluate(() => navigator.clipboard.readText())).toMatch(/^1\. .*wash 3.*\n2\. /m);
		const [saved] = await Promise.all([
			tab.waitForEvent('download'),
			tab.getByRole('button', { name: 'Save as a file' }).click(),
		]);
		expect(saved.suggestedFilename()).toBe('finder-log.txt');
		await tab.getByRole('button', { name: 'Look for another fault' }).click();
		await tab.getByText('Verdicts on this device').click();
		await expect(tab.getByText('1 verdict counted.')).toBeVisible();
		await tab.getByRole('button', { name: 'Set them to nothing' }).click();
		await tab.getByRole('button', { name: 'Forget them' }).click();
		await expect(tab.getByText('None counted yet.')).toBeVisible();
	});
});

test.describe('with no finger on the glass', () => {
	test.use({ serviceWorkers: 'block' });

	test('a walk goes by keyboard alone, and each check is announced', async ({ page: tab }) => {
		await tab.goto('/finder/');
		await expect(tab.locator('.count').first()).toBeVisible();
		const keys = byKeys(tab);
		await begin(tab, first, keys);
		const told = tab.locator('.finder > [role="status"]').last();
		await expect(told).toHaveText(/^Next check\. .*wash 3/);
		await answer(tab, readingOf(first), 1, keys);
		// the first Tab after an answer reaches the next answers, with nothing to wade through
		await tab.keyboard.press('Tab');
		await expect(tab.locator('.answers .answer').first()).toBeFocused();
		await answer(tab, readingOf(first), 40, keys);
		await expect(tab.locator('[data-because="mended"]')).toBeVisible();
		await expect(told).toHaveText('Verdict. Fixed.');
	});
});

/** Reaches a button by Tab, or by Shift and Tab where that is the nearer way, and presses Enter. */
const byKeys =
	(tab: Page) =>
	async (at: Locator): Promise<void> => {
		await expect(at).toBeEnabled();
		for (let presses = 0; presses < 120; presses++) {
			if (await at.evaluate((button) => button === document.activeElement)) {
				await tab.keyboard.press('Enter');
				return;
			}
			await tab.keyboard.press('Tab');
		}
		throw new Error('no number of Tabs leads there');
	};

test('with the network off a walk begins, goes on and ends', async ({ page: tab }) => {
	const site = await serve(built, 0, 'quick');
	await tab.goto(`${site.origin}/`);
	await untilKept(tab);
	await site.close();
	await tab.goto(`${site.origin}/finder/`);
	await begin(tab, first);
	await answer(tab, readingOf(first), 1);
	await tab.reload();
	await answer(tab, readingOf(first));
	await expect(tab.locator('[data-because="mended"]')).toBeVisible();
});
