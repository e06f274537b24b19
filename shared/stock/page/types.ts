import type { Place } from '../types.ts';

/** A run of text on a page, as a reader of the file has it. Lengths are in one unit, such as points; y counts down from the top. */
export interface TextItem {
	readonly str: string;
	/** Where its baseline begins. */
	readonly x: number;
	readonly y: number;
	/** How far it runs along its baseline. */
	readonly w: number;
	/** Size of its letters. */
	readonly h: number;
	/** Degrees from left-to-right to the way it runs, clockwise. */
	readonly turn: number;
}

/** What may have been read wrong in the way a page is laid out, with what its sentence is told. */
export interface PageDoubtFacts {
	/** Text that runs another way than the rest; it was left out. */
	turned: { text: string };
	/** Small raised signs behind a number or word; they were left out. */
	small: { text: string };
	/** Two tables side by side: the right one stands after the left one, and begins here. */
	beside: Record<never, never>;
	/** It is not clear which channel these values belong to. */
	'not-level': Record<never, never>;
	/** A line that may belong to the row above it or the one below it. */
	'which-row': { text: string };
	/** A word that was cut at the end of a line, and put together. */
	'cut-word': { text: string };
	/** More text than is read. */
	'too-much': { most: number };
}

export type PageDoubtCode = keyof PageDoubtFacts;

/** A place in what was read that a person should hold against the page. */
export type PageDoubt = {
	readonly [Code in PageDoubtCode]: {
		readonly code: Code;
		readonly place: Place;
		readonly facts: Readonly<PageDoubtFacts[Code]>;
	};
}[PageDoubtCode];

/** A part of a page as text for `readChart`: rows a line, cells with tabs between. */
export interface PageText {
	readonly text: string;
	/** By place, the first in the text first. */
	readonly doubts: readonly PageDoubt[];
}

/** Runs of text of one part of a page that are read; the densest pages have some three thousand. */
export const MOST_ITEMS = 20_000;

/** A doubt before its place is known: the line it comes with is written later. */
export type Doubt = {
	readonly [Code in PageDoubtCode]: { readonly code: Code; readonly facts: Readonly<PageDoubtFacts[Code]> };
}[PageDoubtCode];

/** A piece of a line: text with no wide gap in it, from `x` to `end`. */
export interface Piece {
	readonly text: string;
	readonly x: number;
	readonly end: number;
	/** Its own baseline: that of its line is the highest on it. */
	readonly y: number;
	/** The runs it was put together from. */
	readonly parts: readonly Omit<Piece, 'parts'>[];
}

/** What stands on one baseline, from left to right. */
export interface Line {
	readonly y: number;
	readonly pieces: readonly Piece[];
	readonly doubts: readonly Doubt[];
}
