/** A stretch of a pasted text: line and column from 1, and how many characters. */
export interface Place {
	readonly line: number;
	readonly column: number;
	readonly length: number;
}

/** A band as a manual has it: first and last value, both included, and the words beside them. */
export interface ChartBand {
	readonly from: number;
	readonly to: number;
	readonly words: string;
	readonly place: Place;
}

/** A slot as a manual has it. */
export interface ChartSlot {
	/** Its number in the mode, from 1. */
	readonly at: number;
	/** Where its fine half sits, if it has one. */
	readonly fine?: number;
	readonly name: string;
	/** What is said of all of it, besides its name; empty where nothing is. */
	readonly words: string;
	/** Empty where the manual gives no values: then all of 0 to 255 does one thing. */
	readonly bands: readonly ChartBand[];
	readonly place: Place;
}

export interface ChartMode {
	/** As headed in the text; empty where it has no heading. */
	readonly name: string;
	readonly slots: readonly ChartSlot[];
	readonly place: Place;
}

/** What a mark can say, with what its sentence is told. Words for each are in `content/en/stock`. */
export interface MarkFacts {
	/** Text that was left out. */
	'not-read': { text: string };
	/** Values that come before any channel. */
	'band-before-slot': { text: string };
	/** A number at the head of a line that may be a channel, or a value of the one before. It was read as a value. */
	'slot-or-value': { number: number };
	/** A stretch of numbers that was taken for words. */
	'numbers-in-words': { text: string };
	/** The words seem to stand before their values, so that each may have the other's. */
	'words-order': { text: string };
	/** Hexadecimal and decimal numbers in one text, with nothing to tell them apart. */
	'mixed-numbers': { text: string };
	/** Percent, put into values: an edge may be one off. */
	percent: { text: string; from: number; to: number };
	/** Hexadecimal, put into values. */
	hexadecimal: { text: string; from: number; to: number };
	/** No band covers these values. */
	gap: { slot: number; from: number; to: number };
	overlap: { slot: number; from: number; to: number };
	reversed: { from: number; to: number };
	'past-255': { value: number };
	/** A band that starts lower than the one before it. */
	'out-of-order': { from: number; to: number };
	/** Channel numbers left out, first to last. */
	'slot-missing': { from: number; to: number };
	'slot-twice': { slot: number };
	'slot-past-512': { slot: number };
	/** A fine channel with nothing to be the fine half of. */
	'fine-alone': { slot: number };
	/** One of the two halves of a channel is an earlier number than it should be, or the two have values of their own. */
	'fine-bands': { slot: number };
	/** The heading says one number of channels, the chart has another. */
	'count-differs': { said: number; found: number };
	'name-missing': { slot: number };
	/** Channels that are to come again for each cell, and none of them is in the mode. */
	'cells-none': { from: number; to: number };
	/** A number of cells that no fixture has here. */
	'cells-off': { cells: number; most: number };
	/** The channel's name was taken from its first band. */
	'name-from-band': { slot: number; name: string };
	/** One row for several channels. */
	'several-slots': { text: string };
	/** A cell that holds no channel number, or no value, where one is due. */
	'cell-not-number': { text: string };
	/** The text was read up to here and no further. */
	'too-long': { lines: number };
	'no-slots': Record<never, never>;
	/** A line that came from a manual's page with something in doubt, and that nobody has held against the page. */
	unchecked: Record<never, never>;
}

export type MarkCode = keyof MarkFacts;

/** Something that was not understood, or that a person should look at, at its place. */
export type Mark = {
	readonly [Code in MarkCode]: {
		readonly code: Code;
		readonly place: Place;
		readonly facts: Readonly<MarkFacts[Code]>;
	};
}[MarkCode];

/** What a pasted text was read as. */
export interface ReadChart {
	readonly modes: readonly ChartMode[];
	/** By place, the first in the text first. */
	readonly marks: readonly Mark[];
}

/** Marks that only say how something was read: the chart can be used as it is. */
export const NOTES: ReadonlySet<MarkCode> = new Set<MarkCode>(['percent', 'hexadecimal', 'name-from-band']);

/** Most lines and characters that are read: some five times the longest chart that 512 slots make. */
export const MOST_LINES = 4000;
export const MOST_CHARACTERS = 200_000;
