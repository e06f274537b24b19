import { expect, type Page, test } from '@playwright/test';
import { drawer, key, lightOf, openSheet, take } from './open.ts';
import { longLine } from './sheets.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

/** Notes from here on in which part of the page anything is written: which card, or which other part. */
const watch = (tab: Page): Promise<void> =>
	tab.evaluate(() => {
		const written = new Set<string>();
		const partOf = (element: Element | null): string => {
			const card = element?.closest('.card');
			const pool = element?.closest('[data-pool]')?.getAttribute('data-pool');
			if (pool) return `light of ${pool.replace(/\.\d+$/, '')}`;
			if (card) return `card of ${card.querySelector('.tape')?.textContent}`;
			if (element?.closest('.stage-hand')) return 'in hand';
			if (element?.closest('[role="status"]')) return 'told';
			return element?.closest('[data-tool]')?.getAttribute('data-tool') ?? element?.outerHTML.slice(0, 80) ?? '?';
		};
		const observer = new MutationObserver((records) => {
			for (const { target } of records) written.add(partOf(target instanceof Element ? target : target.parentElement));
		});
		observer.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
		Object.assign(window, { written });
	});

const written = async (tab: Page): Promise<string[]> => {
	await tab.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
	return tab.evaluate(() => [...(window as unknown as { written: Set<string> }).written].sort());
};

// each key drew every card, socket and drawer anew
test('of 24 fixtures a key writes to its own card and panel, and a fader to its own fader, card and light', async ({
	page: tab,
}) => {
	await openSheet(tab, longLine(24));
	const desk = await drawer(tab, 'desk');
	const fader = desk.getByRole('slider').first();
	await expect(lightOf(tab, 'Wash 1')).not.toHaveText('dark');
	await key(tab, 'Down').click();
	await tab.waitForTimeout(2000);

	await watch(tab);
	await key(tab, 'Down').click();
	expect((await written(tab)).filter((part) => part !== 'told')).toEqual(['card of Wash 1', 'in hand']);

	await watch(tab);
	await fader.focus();
	await tab.keyboard.press('Home');
	await expect(fader).toHaveValue('0');
	expect((await written(tab)).filter((part) => part !== 'told')).toEqual([
		'card of Wash 1',
		'desk',
		'in hand',
		'light of wash-1',
	]);

	await watch(tab);
	await take(tab, 'Wash 2').click();
	expect((await written(tab)).filter((part) => /^(card|light)/.test(part))).toEqual([
		'card of Wash 1',
		'card of Wash 2',
	]);
});

/** How often functions of the script that draws are called while something is done: by count, whatever the machine's pace. */
async function drawingCalls(tab: Page, act: () => Promise<void>): Promise<number> {
	const client = await tab.context().newCDPSession(tab);
	await client.send('Profiler.enable');
	await client.send('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
	await client.send('Profiler.takePreciseCoverage');
	await act();
	await tab.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
	const { result } = await client.send('Profiler.takePreciseCoverage');
	await client.detach();
	let calls = 0;
	for (const { url, functions } of result) {
		if (!url.endsWith('.js')) continue;
		// only what puts a component on the page knows this word
		const draws = (await (await tab.request.get(url)).text()).includes('dangerouslySetInnerHTML');
		if (draws) for (const { ranges } of functions) calls += ranges[0]?.count ?? 0;
	}
	return calls;
}

test('a key among 24 fixtures has no more drawn than among 4, nor has a fader', async ({ page: tab }) => {
	const counts: { key: number; fader: number }[] = [];
	for (const count of [4, 24]) {
		await tab.goto('about:blank');
		await openSheet(tab, longLine(count));
		const desk = await drawer(tab, 'desk');
		const fader = desk.getByRole('slider').first();
		await key(tab, 'Down').click();
		await tab.waitForTimeout(2000);
		const pressed = await drawingCalls(tab, () => key(tab, 'Down').click());
		await tab.waitForTimeout(2000);
		await fader.focus();
		counts.push({ key: pressed, fader: await drawingCalls(tab, () => tab.keyboard.press('Home')) });
	}
	const [few, many] = counts;
	expect(few?.key).toBeGreaterThan(0);
	expect(few?.fader).toBeGreaterThan(0);
	// a little room: a mains lead can go into each of the others
	expect(many?.key).toBeLessThan(1.3 * (few?.key ?? 0));
	expect(many?.fader).toBeLessThan(1.3 * (few?.fader ?? 0));
});

test('a fader moved many times within a frame is one step of the rig', async ({ page: tab }) => {
	await openSheet(tab, longLine(24));
	const desk = await drawer(tab, 'desk');
	const fader = desk.getByRole('slider').first();
	await watch(tab);
	const texts = await fader.evaluate((slider: HTMLInputElement) => {
		const told: (string | null)[] = [];
		const observer = new MutationObserver((all) => told.push(...all.map(() => slider.getAttribute('aria-valuetext'))));
		observer.observe(slider, { attributeFilter: ['aria-valuetext'] });
		for (let level = 10; level <= 60; level++) {
			slider.value = `${level}`;
			slider.dispatchEvent(new Event('input', { bubbles: true }));
		}
		slider.dispatchEvent(new Event('change', { bubbles: true }));
		return new Promise<typeof told>((done) =>
			requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(() => done(told)))),
		);
	});
	expect(texts).toEqual(['60 (24 %)']);
});
