import { expect, type Page, type Response, test } from '@playwright/test';
import { axe } from './axe.ts';
import { looks } from './looks.ts';
import { isLesson, markupOf, sampled } from './pages.ts';
import { sumOf, told, weightOf } from './weigh.ts';

// One visit in each look for all that can be seen at one: opening a page and waiting until it rests is most of what it takes.

const words = 30;
/** A lesson brings the styles of its bench with its words: wall, row and a sheet with tabs on a phone; one with ten cases 32.4. */
const lessonWords = 32.5;
/** With the machine library as it is published, panels of one's own, and what a rig is made of in a file of its own (0.8): 86.1; with a drill, and practice on tonight's rig before all drills, 87; with what is said of a file that can’t be read, 87.9. It was to be 85. */
const bench = 88;
/** Script files before the first tap. */
const files = 10;
/** Pages that fetch more: their parts are small, and put into fewer files they bring what the page has no use for. */
const moreFiles: Readonly<Record<string, number>> = {
	'/bench/': 12,
	'/drills/do/': 12,
	// own fixtures are offered for the rig, and tonight's rig itself
	'/finder/practise/': 14,
	// a walk that is handed on
	'/finder/tree/': 11,
	'/papers/sit/': 13,
};

/** Axe, on a page that rests. */
async function expectNothingOfAxe(tab: Page): Promise<void> {
	const { violations, passes } = await axe(tab);
	expect.soft(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
	expect.soft(passes.length).toBeGreaterThan(10);
}

/** One answer's weight, and what it was for. */
const weighed = async (response: Response) => ({
	type: response.request().resourceType(),
	...(await weightOf(response)),
});

/** What a page fetched, against the bars. */
async function expectToKeepToItsWeight(page: string, answers: readonly ReturnType<typeof weighed>[]): Promise<void> {
	const weights = await Promise.all(answers);
	const sum = (types: RegExp) => sumOf(weights.filter((it) => types.test(it.type)));
	const script = sum(/^script$/);
	const all = sum(/^(?!font)/);
	const font = sum(/^font$/);
	const scripts = weights.filter(({ type }) => type === 'script').length;
	console.log(`${page} ${told(all)}, of it script ${told(script)} in ${scripts} files; fonts ${told(font)} besides`);
	expect.soft(font.sent, 'kB of fonts').toBeLessThanOrEqual(55);
	// a lesson is a page of words until its bench scrolls into view
	if (!isLesson(page) && markupOf(page).includes('<astro-island')) {
		expect.soft(script.sent, 'kB of scripts').toBeLessThanOrEqual(bench);
		expect.soft(scripts, 'files of scripts').toBeLessThanOrEqual(moreFiles[page] ?? files);
	} else {
		expect.soft(all.sent, 'kB of a page of words').toBeLessThanOrEqual(isLesson(page) ? lessonWords : words);
		// its own small script stands in the page: a framework would come as a file
		expect.soft(script.sent, 'kB of scripts on a page of words').toBe(0);
	}
}

/** Symptom: a page's own look lost to the shared one. Cause: the build put the page's style first, which ranked its layer last. */
async function expectLayersInOrder(tab: Page): Promise<void> {
	const [first] = await tab.evaluate(() =>
		[...document.styleSheets].flatMap((sheet) =>
			[...sheet.cssRules].flatMap((rule) =>
				rule instanceof CSSLayerStatementRule
					? [[...rule.nameList]]
					: rule instanceof CSSLayerBlockRule
						? [[rule.name]]
						: [],
			),
		),
	);
	expect.soft(first).toEqual(['tokens', 'base', 'parts', 'layout', 'features', 'print', 'always']);
}

async function expectToFit320(tab: Page): Promise<void> {
	await tab.setViewportSize({ width: 320, height: 640 });
	expect.soft(await tab.evaluate(() => document.documentElement.scrollWidth), 'wide').toBeLessThanOrEqual(320);
	const small = await tab
		.locator('button:visible, .button:visible, nav a:visible, label:has(input):visible, select:visible')
		.evaluateAll((all) => all.filter((it) => it.getBoundingClientRect().height < 48).map((it) => it.outerHTML));
	expect.soft(small, 'controls a finger can hit').toEqual([]);
}

// axe goes through a page of some thousand parts twice as slowly while another test has the other core
test.describe.configure({ timeout: 180_000 });

for (const page of sampled) {
	for (const { colorScheme, width } of looks) {
		const isPhone = width === looks[0].width;
		const also = isPhone ? 'its layers are in order, and it fits 320' : 'and it is no heavier than it may be';

		test(`${page}, ${colorScheme}, ${width} wide: nothing for axe, nothing asked of others, a quiet console, ${also}`, async ({
			browser,
			baseURL,
		}) => {
			const context = await browser.newContext({
				colorScheme,
				viewport: { width, height: 844 },
				serviceWorkers: 'block',
			});
			const tab = await context.newPage();
			const asked: string[] = [];
			const said: string[] = [];
			const answers: ReturnType<typeof weighed>[] = [];
			tab.on('request', (request) => asked.push(request.url()));
			// at once: a browser keeps what it was sent for a while only
			const weigh = (response: Response) => answers.push(weighed(response));
			if (isPhone === isLesson(page)) tab.on('response', weigh);
			// the test itself blocks the service worker, and Playwright says so
			tab.on('console', (message) => {
				if (!message.text().includes('Service Worker registration blocked')) said.push(message.text());
			});
			tab.on('pageerror', (error) => said.push(error.message));

			await tab.goto(`${baseURL}${page}`);
			await tab.waitForLoadState('networkidle');
			// a lesson on a phone, before its bench is scrolled to: a wide screen may show its sliders at once
			if (isPhone && isLesson(page)) {
				tab.off('response', weigh);
				await expectToKeepToItsWeight(page, answers);
			}
			await expectNothingOfAxe(tab);
			await tab.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
			await tab.waitForLoadState('networkidle');
			if (!isPhone && !isLesson(page)) {
				tab.off('response', weigh);
				await expectToKeepToItsWeight(page, answers);
			}
			if (isPhone) {
				await expectLayersInOrder(tab);
				await expectToFit320(tab);
			}
			expect.soft(asked.length).toBeGreaterThan(1);
			expect.soft(asked.filter((url) => !url.startsWith(`${baseURL}/`) && !url.startsWith('data:'))).toEqual([]);
			expect.soft(said).toEqual([]);
			await context.close();
		});
	}
}
