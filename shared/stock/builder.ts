import type { ChartBand, ChartMode, Mark, MarkCode, MarkFacts, Place } from './types.ts';
import type { Span } from './values.ts';

/** A slot as it grows. */
export interface Growing {
	at: number;
	fine?: number;
	name: string;
	words: string;
	bands: { -readonly [K in keyof ChartBand]: ChartBand[K] }[];
	place: Place;
	/** How far in from the left its line begins. */
	indent: number;
}

/** That some channels of a mode come again for each cell, one cell's after another's. */
export interface Repeat {
	/** Channels of the first cell. */
	readonly from: number;
	readonly to: number;
	readonly cells: number;
	/** What it calls a cell, in its own words. */
	readonly word: string;
	readonly place: Place;
}

export interface GrowingMode {
	name: string;
	/** How many slots its heading says it has. */
	said: number | null;
	slots: Growing[];
	/** Channels that come again for each cell. */
	repeats: Repeat[];
	place: Place;
	/** Begun by a heading of its own. */
	isHeaded: boolean;
}

/** Which slot a row begins: its number, its fine half, and the mode it is in. */
export interface SlotHead {
	readonly mode: GrowingMode;
	readonly at: number;
	readonly fine?: number;
}

/** The chart as it is read, line by line. */
export class Builder {
	readonly modes: GrowingMode[] = [];
	readonly marks: Mark[] = [];
	/** The slots that values now met belong to: one, or the same in several modes side by side. */
	current: Growing[] = [];

	mark<Code extends MarkCode>(code: Code, place: Place, facts: MarkFacts[Code]): void {
		this.marks.push({ code, place, facts } as unknown as Mark);
	}

	begin(name: string, said: number | null, place: Place, isHeaded = true): GrowingMode {
		const mode = { name, said, slots: [], repeats: [], place, isHeaded };
		this.modes.push(mode);
		this.current = [];
		return mode;
	}

	/** The mode that slots go to; one without a heading where there is none yet. */
	mode(place: Place): GrowingMode {
		return this.modes.at(-1) ?? this.begin('', null, place, false);
	}

	slots(heads: readonly SlotHead[], name: string, place: Place, indent: number): void {
		this.current = heads.map(({ mode, at, fine }) => {
			const slot: Growing = { at, ...(fine === undefined ? {} : { fine }), name, words: '', bands: [], place, indent };
			mode.slots.push(slot);
			return slot;
		});
	}

	band(span: Span, words: string, place: Place, text: string): void {
		if (this.current.length === 0) {
			this.mark('band-before-slot', place, { text });
			return;
		}
		const { from, to } = span;
		if (span.unit === 'percent') this.mark('percent', place, { text, from, to });
		if (span.unit === 'hexadecimal') this.mark('hexadecimal', place, { text, from, to });
		for (const slot of this.current) slot.bands.push({ from, to, words, place });
	}

	/** The value at which the next band should begin. */
	expected(): number {
		const last = this.current[0]?.bands.at(-1);
		return last ? last.to + 1 : 0;
	}

	/** A slot's two numbers, marked where one does not follow the other. */
	pair(at: number, fine: number | undefined, place: Place, text: string): { at: number; fine?: number } {
		if (fine === undefined) return { at };
		if (fine !== at + 1) this.mark('several-slots', place, { text });
		return { at, fine };
	}

	/** More words for what was met last. */
	more(words: string): void {
		for (const slot of this.current) {
			const band = slot.bands.at(-1);
			if (band) band.words = joined(band.words, words);
			else slot.words = joined(slot.words, words);
		}
	}

	chart(): ChartMode[] {
		return this.modes
			.filter((mode) => mode.slots.length > 0)
			.map(({ name, slots, place }) => ({
				name,
				place,
				slots: slots.map(({ indent: _, ...slot }) => slot).toSorted((a, b) => a.at - b.at),
			}));
	}
}

const joined = (one: string, other: string): string => (one === '' ? other : `${one} ${other}`);

/** Words without what stood between them and their numbers, and without a bracket that has no other half. */
export function bareWords(text: string): string {
	const bare = text
		.replaceAll(/\s+/g, ' ')
		.replace(/^[\s:=>→|,;.)\]–—-]+/, '')
		.replace(/[\s|,;:=([–—-]+$/, '')
		.trim();
	const isHalf = /[)\]]$/.test(bare) && !/[([]/.test(bare);
	return isHalf ? bareWords(bare.slice(0, -1)) : bare;
}
