import { type CDPSession, chromium, type Page } from '@playwright/test';
import { expect, test } from 'vitest';
import { serve } from '../../src/site/server/index.ts';
import { browserFlags, findBrowser } from '../house/browser.ts';
import { built } from '../site/pages.ts';
import { display, drawer, key, openSheet, take } from '../src/features/bench/open.ts';
import { longLine } from '../src/features/bench/sheets.ts';

/** How much slower than this machine: times are of the page's own thread, times this, so that other work on the machine doesn't count. */
const SLOWED = 4;
const COUNTS = [4, 24, 100];
const TIMES = 9;

interface TraceEvent {
	readonly name: string;
	readonly ph: string;
	readonly pid: number;
	readonly tid: number;
	readonly ts: number;
	readonly dur?: number;
	readonly tdur?: number;
	readonly args: Readonly<Record<string, unknown>>;
}

/** Processor time of each task of the page's main thread while something is done, in milliseconds on a machine so much slower. */
async function tasksIn(cdp: CDPSession, act: () => Promise<void>): Promise<number[]> {
	const events: TraceEvent[] = [];
	const collect = ({ value }: { value: unknown[] }): void => void events.push(...(value as TraceEvent[]));
	cdp.on('Tracing.dataCollected', collect);
	const done = new Promise<void>((resolve) => cdp.once('Tracing.tracingComplete', () => resolve()));
	await cdp.send('Tracing.start', {
		transferMode: 'ReportEvents',
		traceConfig: {
			includedCategories: ['toplevel', 'disabled-by-default-devtools.timeline', 'devtools.timeline', '__metadata'],
		},
	});
	await act();
	await cdp.send('Tracing.end');
	await done;
	cdp.off('Tracing.dataCollected', collect);
	const main = new Set(
		events
			.filter(({ name, args }) => name === 'thread_name' && args['name'] === 'CrRendererMain')
			.map(({ pid, tid }) => `${pid}.${tid}`),
	);
	return events
		.filter((it) => it.name === 'RunTask' && it.ph === 'X' && main.has(`${it.pid}.${it.tid}`))
		.map(({ tdur = 0 }) => (tdur / 1000) * SLOWED);
}

const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0);
const most = (all: readonly number[]): number => all.reduce((top, each) => Math.max(top, each), 0);

/** Two frames drawn, and the page free again. */
const drawn = (tab: Page): Promise<void> =>
	tab.evaluate(
		() => new Promise<void>((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve)))),
	);

interface Row {
	readonly least: number;
	readonly median: number;
	readonly most: number;
	readonly longest: number;
}

/** Sums from an input to its picture, and the longest task met. */
async function timed(tab: Page, cdp: CDPSession, act: (n: number) => Promise<void>, times = TIMES): Promise<Row> {
	const sums: number[] = [];
	let longest = 0;
	for (let n = 0; n < times; n++) {
		const tasks = await tasksIn(cdp, async () => {
			await act(n);
			await drawn(tab);
		});
		sums.push(sum(tasks));
		longest = Math.max(longest, most(tasks));
		await tab.waitForTimeout(250);
	}
	sums.sort((a, b) => a - b);
	const at = (share: number): number => Math.round(sums[Math.floor((sums.length - 1) * share)] as number);
	return { least: at(0), median: at(0.5), most: at(1), longest: Math.round(longest) };
}

/** Opens a drawer for the first time by its tabs, with nothing asked of the page meanwhile. */
const open = (tab: Page, id: string): Promise<void> =>
	tab.evaluate(async (tool) => {
		const frame = (): Promise<void> => new Promise((resolve) => requestAnimationFrame(() => resolve()));
		const click = (at: string): void => document.querySelector<HTMLElement>(at)?.click();
		const tabs = [...document.querySelectorAll<HTMLElement>('.sheet-tab')];
		const index = ['panel', 'desk', 'cables'].indexOf(tool);
		tabs.at(index < 0 ? 3 : index)?.click();
		await frame();
		if (index < 0) click(`.tool-tab[data-of="${tool}"][aria-expanded="false"]`);
		while (!document.querySelector(`[data-tool="${tool}"] > :not(h2, .coming, .button)`)) await frame();
	}, id);

test(`the bench, milliseconds of processor from an input to its picture, ${SLOWED} times slowed`, {
	timeout: 15 * 60_000,
}, async () => {
	const site = await serve(built);
	const browser = await chromium.launch({ executablePath: await findBrowser(), args: [...browserFlags] });
	const table: Record<string, Row> = {};
	try {
		for (const count of COUNTS) {
			const context = await browser.newContext({
				serviceWorkers: 'block',
				viewport: { width: 390, height: 844 },
				baseURL: site.origin,
			});
			const tab = await context.newPage();
			tab.setDefaultTimeout(60_000);
			const cdp = await context.newCDPSession(tab);
			await openSheet(tab, longLine(count));
			await tab.waitForTimeout(4000);
			const own = async (name: string, act: (n: number) => Promise<void>, times?: number): Promise<void> => {
				table[`${count}: ${name}`] = await timed(tab, cdp, act, times);
			};
			await own('at rest, 3 s', () => tab.waitForTimeout(3000), 1);
			const down = key(tab, 'Down');
			const box = await down.boundingBox();
			if (!box) throw new Error('no key in view');
			const before = await display(tab);
			await own('a key', () => tab.mouse.click(box.x + box.width / 2, box.y + box.height / 2));
			expect(await display(tab)).not.toBe(before);
			await own('another fixture in hand', (n) => take(tab, `Wash ${2 + (n % 3)}`).dispatchEvent('click'));
			for (const id of ['desk', 'cables', 'remote', 'log']) await own(`opening ${id}`, () => open(tab, id), 1);
			await drawer(tab, 'desk');
			const slider = tab.locator('.entry-slider').first();
			await slider.scrollIntoViewIfNeeded();
			const at = await slider.boundingBox();
			if (!at) throw new Error('no fader in view');
			const [x, y] = [at.x + at.width / 2, at.y + at.height / 2];
			await own(
				'a fader dragged for 3 s',
				async () => {
					await tab.mouse.move(x, y);
					await tab.mouse.down();
					const end = Date.now() + 3000;
					for (let i = 0; Date.now() < end; i++) {
						const along = (1 + Math.sin(i / 12)) / 2;
						await tab.mouse.move(at.x + at.width * along, at.y + at.height / 2);
						await tab.waitForTimeout(8);
					}
					await tab.mouse.up();
				},
				1,
			);
			await context.close();
		}
	} finally {
		console.table(table);
		await browser.close();
		await site.close();
	}
});
