import { type Builder, bareWords } from './builder.ts';
import type { Row } from './rows.ts';
import type { Place } from './types.ts';
import { bareHexIn, type Habit, type Span, spansIn } from './values.ts';

/** A piece of a row to be read as a name and bands, or as bands alone. */
export interface Piece {
	readonly text: string;
	readonly line: number;
	/** Column of its first sign, from 1. */
	readonly column: number;
}

/** A row as one piece of running text, without the blanks and frame around it. */
export function pieceOf({ text, line }: Row): Piece {
	const start = text.length - text.replace(/^[\s|•]+/, '').length;
	return { text: text.slice(start).trimEnd(), line, column: start + 1 };
}

/** What a piece holds: words before the first band, and bands with the words behind each. */
export interface PieceRead {
	readonly head: string;
	readonly bands: readonly {
		readonly span: Span;
		readonly words: string;
		readonly place: Place;
		readonly text: string;
	}[];
}

const placeOf = ({ line, column }: Piece, start: number, end: number): Place => ({
	line,
	column: column + start,
	length: Math.max(1, end - start),
});

/**
 * Reads a piece of running text: which of its numbers are bands and which belong to the words. A range is a band where the bands go
 * on from it (from 0, or from behind the last one), or where a wide gap or a stroke stands before it; what is neither is kept in the
 * words and marked.
 * @param expected the value at which the next band should begin: 0 at the head of a slot
 */
export function readPiece(piece: Piece, habit: Habit, builder: Builder, expected: number): PieceRead {
	const { text } = piece;
	const spans = spansIn(text, habit);
	if (!habit.isHex)
		for (const { start, end } of bareHexIn(text))
			builder.mark('mixed-numbers', placeOf(piece, start, end), { text: text.slice(start, end) });
	const taken: Span[] = [];
	const inWords: Span[] = [];
	let next = expected;
	for (const [i, span] of spans.entries()) {
		const { isBand, isDoubtful } = judge(text, spans, i, taken, next);
		if (isBand) {
			taken.push(span);
			next = span.to + 1;
		} else if (isDoubtful) inWords.push(span);
	}
	const last = taken.at(-1);
	for (const span of inWords)
		if (last && taken[0] && span.start > taken[0].start)
			builder.mark('numbers-in-words', placeOf(piece, span.start, span.end), {
				text: text.slice(span.start, span.end),
			});
	const bands = taken.map((span, i) => {
		const end = taken[i + 1]?.start ?? text.length;
		return {
			span,
			words: bareWords(text.slice(span.end, end)),
			place: placeOf(piece, span.start, span.end),
			text: text.slice(span.start, span.end),
		};
	});
	const isWordsFirst = bands.length > 1 && bands.at(-1)?.words === '' && bands.some(({ words }) => words !== '');
	if (isWordsFirst) builder.mark('words-order', placeOf(piece, 0, text.length), { text: text.trim() });
	return { head: bareWords(taken[0] ? text.slice(0, taken[0].start) : text), bands };
}

function judge(
	text: string,
	spans: readonly Span[],
	i: number,
	taken: readonly Span[],
	next: number,
): { isBand: boolean; isDoubtful: boolean } {
	const span = spans[i] as Span;
	const no = { isBand: false, isDoubtful: false };
	const yes = { isBand: true, isDoubtful: false };
	const before = text.slice(0, span.start);
	const follows = bareWords(text.slice(span.end, spans[i + 1]?.start ?? text.length)) !== '';
	const isApart = before.trim() === '' || /(?:\s{2,}|\t|[;,|/([])\s*$/.test(before);
	if (span.hasUnit) return { isBand: false, isDoubtful: !span.single && span.from === next && taken.length > 0 };
	if (span.single) {
		// a number by itself: only where the bands go on from it, and no range does
		const later = spans.slice(i + 1).find((each) => !each.single && !each.hasUnit);
		const isNext = span.from === next && later?.from !== span.from && follows && next <= 255;
		if (taken.length === 0) {
			const goesOn = spans[i + 1]?.from === span.to + 1;
			return before.trim() === '' || (isNext && goesOn) ? yes : no;
		}
		return isNext && (!span.isCount || isApart) ? yes : no;
	}
	const one = taken[0];
	if (one && one.unit !== span.unit) {
		// the same band in another notation, or part of a sentence
		return { isBand: false, isDoubtful: span.unit !== 'percent' };
	}
	if (span.from === next) return yes;
	if (taken.length === 0) {
		const hasStart = spans.slice(i + 1).some((each) => !each.single && !each.hasUnit && each.from === next);
		if (hasStart && !isApart) return no;
		if (before.trim() === '') return yes;
		if (hasStart || span.isCount) return { isBand: false, isDoubtful: false };
		return follows || span.from === 0 || isApart ? yes : no;
	}
	if (span.isCount && !isApart) return { isBand: false, isDoubtful: true };
	const last = taken.at(-1) as Span;
	// many manuals let a band begin on the value that the last one ends on: read so, and marked as an overlap
	if (span.from > last.to || (span.from === last.to && span.to > last.to)) return yes;
	return isApart ? yes : { isBand: false, isDoubtful: true };
}
