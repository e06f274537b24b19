import { type Doubt, type Line, MOST_ITEMS, type Piece, type TextItem } from './types.ts';

/**
 * In letter sizes. A run stands on a line where its baseline is no further from that of the run above it: what is askew stays together,
 * and a number at the middle of two lines, which is some 0.55 off either, stands by itself.
 */
const ONE_LINE = 0.2;
/** A gap up to here is none: letters set apart. */
const NO_GAP = 0.15;
/** From here on a gap is more than a space between words, which is 0.25 to 0.33 in most faces. */
export const WIDE = 0.45;
/** Raised signs of notes are set at 0.5 to 0.7 of the letters beside them. */
const SMALL = 0.75;

const LIGATURES: Readonly<Record<string, string>> = {
	'\uFB00': 'ff',
	'\uFB01': 'fi',
	'\uFB02': 'fl',
	'\uFB03': 'ffi',
	'\uFB04': 'ffl',
	'\uFB05': 'st',
	'\uFB06': 'st',
};

/** Letters and spaces as they are typed. What else a sign may stand for is left to whoever reads numbers: raised ones are not digits. */
const plain = (text: string): string =>
	text
		.replaceAll(/[\uFB00-\uFB06]/g, (sign) => LIGATURES[sign] ?? sign)
		.replaceAll(/[\t\n\r\f\v\u00A0\u2000-\u200A\u2028\u2029\u202F\u3000]/g, ' ')
		.replaceAll(/\p{Cc}|[\u200B-\u200F\uFEFF]/gu, '');

/** The middle of some sizes, each counted as often as it has letters. */
function usualHeight(items: readonly TextItem[]): number {
	const sizes = items.filter(({ h }) => h > 0).toSorted((a, b) => a.h - b.h);
	const half = sizes.reduce((sum, { str }) => sum + str.length, 0) / 2;
	let sum = 0;
	for (const { h, str } of sizes) {
		sum += str.length;
		if (sum >= half) return h;
	}
	return 1;
}

/** A quarter turn or none, for a run that is a little askew. */
const quarter = (turn: number): number => (((Math.round(turn / 90) * 90) % 360) + 360) % 360;

/** A run as it lies once the page is turned so that it runs from left to right. */
function upright(item: TextItem, turn: number): TextItem {
	const [cos, sin] = [Math.round(Math.cos((turn * Math.PI) / 180)), Math.round(Math.sin((turn * Math.PI) / 180))];
	return { ...item, x: item.x * cos + item.y * sin, y: item.y * cos - item.x * sin, turn: 0 };
}

/** A run cut where two spaces or more stand, which set columns apart in some manuals; letters are taken to be equally wide. */
function cutAtSpaces(item: TextItem): TextItem[] {
	const each = item.w / Math.max(1, item.str.length);
	return [...item.str.matchAll(/\S+(?: \S+)*/g)].map((match) => ({
		...item,
		str: match[0],
		x: item.x + each * match.index,
		w: each * match[0].length,
	}));
}

/** The lines of a part of a page, from the top; and what of it is in doubt before any line is. */
export function pageLines(all: readonly TextItem[]): {
	readonly lines: Line[];
	readonly doubts: Doubt[];
	readonly h: number;
} {
	const doubts: Doubt[] = [];
	if (all.length > MOST_ITEMS) doubts.push({ code: 'too-much', facts: { most: MOST_ITEMS } });
	const items = all
		.slice(0, MOST_ITEMS)
		.filter((item) => [item.x, item.y, item.w, item.h, item.turn].every(Number.isFinite))
		.map((item) => ({ ...item, str: plain(item.str), turn: quarter(item.turn) }))
		.filter(({ str }) => str.trim() !== '');
	const letters = new Map<number, number>();
	for (const { turn, str } of items) letters.set(turn, (letters.get(turn) ?? 0) + str.trim().length);
	const [turn = 0] = [...letters].toSorted((a, b) => b[1] - a[1])[0] ?? [];
	const left = items.filter((item) => item.turn !== turn).map(({ str }) => str.trim());
	if (left.length > 0) doubts.push({ code: 'turned', facts: { text: left.join(' ').slice(0, 60) } });
	const here = items.filter((item) => item.turn === turn).map((item) => upright(item, turn));
	const h = usualHeight(here);
	return { lines: onLines(here.flatMap(cutAtSpaces), h), doubts, h };
}

interface Growing {
	y: number;
	readonly items: TextItem[];
}

function onLines(items: readonly TextItem[], h: number): Line[] {
	const isSmall = (item: TextItem): boolean => item.h < SMALL * h && /^[\d*†‡,()¹²³]{1,4}$/.test(item.str);
	const lines: Growing[] = [];
	for (const item of items.filter((each) => !isSmall(each)).toSorted((a, b) => a.y - b.y)) {
		const last = lines.at(-1);
		const above = last?.items.at(-1);
		if (last && above && item.y - above.y <= ONE_LINE * h) last.items.push(item);
		else lines.push({ y: item.y, items: [item] });
	}
	const notes = new Map<Growing, string[]>();
	for (const note of items.filter(isSmall)) {
		// right behind what it is a note to, and raised; else it is text like any other, only small
		const owner = lines.find(
			({ y, items: there }) =>
				note.y <= y - 0.15 * h &&
				note.y >= y - 0.9 * h &&
				there.some(({ x, w }) => note.x - (x + w) > -WIDE * h && note.x - (x + w) < WIDE * h),
		);
		if (owner) notes.set(owner, [...(notes.get(owner) ?? []), note.str]);
		else putOn(lines, note, h);
	}
	return lines
		.toSorted((a, b) => a.y - b.y)
		.map((line) => {
			const doubts: Doubt[] = (notes.get(line) ?? []).map((text) => ({ code: 'small', facts: { text } }));
			return { y: line.y, pieces: piecesOf(line.items, h, doubts), doubts };
		});
}

function putOn(lines: Growing[], item: TextItem, h: number): void {
	const line = lines.find(({ y }) => Math.abs(item.y - y) <= ONE_LINE * h);
	if (line) line.items.push(item);
	else lines.push({ y: item.y, items: [item] });
}

/** Runs beside one another put together, as far as no wide gap stands between them; one that stands on another is in doubt. */
function piecesOf(items: readonly TextItem[], h: number, doubts: Doubt[]): Piece[] {
	const pieces: { text: string; x: number; end: number; y: number; parts: Omit<Piece, 'parts'>[] }[] = [];
	let before: TextItem | null = null;
	for (const item of items.toSorted((a, b) => a.x - b.x)) {
		const { str, x, y, w } = item;
		// printed twice, a hair apart, to look bold
		if (before && before.str === str && x - before.x < NO_GAP * h) continue;
		before = item;
		const last = pieces.at(-1);
		const gap = last ? x - last.end : Number.POSITIVE_INFINITY;
		if (last && gap < WIDE * h) {
			const isOn = gap < -WIDE * h;
			if (isOn) doubts.push({ code: 'which-row', facts: { text: str } });
			last.text += isOn || gap > NO_GAP * h ? ` ${str}` : str;
			last.end = Math.max(last.end, x + w);
			last.parts.push({ text: str, x, end: x + w, y });
		} else pieces.push({ text: str, x, end: x + w, y, parts: [{ text: str, x, end: x + w, y }] });
	}
	return pieces;
}
