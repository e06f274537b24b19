import fc from 'fast-check';
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { readChart, readPage } from '../../../../shared/stock/index.ts';
import { afterKey, type Box, boxBetween, WHOLE } from '../../../../src/features/stock/manual/box.ts';
import { bytesOf } from '../../../../src/features/stock/manual/bytes.ts';
import { itemsIn, type PageItems, pageItems, textState } from '../../../../src/features/stock/manual/items.ts';
import { MOST_BYTES, openManual } from '../../../../src/features/stock/manual/pdf.ts';
import { runs } from '../../../runs.ts';
import { SAMPLE } from '../../../shared/stock/page/charts.ts';
import { type Layout, laidOut, PLAIN } from '../../../shared/stock/page/lay.ts';
import { lockedPdf, type MadePage, madePdf } from '../../../shared/stock/page/pdf.ts';
import { bare } from '../../../shared/stock/printed.ts';

async function pagesOf(pages: readonly MadePage[]): Promise<PageItems[]> {
	const file = await getDocument({ data: await madePdf(pages), verbosity: VerbosityLevel.ERRORS }).promise;
	const found: PageItems[] = [];
	for (let n = 1; n <= file.numPages; n++) found.push(await pageItems(await file.getPage(n)));
	await file.loadingTask.destroy();
	return found;
}

/** What is read of a whole page. */
const readOf = (page: PageItems | undefined) => {
	const { text, doubts } = readPage(page?.items ?? []);
	const chart = readChart(text);
	return { text, modes: bare(chart.modes), doubts: [...doubts, ...chart.marks].map(({ code }) => code) };
};

const hex: Layout['range'] = (from, to) => `0x${from.toString(16)}-0x${to.toString(16)}`;
const LAYOUTS: readonly (readonly [string, MadePage, readonly string[]])[] = [
	['ruled', { items: laidOut(SAMPLE, PLAIN), isRuled: true }, []],
	['with no rules', { items: laidOut(SAMPLE, PLAIN) }, []],
	['with cells that wrap', { items: laidOut(SAMPLE, { ...PLAIN, wrapAt: 20 }) }, []],
	[
		'with numbers at the middle',
		{ items: laidOut(SAMPLE, { ...PLAIN, wrapAt: 20, middleLabels: true, middleValues: true }) },
		[],
	],
	['a run a word', { items: laidOut(SAMPLE, { ...PLAIN, byWord: true }) }, []],
	['ranges by to', { items: laidOut(SAMPLE, { ...PLAIN, range: (from, to) => `${from} to ${to}` }) }, []],
	['ranges by a dash', { items: laidOut(SAMPLE, { ...PLAIN, range: (from, to) => `${from} – ${to}` }) }, []],
	['ranges by stops', { items: laidOut(SAMPLE, { ...PLAIN, range: (from, to) => `${from}..${to}` }) }, []],
	['hexadecimal', { items: laidOut(SAMPLE, { ...PLAIN, range: hex }) }, Array.from({ length: 7 }, () => 'hexadecimal')],
	['turned by a viewer, one quarter', { items: laidOut(SAMPLE, PLAIN), quarters: 1 }, []],
	['turned by a viewer, two quarters', { items: laidOut(SAMPLE, PLAIN), quarters: 2 }, []],
	['turned by a viewer, three quarters', { items: laidOut(SAMPLE, PLAIN), quarters: 3 }, []],
	[
		'sideways on an upright page',
		{ items: laidOut(SAMPLE, PLAIN).map((item) => ({ ...item, x: item.y, y: 700 - item.x, turn: 270 })) },
		[],
	],
];

describe('a PDF file is read as it was set', () => {
	test.each(LAYOUTS)('%s', async (_, page, doubts) => {
		const [found] = await pagesOf([page]);
		const { text, ...read } = readOf(found);
		expect(read, text).toEqual({ modes: bare([SAMPLE]), doubts });
	});
	test('in percent: marked, and no more than an edge off', async () => {
		const range: Layout['range'] = (from, to) => `${Math.ceil(from / 2.55)}-${Math.floor(to / 2.55)}%`;
		const [found] = await pagesOf([{ items: laidOut(SAMPLE, { ...PLAIN, range }) }]);
		const { doubts, modes } = readOf(found);
		expect(doubts.filter((code) => code === 'percent')).toHaveLength(7);
		expect(modes[0]?.slots.map(({ name }) => name)).toEqual(SAMPLE.slots.map(({ name }) => name));
	});
	test('two tables side by side, one of them marked', async () => {
		const narrow = { ...PLAIN, h: 6, gutter: 8, wrapAt: 20 };
		const items = [...laidOut(SAMPLE, narrow, 30), ...laidOut({ ...SAMPLE, name: '5 channel mode B' }, narrow, 310)];
		const [found] = await pagesOf([{ items }]);
		expect(readPage(found?.items ?? []).doubts.map(({ code }) => code)).toContain('beside');
		const left = itemsIn(found as PageItems, { left: 0, top: 0, right: 0.5, bottom: 1 });
		expect(bare(readChart(readPage(left).text).modes)).toEqual(bare([SAMPLE]));
	});
	test('a scan is known for one', async () => {
		const [found] = await pagesOf([{ items: [], isScan: true }]);
		expect(textState(found?.items ?? [])).toBe('none');
	});
	test('letters in a code of their own are known for that', () => {
		const item = { str: '\uE001\uE002\uE003 1', x: 0, y: 0, w: 10, h: 9, turn: 0 };
		expect(textState([item])).toBe('garbled');
		expect(textState([{ ...item, str: 'Dimmer \uE001 0-255 dark to full' }])).toBe('text');
	});
	test('one that is locked says so', async () => {
		await expect(
			getDocument({ data: await lockedPdf(), verbosity: VerbosityLevel.ERRORS }).promise,
		).rejects.toMatchObject({ name: 'PasswordException' });
	});
});

describe('the box that marks a part of a page', () => {
	const part = fc.double({ min: -0.5, max: 1.5, noNaN: true });
	const point = fc.record({ x: part, y: part });
	const isBox = ({ left, top, right, bottom }: Box): boolean =>
		left >= 0 && top >= 0 && right <= 1 + 1e-9 && bottom <= 1 + 1e-9 && right - left > 0.019 && bottom - top > 0.019;
	test('stays on the page and stays a box, whatever keys are pressed', () => {
		const keys = fc.array(fc.tuple(fc.constantFrom('ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'), fc.boolean()), {
			maxLength: 120,
		});
		fc.assert(
			fc.property(point, point, keys, (one, other, pressed) => {
				let box = boxBetween(one, other);
				expect(isBox(box)).toBe(true);
				for (const [key, hasShift] of pressed) {
					const { right, left } = box;
					box = afterKey(box, key, hasShift) as Box;
					expect(isBox(box), JSON.stringify(box)).toBe(true);
					if (!hasShift) expect(box.right - box.left).toBeCloseTo(right - left);
				}
			}),
			{ numRuns: runs(200) },
		);
	});
	test('leaves other keys alone', () => expect(afterKey(WHOLE, 'Tab', false)).toBeNull());
});

// symptom: a file that stays in a cloud was told as a damaged PDF, to be downloaded again. cause: any failure was taken for one of the PDF
test('a file that the device doesn’t hand over is told as that, not as damaged', async () => {
	const cloud = Object.assign(new Blob(['%PDF-1.7']), { arrayBuffer: () => Promise.reject(new Error('not read')) });
	await expect(bytesOf(cloud)).rejects.toMatchObject({ code: 'unreadable' });
	expect(await bytesOf(new Blob(['%PDF']))).toEqual(new TextEncoder().encode('%PDF'));
});

describe('the bounds on a file', () => {
	afterEach(() => {
		vi.unstubAllGlobals();
		vi.useRealTimers();
	});
	/** Workers that never answer. */
	function silent() {
		const made: { isEnded: boolean }[] = [];
		vi.stubGlobal(
			'Worker',
			class extends EventTarget {
				isEnded = false;
				constructor() {
					super();
					made.push(this);
				}
				postMessage() {}
				terminate() {
					this.isEnded = true;
				}
			},
		);
		return made;
	}
	test('64 MB are opened, and a byte more is not: it is neither read nor handed to a worker', async () => {
		const made = silent();
		expect(MOST_BYTES).toBe(64 * 1024 * 1024);
		const sized = (size: number) => ({ size, arrayBuffer: vi.fn(() => Promise.resolve(new ArrayBuffer(4))) });
		expect((await bytesOf(sized(MOST_BYTES) as unknown as Blob)).length).toBe(4);
		const over = sized(MOST_BYTES + 1);
		await expect(bytesOf(over as unknown as Blob)).rejects.toMatchObject({ code: 'too-large' });
		expect(over.arrayBuffer).not.toHaveBeenCalled();
		const bytes = new Uint8Array(MOST_BYTES + 1);
		bytes.set(new TextEncoder().encode('%PDF-1.7'));
		await expect(openManual(bytes, new AbortController().signal)).rejects.toMatchObject({ code: 'too-large' });
		expect(made).toEqual([]);
	});
	test('what does not answer within 30 seconds is given up, and its worker ended', async () => {
		vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
		const made = silent();
		let end: unknown = null;
		openManual(new TextEncoder().encode('%PDF-1.7'), new AbortController().signal).catch((error: unknown) => {
			end = error;
		});
		await vi.advanceTimersByTimeAsync(29_999);
		expect([end, made.map(({ isEnded }) => isEnded)]).toEqual([null, [false]]);
		await vi.advanceTimersByTimeAsync(1);
		expect(end).toMatchObject({ code: 'slow' });
		expect(made.map(({ isEnded }) => isEnded)).toEqual([true]);
	});
});
