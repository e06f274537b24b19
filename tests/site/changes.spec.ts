import { expect, type Page, test } from '@playwright/test';
import { axe } from './axe.ts';
import { looks } from './looks.ts';

test.use({ serviceWorkers: 'block' });

const LIST = [
	'Fixture\tName\tMode\tPlace',
	...Array.from({ length: 4 }, (_, i) => `Tallow 6\tFloor ${i + 1}\t9 ch\t${i * 4}`),
	'Picket 8\tBar 1\t35 ch\t2',
	'Cobble\tOld 1\t7 ch\t6',
].join('\n');

const goTo = (tab: Page, words: string) => tab.getByRole('button', { name: words, exact: true }).click();

/** Six mixed fixtures, whose prep slips are printed. */
async function begin(tab: Page): Promise<void> {
	await tab.addInitScript(() => {
		globalThis.print = () => void dispatchEvent(new Event('beforeprint'));
	});
	await tab.goto('/rig/');
	await expect(tab.locator('[data-ready]')).toBeVisible({ timeout: 30_000 });
	await goTo(tab, 'Paste a list');
	await tab.getByLabel('Your list').fill(LIST);
	await goTo(tab, 'Add 6 fixtures');
	await goTo(tab, 'Prep slips');
	await expect(tab.locator('.slip')).toHaveCount(6, { timeout: 60_000 });
	await goTo(tab, 'Print');
}

/** Swaps Floor 2 for a bar. */
async function swap(tab: Page): Promise<void> {
	await goTo(tab, 'Changes');
	await tab.getByLabel('Which light?').selectOption({ label: 'Floor 2' });
	await tab.getByLabel('For which spare?').selectOption({ label: 'Picket 8' });
	await goTo(tab, 'Swap it');
}

const markOf = async (tab: Page, name: string): Promise<string> => {
	const text = await tab
		.locator('.slip', { has: tab.getByRole('heading', { name, exact: true }) })
		.locator('.slip-mark')
		.textContent();
	return /Mark (\w{5})/.exec(text ?? '')?.[1] ?? '';
};

async function verdict(tab: Page, mark: string, says: RegExp): Promise<void> {
	await tab.getByLabel('Mark on the sheet').fill(mark.toLowerCase());
	await goTo(tab, 'Check the mark');
	await expect(tab.locator('.rig-changes .notice').last()).toContainText(says);
}

test('a swap names one light, the sheets that are wrong and prints those alone; old marks are told', async ({
	page: tab,
}) => {
	await begin(tab);
	const [swapped, other] = [await markOf(tab, 'Floor 2'), await markOf(tab, 'Floor 3')];
	await goTo(tab, 'Changes');
	await expect(tab.getByText('Nothing changed since')).toBeVisible();
	await verdict(tab, swapped, /up to date: the prep slip of Floor 2/);
	await swap(tab);
	await expect(tab.locator('.change-list > li')).toHaveCount(1);
	await expect(tab.locator('.change-list')).toContainText('Floor 2 (Picket 8)');
	await expect(tab.locator('.rig-changes')).toContainText('The patch list is wrong too');
	await verdict(tab, swapped, /old: the prep slip of Floor 2/);
	await verdict(tab, other, /up to date: the prep slip of Floor 3/);
	await verdict(tab, '0000Z', /old, of another rig, or mistyped/);
	await verdict(tab, swapped, /old/);
	await tab.getByRole('button', { name: '1 prep slip' }).click();
	await expect(tab.locator('.slip')).toHaveCount(1, { timeout: 60_000 });
	await expect(tab.locator('.slip')).toContainText('Floor 2');
	await tab.emulateMedia({ media: 'print' });
	await expect(tab.locator('.rig-changes')).toBeHidden();
	await expect(tab.locator('.slip')).toBeVisible();
	await tab.emulateMedia({ media: 'screen' });
	await tab.getByRole('button', { name: '1 label' }).click();
	await expect(tab.locator('.label')).toHaveCount(1);
	// it is there again when the page is, until all of it is done
	await tab.reload();
	await expect(tab.locator('.change-list > li')).toHaveCount(1, { timeout: 30_000 });
	await goTo(tab, 'Lights and sheets are as planned now');
	await expect(tab.getByText('Nothing changed since')).toBeVisible();
});

test('every sheet carries its mark; the patch list on each page', async ({ page: tab }) => {
	await begin(tab);
	await expect(tab.locator('.slip-mark')).toHaveCount(6);
	await goTo(tab, 'Labels');
	await expect(tab.locator('.label-mark')).toHaveCount(6);
	await goTo(tab, 'Patch list');
	await expect(tab.locator('.patch thead')).toContainText(/Tonight · Mark \w{5}/);
});

for (const { colorScheme, width } of looks)
	test(`changes hold to axe and to their width, ${colorScheme}, ${width}`, async ({ page: tab }) => {
		await tab.emulateMedia({ colorScheme });
		await tab.setViewportSize({ width, height: 844 });
		await begin(tab);
		await swap(tab);
		await verdict(tab, '0000Z', /old/);
		const { violations } = await axe(tab);
		expect.soft(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
		expect.soft(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
	});
