import type { PrintedMode, TextItem } from '../../../../shared/stock/index.ts';

/** How a chart is set on a page. Lengths are in points. */
export interface Layout {
	readonly h: number;
	/** From a line to the next of one cell, and from there to the next row, in letter sizes. */
	readonly lineGap: number;
	readonly rowGap: number;
	/** Between columns, at the least. */
	readonly gutter: number;
	/** Letters to a line of the last column, before it wraps; names wrap at half of that. */
	readonly wrapAt: number;
	/** Whether channel numbers and names stand at the middle of their rows, and values at the middle of their lines. */
	readonly middleLabels: boolean;
	readonly middleValues: boolean;
	readonly heads: readonly string[] | null;
	/** A run a word, as some writers of PDF files have it. */
	readonly byWord: boolean;
	/** How a range is written. */
	readonly range: (from: number, to: number) => string;
	/** How far each run is off its place, from -1 to 1; asked run by run. */
	readonly jitter: () => number;
}

export const PLAIN: Layout = {
	h: 9,
	lineGap: 1.2,
	rowGap: 1.6,
	gutter: 9,
	wrapAt: 200,
	middleLabels: false,
	middleValues: false,
	heads: ['Channel', 'Function', 'Value', 'Description'],
	byWord: false,
	range: (from, to) => `${from}-${to}`,
	jitter: () => 0,
};

/** How wide a text is in a face like those of manuals, as parts of its size. */
export const widthOf = (text: string, h: number): number =>
	[...text].reduce(
		(sum, sign) => sum + (/[ilj.,:;'|!]/.test(sign) ? 0.25 : /[mwMW]/.test(sign) ? 0.8 : sign === ' ' ? 0.28 : 0.53),
		0,
	) * h;

/** A text on lines of so many letters at most, cut between words. */
function wrapped(text: string, most: number): string[] {
	const lines: string[] = [];
	for (const word of text.split(' ')) {
		const last = lines.at(-1);
		if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
		else lines.push(word);
	}
	return lines;
}

/** Runs of text of a page with this chart, as a reader of PDF files has them, and where it ends. */
export function laidOut(mode: PrintedMode, layout: Layout, left = 40, top = 60): TextItem[] {
	const { h, lineGap, rowGap, gutter, wrapAt, heads, range } = layout;
	const cells = mode.slots.map((slot) => ({
		number: slot.fine === undefined ? `${slot.at}` : `${slot.at}/${slot.fine}`,
		name: wrapped(slot.name, Math.max(8, Math.floor(wrapAt / 2))),
		bands: (slot.bands.length > 0 ? slot.bands : [{ from: 0, to: 255, words: '' }]).map((band) => ({
			value: range(band.from, band.to),
			words: band.words === '' ? [] : wrapped(band.words, wrapAt),
		})),
	}));
	const widest = (texts: readonly string[]): number => Math.max(...texts.map((text) => widthOf(text, h)));
	const widths = [
		widest([heads?.[0] ?? '', ...cells.map(({ number }) => number)]),
		widest([heads?.[1] ?? '', ...cells.flatMap(({ name }) => name)]),
		widest([heads?.[2] ?? '', ...cells.flatMap(({ bands }) => bands.map(({ value }) => value))]),
	];
	const xs = [left];
	for (const width of widths) xs.push((xs.at(-1) ?? 0) + width + gutter);
	const items: TextItem[] = [];
	const put = (text: string, column: number, y: number): void => {
		let x = xs[column] ?? left;
		for (const str of layout.byWord ? text.split(' ') : [text]) {
			const w = widthOf(str, h);
			items.push({ str, x: x + 0.05 * h * layout.jitter(), y: y + 0.05 * h * layout.jitter(), w, h, turn: 0 });
			x += w + 0.28 * h;
		}
	};
	let y = top;
	if (mode.name !== '') {
		items.push({ str: mode.name, x: left, y, w: widthOf(mode.name, h * 1.2), h: h * 1.2, turn: 0 });
		y += 2 * h;
	}
	if (heads) {
		for (const [i, head] of heads.entries()) put(head, i, y);
		y += rowGap * h;
	}
	const column = (texts: readonly string[], at: number, from: number, to: number, isMiddle: boolean): void => {
		const start = isMiddle ? (from + to) / 2 - ((texts.length - 1) * lineGap * h) / 2 : from;
		for (const [i, text] of texts.entries()) put(text, at, start + i * lineGap * h);
	};
	for (const { number, name, bands } of cells) {
		// a row is as high as its highest cell
		const high = bands.reduce(
			(sum, { words }, i) => sum + Math.max(0, words.length - 1) * lineGap + (i > 0 ? rowGap : 0),
			0,
		);
		if (layout.middleLabels) y += (Math.max(0, (name.length - 1) * lineGap - high) / 2) * h;
		const from = y;
		let to = y;
		for (const { value, words } of bands) {
			const last = y + Math.max(0, words.length - 1) * lineGap * h;
			column([value], 2, y, last, layout.middleValues);
			column(words, 3, y, last, false);
			to = last;
			y = last + rowGap * h;
		}
		const nameEnd = from + (name.length - 1) * lineGap * h;
		column([number], 0, from, layout.middleLabels ? to : from, layout.middleLabels);
		column(name, 1, from, layout.middleLabels ? to : from, layout.middleLabels);
		const below = layout.middleLabels ? (from + to + nameEnd - from) / 2 : nameEnd;
		y = Math.max(y, below + rowGap * h);
	}
	return items;
}

/** The runs as they lie on a page turned by so many quarters, clockwise. */
export const turned = (items: readonly TextItem[], quarters: number): TextItem[] =>
	Array.from({ length: quarters }).reduce<TextItem[]>(
		(all) => all.map((item) => ({ ...item, x: -item.y, y: item.x, turn: (item.turn + 90) % 360 })),
		[...items],
	);
