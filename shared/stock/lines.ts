import { type Builder, bareWords, type SlotHead } from './builder.ts';
import { type Piece, pieceOf, readPiece } from './row-text.ts';
import type { Row } from './rows.ts';
import type { Beside } from './table.ts';
import type { Place } from './types.ts';
import { type Habit, type Span, spansIn } from './values.ts';

/** `CH 5`, `Channel 5:`, `#5`, `5.`, `5/6`, `5+6`: a slot's number, its fine half, and how much of the text that is. */
const MARKED =
	/^(?:(?:dmx[ -]?)?(?:ch(?:an(?:nel)?)?|slot)s?\.?[ \t]*[#:]?[ \t]*|#[ \t]*)(\d{1,3})(?:[ \t]*([/+&,–-])[ \t]*(?:ch\.?[ \t]*)?(\d{1,3}))?(?!\w|\.\d|[ \t]*%)/i;
const BARE = /^(\d{1,3})(?:[ \t]*([/+&])[ \t]*(\d{1,3}))?(?!\w|\.\d|[ \t]*%)/;
/** In a channel's name: a value that was not read as one, or a letter where a digit should be. */
const ODD_NUMBER = /\d{3}|\d\s*%|(?:^|\s)[OoIl\d]+\s*[-–.~]+\s*[OoIl\d]*\d/;

/** Reads running text, line by line. */
export class LineReader {
	private readonly builder: Builder;
	private readonly habit: Habit;

	constructor(builder: Builder, habit: Habit) {
		this.builder = builder;
		this.habit = habit;
	}

	/** Reads a line by itself: a slot, bands, or words. */
	line(piece: Piece, row: Row): void {
		const { builder } = this;
		const place = { line: piece.line, column: piece.column, length: piece.text.length };
		const indent = piece.column - 1;
		const start = this.slotAt(piece, indent, row);
		if (start === 'unread') return;
		if (start) {
			const rest = { ...piece, text: piece.text.slice(start.length), column: piece.column + start.length };
			const [only] = readSkipped(rest);
			const found = readPiece(only, this.habit, builder, 0);
			if (ODD_NUMBER.test(found.head)) builder.mark('numbers-in-words', place, { text: found.head });
			const { length: _, ...numbers } = start;
			builder.slots(
				[{ mode: builder.mode(place), ...numbers }],
				found.head,
				{ ...place, length: start.length },
				indent,
			);
			for (const { span, words, place: at, text } of found.bands) builder.band(span, words, at, text);
			return;
		}
		const found = readPiece(piece, this.habit, builder, this.builder.expected());
		const [first] = found.bands;
		if (!first) {
			this.words(piece, indent, place);
			return;
		}
		if (found.head === '') {
			for (const { span, words, place: at, text } of found.bands) builder.band(span, words, at, text);
			return;
		}
		// words, then a range, and nothing behind it: the words are the range's
		if (found.bands.length === 1 && first.words === '') builder.band(first.span, found.head, first.place, first.text);
		else builder.mark('not-read', place, { text: piece.text });
	}

	/** A line of words: what the line before it began, where it is set in or that has no words yet. */
	private words(piece: Piece, indent: number, place: Place): void {
		const slot = this.builder.current[0];
		const isNote = /^(?:\*|note\b|page\b)/i.test(piece.text);
		const band = slot?.bands.at(-1);
		// beside the margin only where a range stands on a line by itself, with its words below
		const isBelow = band?.words === '' && band.place.line !== slot?.place.line;
		const isMore = slot && !isNote && (indent > slot.indent || isBelow);
		if (isMore) this.builder.more(bareWords(piece.text));
		else this.builder.mark('not-read', place, { text: piece.text });
	}

	/** The slot that a line begins; null where it begins none. */
	private slotAt(
		piece: Piece,
		indent: number,
		row: Row,
	): { at: number; fine?: number; length: number } | 'unread' | null {
		const { text } = piece;
		const place = { line: piece.line, column: piece.column, length: text.length };
		const marked = MARKED.exec(text);
		if (marked) {
			const numbers = this.builder.pair(
				Number(marked[1]),
				marked[3] === undefined ? undefined : Number(marked[3]),
				place,
				marked[0],
			);
			return { ...numbers, length: marked[0].length };
		}
		const mode = this.builder.modes.at(-1);
		const next = Math.max(0, ...(mode?.slots ?? []).map(({ at, fine = 0 }) => Math.max(at, fine))) + 1;
		const slot = this.builder.current[0];
		const [range] = spansIn(text, this.habit);
		if (range && !range.single && range.start === 0) {
			const isSeveral =
				range.from === next && range.to > range.from && slot?.bands.length === 0 && indent <= slot.indent;
			if (isSeveral && range.to !== next + 1) {
				this.builder.mark('several-slots', { ...place, length: range.end }, { text: text.slice(0, range.end) });
				this.builder.current = [];
				return 'unread';
			}
			return this.slotPair(text, range, next, place);
		}
		const bare = BARE.exec(text);
		if (!bare) return null;
		const at = Number(bare[1]);
		const length = bare[0].length;
		const fine = bare[3] === undefined ? {} : { fine: Number(bare[3]) };
		if (bare[3] !== undefined) return { ...this.builder.pair(at, fine.fine, place, bare[0]), length };
		const isNextSlot = at === next;
		if (!slot) return { at, length };
		const isNextValue = at === this.builder.expected() && at <= 255;
		const isDeeper = indent > slot.indent;
		if (isNextSlot && isNextValue) {
			// set in further than a channel's own line, it is a value
			if (!isDeeper || row.isTable) this.builder.mark('slot-or-value', { ...place, length }, { number: at });
			return null;
		}
		if (isNextValue) return null;
		if (isNextSlot) return isDeeper && slot.bands.length > 0 && this.builder.expected() <= 255 ? null : { at, length };
		return isDeeper ? null : { at, length };
	}

	/** `1-2 Dimmer`: two halves of one slot, where no band can begin there and the numbers go on from the last slot. */
	private slotPair(
		text: string,
		range: Span,
		next: number,
		place: Place,
	): { at: number; fine: number; length: number } | null {
		const isPair = range.from === next && range.to === next + 1 && range.unit === 'decimal';
		const rest = text.slice(range.end);
		const isValue = this.builder.current.length > 0 && range.from === this.builder.expected();
		if (!isPair || isValue || !/^\s*\p{L}/u.test(rest)) return null;
		if (!/fine|16|coarse|0\s*-\s*(?:255|65535)/i.test(rest))
			this.builder.mark('several-slots', place, { text: text.slice(0, range.end) });
		return { at: range.from, fine: range.to, length: range.end };
	}

	/** A line of a text table with modes side by side: numbers under their headings, then the rest. */
	besideLine(row: Row, beside: readonly Beside[]): void {
		const heads: SlotHead[] = [];
		const most = Math.max(...beside.map(({ column }) => column)) + 4;
		let end = 0;
		for (const match of row.text.matchAll(/\S+/g)) {
			if (match.index + 1 > most || !/^(?:\d{1,3}|[-–—/xX.]{1,3})$/.test(match[0])) break;
			const near = beside.toSorted(
				(a, b) => Math.abs(a.column - match.index - 1) - Math.abs(b.column - match.index - 1),
			)[0];
			end = match.index + match[0].length;
			if (near && /\d/.test(match[0])) heads.push({ mode: near.mode, at: Number(match[0]) });
		}
		const isTwice = new Set(heads.map(({ mode }) => mode)).size < heads.length;
		if (heads.length === 0 || isTwice) {
			if (isTwice)
				this.builder.mark(
					'several-slots',
					{ line: row.line, column: 1, length: end },
					{ text: row.text.slice(0, end).trim() },
				);
			else this.line(pieceOf(row), row);
			return;
		}
		const rest = { line: row.line, column: end + 1, text: row.text.slice(end) };
		const found = readPiece(rest, this.habit, this.builder, 0);
		this.builder.slots(heads, found.head, { line: row.line, column: 1, length: end }, 0);
		for (const { span, words, place, text } of found.bands) this.builder.band(span, words, place, text);
	}
}

/** What follows a slot's number, without the stop or dash between. */
function readSkipped(piece: Piece): [Piece] {
	const skip = /^[\s.:)|–—-]+/.exec(piece.text)?.[0].length ?? 0;
	return [{ ...piece, text: piece.text.slice(skip), column: piece.column + skip }];
}
