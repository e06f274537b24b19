import type { PDFPageProxy } from 'pdfjs-dist';
import type { TextItem } from '../../../../shared/stock/index.ts';
import type { Box } from './box.ts';

/** A page's text as it is shown: places in points from its top left, whatever way it is turned. */
export interface PageItems {
	readonly width: number;
	readonly height: number;
	readonly items: readonly TextItem[];
}

type Matrix = readonly number[];

/** One transformation after another (ISO 32000-1, 8.3.4). */
const after = (
	[a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]: Matrix,
	[p = 1, q = 0, r = 0, s = 1, t = 0, u = 0]: Matrix,
) => [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f] as const;

/** The runs of text of a page. @throws what the library throws of a page that it cannot read */
export async function pageItems(page: PDFPageProxy): Promise<PageItems> {
	const view = page.getViewport({ scale: 1 });
	const { items } = await page.getTextContent();
	const placed = items.flatMap((item): TextItem[] => {
		if (!('str' in item)) return [];
		const [a, b, c, d, x, y] = after(view.transform, item.transform as Matrix);
		const turn = (Math.atan2(b, a) * 180) / Math.PI;
		return [{ str: item.str, x, y, w: item.width, h: Math.hypot(c, d), turn }];
	});
	return { width: view.width, height: view.height, items: placed };
}

/** Runs whose middle is in a box. */
export function itemsIn({ width, height, items }: PageItems, box: Box): TextItem[] {
	return items.filter(({ x, y, w, h, turn }) => {
		const way = (turn * Math.PI) / 180;
		// half along the baseline, and a third of a letter up from it
		const middleX = (x + (w / 2) * Math.cos(way) + (h / 3) * Math.sin(way)) / width;
		const middleY = (y + (w / 2) * Math.sin(way) - (h / 3) * Math.cos(way)) / height;
		return middleX >= box.left && middleX <= box.right && middleY >= box.top && middleY <= box.bottom;
	});
}

/** Of a text's letters so many are none that anybody knows, or it is taken to be in a code of its own. */
const MOST_UNKNOWN = 0.1;

/** Whether the text of a page is more than a picture, and in letters: some files have letters only to look at. */
export function textState(items: readonly TextItem[]): 'text' | 'none' | 'garbled' {
	const text = items.map(({ str }) => str.trim()).join('');
	if (text === '') return 'none';
	const unknown = text.match(/[\p{Cc}\p{Co}\uFFFD]/gu)?.length ?? 0;
	return unknown > MOST_UNKNOWN * text.length ? 'garbled' : 'text';
}
