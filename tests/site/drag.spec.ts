import { expect, type Locator, test } from '@playwright/test';
import { planWords } from '#words/plan/index.ts';
import { expectNothingWrong } from './axe.ts';
import { pasteRig, press } from './pasted.ts';

test.use({ serviceWorkers: 'block' });

const LIST = ['Fixture\tName\tPlace', 'Tallow 6\tDoor\t0', 'Tallow 6\tColumn\t4', 'Tallow 6\tBar\t8'];

const middleOf = async (dot: Locator): Promise<{ x: number; y: number }> => {
	await dot.scrollIntoViewIfNeeded();
	const box = await dot.locator('circle').last().boundingBox();
	if (!box) throw new Error('the dot has no place');
	return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

for (const [width, height] of [
	[390, 844],
	[1280, 800],
] as const)
	test(`at ${width} a light is dragged along the line plan, its cable with it, and undone; and moved by keys`, async ({
		page: tab,
	}) => {
		await tab.setViewportSize({ width, height });
		await pasteRig(tab, LIST);
		await press(tab, planWords.tabs.line);
		const dot = (name: string) => tab.getByRole('slider', { name, exact: true });
		const metres = tab.locator('.papers-rig tbody tr td:last-child');
		await expect(dot('Door')).toHaveAttribute('aria-valuenow', '0');
		const before = await metres.allTextContents();
		const [from, to] = [await middleOf(dot('Door')), await middleOf(dot('Column'))];
		await tab.mouse.move(from.x, from.y);
		await tab.mouse.down();
		await tab.mouse.move((from.x + to.x) / 2, from.y, { steps: 4 });
		await expect(tab.locator('.lane-place')).toHaveText('2 m');
		await expect(dot('Door')).toHaveAttribute('aria-valuenow', '0');
		await tab.mouse.up();
		await expect(dot('Door')).toHaveAttribute('aria-valuenow', '2');
		await expect(tab.locator('.lane-place')).toHaveCount(0);
		expect(await metres.allTextContents()).not.toEqual(before);
		// past the other one: the cable goes through it first
		await dot('Door').press('PageUp');
		await expect(dot('Door')).toHaveAttribute('aria-valuenow', '7');
		await expect(dot('Door')).toBeFocused();
		await dot('Door').press('ArrowLeft');
		await expect(dot('Door')).toHaveAttribute('aria-valuenow', '6.5');
		await expect(tab.locator('.papers-rig tbody tr').first()).toContainText('Column');
		await expectNothingWrong(tab);
		// a trembling tap, and a drag given up, move nothing
		const at = await middleOf(dot('Bar'));
		await tab.mouse.move(at.x, at.y);
		await tab.mouse.down();
		await tab.mouse.move(at.x + 1, at.y);
		await tab.mouse.up();
		await expect(dot('Bar')).toHaveAttribute('aria-valuenow', '8');
		const undo = tab.locator('.rig-head .button').first();
		for (let i = 0; i < 3; i++) await undo.click();
		await expect(dot('Door')).toHaveAttribute('aria-valuenow', '0');
		expect(await metres.allTextContents()).toEqual(before);
	});
