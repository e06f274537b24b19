import { expect, type Page, test } from '@playwright/test';
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { cardWords } from '#words/stock/index.ts';
import { begin, tap } from '../src/features/finder/hidden.ts';

/** All that is read by torch, printed by the browser itself: what stands on each sheet is read back from the PDF. */

test.use({ serviceWorkers: 'block' });

const MIXED = [
	'Fixture\tName\tMode\tPlace',
	...['Door left', 'Door right', 'Column one', 'Column two', 'Bar back wall'].map(
		(name, i) => `Tallow 6\t${name}\t9 ch\t${i * 2}`,
	),
	...['Truss front left', 'Truss front middle, over the top table', 'Truss front right'].map(
		(name, i) => `Picket 8\t${name}\t35 ch\t${i * 4 + 2},5`,
	),
	'Cobble\tStage old 1\t7 ch\t1',
	'Cobble\tStage old 2\t7 ch\t4',
	'Thimble 4\tCake table\t\t7',
	'Thimble 4\tGift table\t\t9',
].join('\n');
const ONE = 'Fixture\tName\tMode\tPlace\nTallow 6\tDoor\t9 ch\t0';

interface Run {
	readonly text: string;
	readonly points: number;
	readonly x: number;
	readonly y: number;
	readonly right: number;
}

/** What a PDF says, sheet by sheet, from the top down. */
async function sheetsOf(pdf: Buffer): Promise<{ wide: number; tall: number; runs: Run[] }[]> {
	const file = await getDocument({ data: new Uint8Array(pdf), verbosity: VerbosityLevel.ERRORS }).promise;
	const sheets = [];
	for (let n = 1; n <= file.numPages; n++) {
		const page = await file.getPage(n);
		const [, , wide = 0, tall = 0] = page.view;
		const runs = (await page.getTextContent()).items.flatMap((it): Run[] => {
			if (!('str' in it) || it.str.trim() === '') return [];
			const [, , c, d, x, y] = it.transform as number[];
			return [{ text: it.str, points: Math.hypot(c ?? 0, d ?? 0), x: x ?? 0, y: y ?? 0, right: (x ?? 0) + it.width }];
		});
		sheets.push({ wide, tall, runs });
	}
	return sheets;
}

/** Colours that are neither black, white nor a grey between, on what is printed. */
const coloured = (tab: Page): Promise<string[]> =>
	tab.evaluate(() => {
		const isGrey = (colour: string) => {
			const [r, g, b, a] = (colour.match(/[\d.]+/g) ?? []).map(Number);
			return a === 0 || colour === 'none' || (r === g && g === b && colour.startsWith('rgb'));
		};
		return [...document.querySelectorAll('main *')].flatMap((it) => {
			if (!it.checkVisibility({ visibilityProperty: true }) || it.getBoundingClientRect().width < 2) return [];
			const { color, backgroundColor, borderTopColor, borderLeftColor, borderTopWidth, borderLeftWidth, fill, stroke } =
				getComputedStyle(it);
			const isDrawn = it instanceof SVGGeometryElement;
			const all = [
				color,
				backgroundColor,
				...(borderTopWidth === '0px' ? [] : [borderTopColor]),
				...(borderLeftWidth === '0px' ? [] : [borderLeftColor]),
				...(isDrawn ? [fill, stroke] : []),
			];
			return all.filter((each) => !isGrey(each)).map((each) => `${it.className}: ${each}`);
		});
	});

/** What is wrong with a print on either paper: small letters, what is off the sheet, empty sheets, a heading alone at a sheet's foot. */
async function wrongOn(tab: Page, { least = 10, most = Number.POSITIVE_INFINITY } = {}): Promise<string[]> {
	const wrong: string[] = [];
	for (const format of ['A4', 'Letter'] as const) {
		await tab.emulateMedia({ media: 'print', colorScheme: 'dark' });
		wrong.push(...new Set(await coloured(tab)));
		const headings = await tab.locator('main :is(h1, h2, h3, h4, caption)').allTextContents();
		const sheets = await sheetsOf(await tab.pdf({ format, preferCSSPageSize: true }));
		if (sheets.length > most) wrong.push(`${format}: ${sheets.length} sheets`);
		for (const [i, { wide, tall, runs }] of sheets.entries()) {
			const at = `${format} ${i + 1}`;
			if (runs.length === 0) wrong.push(`${at}: nothing on it`);
			for (const { text, points, x, y, right } of runs) {
				if (points < least - 0.05) wrong.push(`${at}: ${points.toFixed(1)} pt: ${text}`);
				if (x < 8 || right > wide - 8 || y < 8 || y > tall - 8) wrong.push(`${at}: off the sheet: ${text}`);
			}
			const lowest = runs.toSorted((a, b) => a.y - b.y)[0];
			const isHeading = lowest && lowest.points > 10.5 && headings.some((each) => each.trim() === lowest.text.trim());
			if (isHeading && i < sheets.length - 1) wrong.push(`${at}: alone at the foot: ${lowest.text}`);
		}
	}
	await tab.emulateMedia({ media: null, colorScheme: null });
	return wrong;
}

const goTo = (tab: Page, words: string) => tab.getByRole('button', { name: words, exact: true }).click();

async function openRig(tab: Page, list: string): Promise<void> {
	await tab.goto('/rig/');
	await expect(tab.locator('[data-ready]')).toBeVisible({ timeout: 30_000 });
	await goTo(tab, 'Paste a list');
	await tab.getByLabel('Your list').fill(list);
	await tab.getByRole('button', { name: /^Add \d+ fixture/ }).click();
	await expect(tab.locator('.rig-line').first()).toBeVisible();
}

for (const [name, list, rows] of [
	['twelve mixed fixtures with names of their own', MIXED, 12],
	['one fixture', ONE, 1],
] as const)
	test(`every sheet of a rig of ${name}: 10 pt or more, black, whole, on A4 and Letter`, async ({ page: tab }) => {
		test.slow();
		await openRig(tab, list);
		for (const sheet of ['Prep slips', 'Labels', 'Patch list', 'Line plan', 'Load and charge']) {
			await goTo(tab, sheet);
			if (sheet === 'Prep slips') await expect(tab.locator('.slip')).toHaveCount(rows, { timeout: 60_000 });
			expect(await wrongOn(tab), sheet).toEqual([]);
		}
		// symptom: printed from the browser's own menu, these came out as an empty sheet
		for (const sheet of ['Plan', 'Check panels', 'Tick off']) {
			await goTo(tab, sheet);
			await tab.emulateMedia({ media: 'print' });
			const said = async () =>
				(await sheetsOf(await tab.pdf({ format: 'A4', preferCSSPageSize: true })))[0]?.runs.length;
			await expect.poll(said, sheet).toBeGreaterThan(2);
			await tab.emulateMedia({ media: null });
		}
	});

// the first is the largest of them
for (const asks of ['four-in-line&fixture=wash-3&complaint=no-answer', 'one-wash&fixture=wash-1&complaint=dark'])
	test(`the tree of ${asks}: two sheets at most, in 10 pt, no percentages`, async ({ page: tab }) => {
		await tab.goto(`/finder/tree/#rig=${asks}`);
		await expect(tab.locator('.tree')).toBeVisible({ timeout: 60_000 });
		expect(await wrongOn(tab, { most: 2 })).toEqual([]);
		await tab.emulateMedia({ media: 'print' });
		await expect(tab.locator('.tree-share').first()).toBeHidden();
	});

test('the log of a walk and a pocket card are one sheet each', async ({ page: tab }) => {
	await tab.goto('/finder/');
	await begin(
		tab,
		{
			rig: 'four-in-line',
			fixture: 'wash-3',
			complaint: 'no-answer',
			fault: { fault: 'switched-off', place: 'wash-3' } as never,
		},
		tap,
	);
	await expect(tab.locator('[data-check]').first()).toBeVisible();
	expect(await wrongOn(tab, { most: 1 }), 'log').toEqual([]);
	// after one paper the page takes it back, before the other
	await tab.addInitScript(() => addEventListener('afterprint', (event) => event.stopImmediatePropagation()));
	await tab.goto('/lessons/bands/');
	await tab.evaluate(() => {
		document.documentElement.dataset['prints'] = 'card';
	});
	expect(await wrongOn(tab, { most: 1 }), 'pocket card').toEqual([]);
});

test('a quiz, its answer sheet and its key', async ({ page: tab }) => {
	await tab.goto('/papers/');
	await tab.getByLabel('What it’s called').fill('Friday crew');
	const link = tab.getByLabel('Link to the quiz');
	await expect(link).toHaveValue(/#paper=/, { timeout: 30_000 });
	await tab.goto(`/papers/print/${new URL(await link.inputValue()).hash}`);
	await tab.getByLabel('The key, with workings').check();
	await expect(tab.locator('.sheet')).toHaveCount(3);
	expect(await wrongOn(tab)).toEqual([]);
});

test('a fixture’s card in each of its sizes', async ({ page: tab }) => {
	const chart = `9 channel mode\n1 Dimmer\n2 Strobe\n 0-9 open\n 10-255 strobe, slow to fast\n3 Red\n4 Green\n5 Blue\n6 White\n7 Amber\n8 UV\n9 Macros\n 0-255 colours`;
	const kept = {
		'own-a': {
			kind: 'chart',
			id: 'own-a',
			name: 'Lid wash',
			chart,
			shape: 'wash',
			beam: 25,
			watts: 60,
			lumens: null,
			feed: 'mains',
			wattHours: null,
			link: null,
			changed: 1_700_000_000_000,
		},
	};
	const text = JSON.stringify({ version: 2, kept });
	await tab.addInitScript((it) => localStorage.setItem('prep-bay.stock', it), text);
	await tab.goto('/stock/');
	await tab.getByRole('button', { name: cardWords.makeOne('Lid wash') }).click();
	for (const size of ['a5', 'a6', 'half'] as const) {
		await tab.getByRole('radio', { name: cardWords.sizes[size], exact: true }).check();
		expect(await wrongOn(tab), size).toEqual([]);
	}
});
