import { expect, test } from '@playwright/test';
import { planWords, practiseWords } from '#words/plan/index.ts';
import { expectNothingWrong } from './axe.ts';
import { pasteRig, press } from './pasted.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

/** Five mixed fixtures with names of the crew's own. */
const LIST = [
	'Fixture\tName\tMode\tPlace',
	...Array.from({ length: 4 }, (_, i) => `Tallow 6\tFloor ${i + 1}\t9 ch\t${i * 4}`),
	'Picket 8\tBar 1\t35 ch\t2',
];

test('a hidden fault on tonight’s rig: its own names, any drill of it, and the plan as it was', async ({
	page: tab,
}) => {
	await pasteRig(tab, LIST);
	await press(tab, planWords.practise);
	await expectNothingWrong(tab);
	await press(tab, practiseWords.fault);
	await expect(tab).toHaveURL(/\/finder\/practise\/#rig=tonight&seed=\d+&count=1&on=/, { timeout: 60_000 });
	await expect(tab.locator('.hidden-one[data-busy="false"]')).toBeVisible({ timeout: 60_000 });
	await expect(tab.locator('.hidden-head')).toContainText('practice on a copy of your rig');
	await expect(tab.locator('.hidden-rows')).toContainText('Floor 3');
	await expect(tab.locator('.hidden-rows')).toContainText('Bar 1');
	await expectNothingWrong(tab);
	await tab.locator('[data-way="give-up"]').click();
	await expect(tab.locator('.hidden-review')).toBeVisible({ timeout: 60_000 });
	// another of the same rig
	const was = tab.url();
	await press(tab, 'Another drill');
	await expect(tab).not.toHaveURL(was, { timeout: 60_000 });
	await expect(tab).toHaveURL(/#rig=tonight&seed=/);
	await tab.goto('/rig/');
	await expect(tab.locator('.rig-line')).toHaveCount(5);
});

test('a task at its panels is offered before all drills, done on its own fixtures, and goes by a link', async ({
	page: tab,
	browser,
}) => {
	await tab.goto('/drills/');
	await expect(tab.locator('.rig-practise')).toHaveCount(0);
	await pasteRig(tab, LIST);
	await tab.goto('/drills/');
	const offered = tab.locator('.rig-practise');
	await expect(offered).toContainText('Tonight');
	const [box, first] = [await offered.boundingBox(), await tab.locator('.drills-own').boundingBox()];
	expect(box?.y ?? 0).toBeLessThan(first?.y ?? 0);
	await expectNothingWrong(tab);
	await press(tab, practiseWords.task);
	await expect(tab).toHaveURL(/\/drills\/own\/#seed=\d+&rig=1\./);
	await expect(tab.getByRole('heading', { name: /Practice: a made-up task on Tonight/ })).toBeVisible({
		timeout: 30_000,
	});
	await expect(tab.locator('main')).toContainText(/(Floor \d|Bar 1) (and|isn’t|is in|plays)/, { timeout: 30_000 });
	const other = await browser.newPage();
	await other.goto(tab.url());
	await expect(other.getByRole('heading', { name: /Practice: a made-up task on Tonight/ })).toBeVisible({
		timeout: 30_000,
	});
	await other.goto('/drills/own/#seed=1&rig=1.AAAA');
	await expect(other.getByRole('alert')).toContainText('holds no rig that can be read', { timeout: 30_000 });
	await other.close();
});
