import { expect, type Page, test } from '@playwright/test';
import { planWords, checkWords as words } from '#words/plan/index.ts';
import { expectNothingWrong } from './axe.ts';
import { looks } from './looks.ts';
import { pasteRig, press } from './pasted.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

const LIST = [
	'Fixture\tName\tMode\tPlace',
	'Tallow 6\tFloor 1\t9 ch\t0',
	'Tallow 6\tFloor 2\t9 ch\t4',
	'Tallow 6\tFloor 3\t9 ch\t8',
	'Cobble\tOld 1\t7 ch\t6',
];

async function begin(tab: Page): Promise<void> {
	await pasteRig(tab, LIST);
	await press(tab, planWords.tabs.check);
	await expect(tab.locator('.check-card')).toBeVisible();
}

test('a walk past four panels: what differs, what it does at the desk, the presses, and all of it kept', async ({
	page: tab,
}) => {
	await begin(tab);
	const card = tab.locator('.check-card');
	// along the room, not down the list
	await expect(card).toHaveAttribute('aria-label', 'Floor 1');
	await expect(card).toContainText('001');
	await expect(card).toContainText('Its display shows');
	await expect(card).toContainText('Invented fixture: your real panel differs.');
	await expect(card).toContainText('Look first, with no press');
	await expectNothingWrong(tab);
	await press(tab, words.same);
	await expect(card).toHaveAttribute('aria-label', 'Floor 2');
	await press(tab, words.other);
	await press(tab, words.keep);
	await expect(card).toContainText(words.startBad);
	await card.getByLabel(words.start).fill('1');
	await press(tab, words.keep);
	await expect(card).toHaveAttribute('aria-label', 'Old 1');
	await expect(card).toContainText('Switches up');
	await press(tab, words.same);
	await press(tab, words.later);
	await expect(tab.locator('main')).toContainText(words.left(1));
	const found = tab.locator('.check-found li').first();
	await expect(found).toContainText('Shows 001 in');
	await expect(found).toContainText('It moves when Floor 1 is brought up.');
	await expect(found).toContainText('Its own channels on the desk don’t reach it.');
	await expect(found.locator('ol li').first()).toBeVisible({ timeout: 30_000 });
	for (const { colorScheme, width } of looks) {
		await tab.emulateMedia({ colorScheme });
		await tab.setViewportSize({ width, height: 844 });
		await expectNothingWrong(tab);
	}
	await tab.setViewportSize({ width: 390, height: 844 });
	// kept, and where one was
	await tab.reload();
	await expect(tab.locator('main')).toContainText(words.progress(3, 4, 1), { timeout: 30_000 });
	await expect(card).toHaveAttribute('aria-label', 'Floor 3');
	await press(tab, words.isRight);
	await expect(tab.locator('main')).toContainText(words.progress(3, 4, 0));
	await press(tab, words.same);
	await expect(tab.locator('main')).toContainText(words.allSame);
	await tab.getByRole('button', { name: words.again }).click();
	await expect(tab.locator('main')).toContainText(words.progress(0, 4, 0));
});

test('by keyboard alone the focus goes from one panel to the next', async ({ page: tab }) => {
	await begin(tab);
	await tab.getByRole('button', { name: words.same }).focus();
	await tab.keyboard.press('Enter');
	await expect(tab.locator('.check-card h2')).toBeFocused();
	await tab.keyboard.press('Tab');
	await tab.keyboard.press('Enter');
	await expect(tab.locator('main')).toContainText(words.progress(2, 4, 0));
});
