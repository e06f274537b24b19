import { expect, type Page, test } from '@playwright/test';
import { slipWords } from '#words/plan/index.ts';
import { axe } from './axe.ts';
import { looks } from './looks.ts';

test.use({ serviceWorkers: 'block' });

const open = async (tab: Page, address = '/rig/'): Promise<void> => {
	await tab.goto(address);
	await expect(tab.locator('[data-ready]')).toBeVisible({ timeout: 30_000 });
};

/** Three taps: how many, which, first start address. */
async function begin(tab: Page, count: number): Promise<void> {
	await open(tab);
	await tab.getByRole('button', { name: `${count} fixtures`, exact: true }).click();
	await tab.locator('.rig-choice').first().click();
	await tab.locator('.rig-count').first().click();
	await expect(tab.locator('.rig-line')).toHaveCount(count);
}

/** Twenty-four mixed fixtures as a spreadsheet hands them over; one row has a slip of the pen in it. */
const LIST = [
	'Fixture\tName\tMode\tPlace',
	...Array.from({ length: 12 }, (_, i) => `Tallow 6\tFloor ${i + 1}\t9 ch\t${i * 2}`),
	...Array.from({ length: 6 }, (_, i) => `Picket 8\tBar ${i + 1}\t${i === 2 ? '36 ch' : '35 ch'}\t${i * 4},5`),
	...Array.from({ length: 6 }, (_, i) => `Cobble\tOld ${i + 1}\t7 ch\t${i * 4 + 1}`),
].join('\n');

/** Presses Tab until what has the focus is called so. */
async function tabTo(tab: Page, name: string | RegExp): Promise<void> {
	const is = (text: string): boolean => (typeof name === 'string' ? text === name : name.test(text));
	for (let n = 0; n < 120; n++) {
		await tab.keyboard.press('Tab');
		const text = await tab.evaluate(() => {
			const at = document.activeElement;
			const label = at instanceof HTMLInputElement || at instanceof HTMLTextAreaElement ? at.labels?.[0] : null;
			return (at?.getAttribute('aria-label') ?? label?.textContent ?? at?.textContent ?? '').trim();
		});
		if (is(text)) return;
	}
	throw new Error(`nothing called ${name} takes the focus`);
}

test('24 mixed fixtures from a pasted list to prep slips, by keyboard alone', async ({ page: tab }) => {
	await open(tab);
	await tabTo(tab, 'Paste a list');
	await tab.keyboard.press('Enter');
	await expect(tab.getByLabel('Your list')).toBeVisible();
	await tabTo(tab, 'Your list');
	await tab.keyboard.insertText(LIST);
	// the row with a mode that the fixture has not is marked in place, and put right there
	await expect(tab.locator('.rig-bad li')).toHaveCount(1);
	await tabTo(tab, 'Line 16, Mode');
	await tab.keyboard.press('Control+A');
	await tab.keyboard.insertText('35 ch');
	await tab.keyboard.press('Tab');
	await expect(tab.locator('.rig-bad')).toHaveCount(0);
	await tabTo(tab, 'Add 24 fixtures');
	await tab.keyboard.press('Enter');
	await expect(tab.locator('.rig-line')).toHaveCount(24);
	await expect(tab.locator('.rig-problems li')).toHaveCount(0);
	await tabTo(tab, 'Prep slips');
	await tab.keyboard.press('Enter');
	await expect(tab.locator('.slip')).toHaveCount(24, { timeout: 60_000 });
	for (const slip of await tab.locator('.slip-keys').all()) await expect(slip).not.toContainText(slipWords.none);
	// it is there again when the page is
	await tab.reload();
	await expect(tab.locator('.rig-line')).toHaveCount(24, { timeout: 30_000 });
});

test('a row changed in place clashes, one tap sorts it out, and undo brings it back', async ({ page: tab }) => {
	await begin(tab, 4);
	await tab.locator('.rig-line').nth(2).click();
	await tab.getByLabel('Start address', { exact: true }).fill('14');
	await tab.getByRole('button', { name: 'Done' }).click();
	await expect(tab.locator('.rig-problems li')).toHaveCount(1);
	await expect(tab.locator('.rig-problems li')).toContainText('share channels 14 to 18');
	await tab.getByRole('button', { name: /^Move .+ 019$/ }).click();
	await expect(tab.locator('.rig-problems li')).toHaveCount(0);
	await expect(tab.locator('.rig-line').nth(2)).toContainText('019');
	await tab.getByRole('button', { name: 'Undo' }).click();
	await expect(tab.locator('.rig-line').nth(2)).toContainText('014');
});

test('goes onto the bench as planned, and the finder begins on its fixture', async ({ page: tab }) => {
	await begin(tab, 3);
	await tab.getByRole('button', { name: 'Put it on the bench' }).click();
	await expect(tab.locator('.stage')).toBeVisible({ timeout: 30_000 });
	await expect(tab.locator('li.card')).toHaveCount(3);
	await open(tab);
	await expect(tab.locator('.rig-line')).toHaveCount(3);
	await tab.getByRole('button', { name: 'Something is dark' }).click();
	await tab.getByRole('button', { name: 'Find the fault: Wash 2' }).click();
	await expect(tab).toHaveURL(/\/finder\/$/);
	await expect(tab.locator('main')).toContainText('Wash 2', { timeout: 30_000 });
});

test('the last change is kept though the page is left at once; a deleted rig stays deleted', async ({ page: tab }) => {
	await begin(tab, 2);
	const leave = (): Promise<void> =>
		tab.evaluate(() => {
			Object.defineProperty(document, 'visibilityState', { configurable: true, value: 'hidden' });
			document.dispatchEvent(new Event('visibilitychange'));
			Reflect.deleteProperty(document, 'visibilityState');
		});
	// in one go: a person could not be as quick
	await tab.evaluate(() => {
		const button = (text: string): HTMLButtonElement | undefined =>
			[...document.querySelectorAll('button')].find((each) => each.textContent === text);
		button('+ Tallow 6')?.click();
		button('Another rig')?.click();
	});
	const kept = tab.getByRole('button', { name: /^Tonight: / });
	await expect(kept).toHaveText('Tonight: 3 fixtures');
	await kept.click();
	await expect(tab.locator('.rig-line')).toHaveCount(3);
	await tab.getByRole('button', { name: 'Delete this rig' }).click();
	await tab.getByRole('button', { name: 'Delete it for good' }).click();
	await expect(tab.getByRole('heading', { name: 'How many fixtures?' })).toBeVisible();
	await leave();
	await tab.reload();
	await expect(tab.getByRole('heading', { name: 'How many fixtures?' })).toBeVisible();
	await expect(kept).toHaveCount(0);
});

test('a weight that was given can be taken back, and 0 is none', async ({ page: tab }) => {
	await begin(tab, 4);
	await tab.locator('.rig-line').first().click();
	await tab.getByLabel('Overhead').check();
	await tab.getByText('Supply and show').click();
	const weight = tab.getByLabel(/^Kilograms of one/);
	const sum = tab.locator('.rig-figure', { hasText: 'Weight overhead' }).locator('strong');
	await weight.fill('4.5');
	await weight.blur();
	await expect(sum).toHaveText('4.50 kg');
	await weight.fill('0');
	await weight.blur();
	await expect(tab.getByText('Type a number from 0.1 to 500.')).toBeVisible();
	await weight.fill('');
	await weight.blur();
	await expect(sum).toHaveText('not known');
});

test('a link brings the same plan; a bad one gets a sentence', async ({ page: tab, browser }) => {
	await begin(tab, 5);
	await tab.getByRole('button', { name: 'Send or save' }).click();
	const link = tab.getByLabel('Link', { exact: true });
	await expect(link).toHaveValue(/#plan=1\./);
	const { hash } = new URL(await link.inputValue());
	const other = await browser.newPage();
	await open(other, `/rig/${hash}`);
	await expect(other.locator('.rig-line')).toHaveCount(5);
	await other.goto('/about/');
	await open(other, '/rig/#plan=1.AAAA');
	await expect(other.getByRole('alert')).toContainText('holds no whole rig plan');
	await other.close();
});

for (const { colorScheme, width } of looks)
	test(`at work it holds to axe and to its width, ${colorScheme}, ${width}`, async ({ page: tab }) => {
		await tab.emulateMedia({ colorScheme });
		await tab.setViewportSize({ width, height: 900 });
		await begin(tab, 6);
		await tab.locator('.rig-line').nth(1).click();
		await tab.getByLabel('Start address', { exact: true }).fill('3');
		await tab.getByLabel('Overhead').check();
		for (const words of ['Plan', 'Prep slips', 'Labels', 'Patch list', 'Line plan', 'Load and charge', 'Light']) {
			await tab.getByRole('button', { name: words, exact: true }).click();
			if (words === 'Prep slips') await expect(tab.locator('.slip')).toHaveCount(6, { timeout: 60_000 });
			const { violations } = await axe(tab);
			expect.soft(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
			expect.soft(await tab.evaluate(() => document.documentElement.scrollWidth), words).toBeLessThanOrEqual(width);
		}
		await tab.getByRole('button', { name: 'Plan', exact: true }).click();
		await tab.getByRole('button', { name: 'Paste a list' }).click();
		await tab.getByLabel('Your list').fill(LIST);
		const { violations } = await axe(tab, 'dialog');
		expect.soft(violations.map(({ id }) => id)).toEqual([]);
	});

test('prints prep slips two across on A4 and Letter and the cautions on two more pages, nothing cut', async ({
	page: tab,
}) => {
	await open(tab);
	await tab.getByRole('button', { name: 'Paste a list' }).click();
	await tab
		.getByLabel('Your list')
		.fill(LIST.replace('36 ch', '35 ch').replaceAll('Bar 1', `Bar ${'over the stage '.repeat(3)}1`));
	await tab.getByRole('button', { name: 'Add 24 fixtures' }).click();
	// the longest way there is: a panel that is to lock, and everything overhead
	await tab.getByRole('switch').click();
	await tab.getByLabel('When data stops').selectOption('programme');
	for (const n of [0, 12, 18]) {
		await tab.locator('.rig-line').nth(n).click();
		await tab.getByLabel('Overhead').check();
		await tab.getByRole('button', { name: 'Done' }).click();
	}
	await tab.getByRole('button', { name: 'Prep slips' }).click();
	await expect(tab.locator('.slip')).toHaveCount(24, { timeout: 60_000 });
	for (const format of ['A4', 'Letter']) {
		const pdf = await tab.pdf({ format });
		// eight while some of it was in 7 and 8 pt: all is read by torch, and stands in 10
		expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length, format).toBeLessThanOrEqual(13);
	}
	await tab.emulateMedia({ media: 'print' });
	const cut = await tab
		.locator('.slip')
		.evaluateAll((all) =>
			all
				.filter((it) => it.scrollHeight > it.clientHeight + 1 || it.scrollWidth > it.clientWidth + 1)
				.map(
					(it) => `${it.scrollHeight - it.clientHeight} px, ${it.scrollWidth - it.clientWidth} px: ${it.textContent}`,
				),
		);
	expect(cut).toEqual([]);
	await tab.emulateMedia({ media: 'screen' });
	await tab.getByRole('button', { name: 'Labels' }).click();
	await tab.emulateMedia({ media: 'print' });
	await expect(tab.locator('.label')).toHaveCount(24);
});

/** How many pages a PDF has, on the paper its style asks for. */
async function pagesOf(tab: Page, format: 'A4' | 'Letter'): Promise<number> {
	const pdf = await tab.pdf({ format, preferCSSPageSize: true });
	return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** What is cut, or set in letters too small to read by torch, as it is printed. */
const unreadable = (tab: Page, selector: string): Promise<string[]> =>
	tab.locator(selector).evaluateAll((all) =>
		all.flatMap((it) => {
			const cut = it.scrollHeight > it.clientHeight + 1 || it.scrollWidth > it.clientWidth + 1;
			const texts = [it, ...it.querySelectorAll('*')].filter((each) =>
				[...each.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()),
			);
			// 10 pt in px, less a hair
			const small = texts.some((each) => Number.parseFloat(getComputedStyle(each).fontSize) < 13.3);
			return cut || small ? [`${cut ? 'cut' : 'small'}: ${it.textContent}`] : [];
		}),
	);

test('labels on any grid of A4 and Letter and on a label printer’s tape, fixtures and both cable ends, nothing cut', async ({
	page: tab,
}) => {
	await open(tab);
	await tab.getByRole('button', { name: 'Paste a list' }).click();
	await tab.getByLabel('Your list').fill(LIST.replace('36 ch', '35 ch').replace('Bar 1', 'Bar over the stage left'));
	await tab.getByRole('button', { name: 'Add 24 fixtures' }).click();
	await tab.getByRole('button', { name: 'Labels', exact: true }).click();
	await expect(tab.locator('.label')).toHaveCount(24);
	for (const [paper, format] of [
		['a4', 'A4'],
		['letter', 'Letter'],
	] as const) {
		await tab.getByLabel('Paper').selectOption(paper);
		expect(await pagesOf(tab, format), paper).toBe(1);
		await tab.emulateMedia({ media: 'print' });
		expect(await unreadable(tab, '.label')).toEqual([]);
		await tab.emulateMedia({ media: null });
	}
	await tab.getByLabel('Labels used up on the first sheet').fill('3');
	await tab.getByLabel('Labels used up on the first sheet').blur();
	expect(await pagesOf(tab, 'Letter')).toBe(2);
	await tab.getByRole('radio', { name: 'both ends of each data cable' }).check();
	await expect(tab.locator('.label')).toHaveCount(48);
	await tab.emulateMedia({ media: 'print' });
	expect(await unreadable(tab, '.label')).toEqual([]);
	await tab.emulateMedia({ media: 'screen' });
	await tab.getByLabel('Labels across').fill('9');
	await tab.getByLabel('Labels across').blur();
	await expect(tab.locator('.notice-wrong')).toContainText('too little to read by torch');
	await expect(tab.locator('.label')).toHaveCount(0);
	await tab.getByLabel('Paper').selectOption('strip');
	await expect(tab.locator('.label')).toHaveCount(48);
	await tab.emulateMedia({ media: 'print' });
	expect(await unreadable(tab, '.label')).toEqual([]);
	await tab.emulateMedia({ media: 'screen' });
	await tab.getByLabel('Width of the tape, mm').fill('22');
	await tab.getByLabel('Length of a label, mm').fill('40');
	await tab.getByLabel('Length of a label, mm').blur();
	await expect(tab.locator('.notice-wrong')).toContainText('more text than room');
});

test('line plan, load sheet and charge plan print in letters read by torch, every sum open, nothing wider than paper', async ({
	page: tab,
}) => {
	await open(tab);
	await tab.getByRole('button', { name: 'Paste a list' }).click();
	await tab.getByLabel('Your list').fill(LIST.replace('36 ch', '35 ch'));
	await tab.getByRole('button', { name: 'Add 24 fixtures' }).click();
	for (const words of ['Line plan', 'Load and charge']) {
		await tab.getByRole('button', { name: words, exact: true }).click();
		await expect(tab.locator('.papers-rig')).toContainText('Mark ');
		if (words === 'Load and charge') {
			await tab.getByLabel('Charged by, on the day of the show').fill('19:30');
			await expect(tab.locator('.papers-rig')).toContainText(/being full by 19:30, plug in before \d\d:\d\d/);
			await expect(tab.locator('.papers-rig')).toContainText('(assumed)');
			await expect(tab.locator('.papers-rig')).not.toContainText(/\bsafe\b/);
		}
		await tab.emulateMedia({ media: 'print' });
		// the narrower of A4 and Letter between margins of 8 mm, px
		await tab.setViewportSize({ width: 733, height: 1000 });
		expect(await unreadable(tab, '.sheet-table td, .sheet-table th, .sheet-notes li, .lane figcaption')).toEqual([]);
		expect(await tab.evaluate(() => document.documentElement.scrollWidth), words).toBeLessThanOrEqual(733);
		await tab.emulateMedia({ media: 'screen' });
	}
});

test('a move is tried on the light before it is done, in feet too, by keyboard', async ({ page: tab }) => {
	await begin(tab, 4);
	await tab.getByRole('button', { name: 'Light', exact: true }).click();
	await expect(tab.locator('.light-pool')).toHaveCount(4);
	await expect(tab.locator('.rig-light td').first()).toHaveText('3.0 m');
	await tab.getByLabel('From the wall, m').focus();
	await tab.keyboard.press('Control+A');
	await tab.keyboard.type('6');
	await tab.keyboard.press('Tab');
	await expect(tab.locator('.light-move li').first()).toContainText('lux before');
	await tabTo(tab, 'Move it on the plan');
	await tab.keyboard.press('Enter');
	await expect(tab.locator('.rig-light td').first()).toHaveText('6.0 m');
	await tab.getByRole('radio', { name: 'feet and foot-candles' }).check();
	await expect(tab.locator('.rig-light td').first()).toHaveText('19.7 ft');
	await expect(tab.getByLabel('From the wall, ft')).toHaveValue('19.69');
	await tab.getByText('Show the sums').first().click();
	await expect(tab.locator('.rig-light th details').first()).toContainText('throw 19.7 ft (given)');
	await expect(tab.locator('.rig-light th details').nth(1)).toContainText('(assumed)');
	// it is on the plan, and one undo takes it back
	await tab.getByRole('button', { name: 'Undo' }).click();
	await expect(tab.locator('.rig-light td').first()).toHaveText('9.8 ft');
});
