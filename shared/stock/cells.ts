import type { Builder, Growing, GrowingMode, Repeat } from './builder.ts';
import type { Row } from './rows.ts';
import type { Place } from './types.ts';

const WORD = '(?:cell|pixel|segment|section|zone|head)';

/** In a channel's name: which cell it is of, or from which to which. */
export const CELL = new RegExp(`\\b${WORD}s? ?(\\d{1,2})(?: ?(?:-|–|to) ?(\\d{1,2}))?`, 'i');

/** Most cells of a fixture, as a profile has it. */
export const MOST_CELLS = 64;
const LAST_SLOT = 512;

/** `3-5 for each of 4 cells`, `CH 3 to 5: the same for each of 4 cells`, `3-5 × 4 pixels`. */
const REPEAT = new RegExp(
	String.raw`^\W*(?:(?:dmx[ -]?)?(?:ch(?:an(?:nel)?)?|slot)s?\.?\s*)?(\d{1,3})(?:\s*(?:-|–|—|to)\s*(\d{1,3}))?\s*[,:]?\s*(?:(?:the\s+)?same\s+|again\s+|repeat(?:s|ed)?\s+)?(?:for\s+)?(?:each\s+(?:of\s+)?|[x×]\s*)(?:the\s+)?(\d{1,3})\s+(${WORD})s\W*$`,
	'i',
);

/** What a line says of cells; null where it says nothing of the kind. */
export function repeatIn({ text, line }: Row): Repeat | null {
	const [, first, last = first, cells, word = ''] = REPEAT.exec(text) ?? [];
	if (first === undefined) return null;
	const start = text.search(/\S/);
	const place = { line, column: start + 1, length: text.trim().length };
	return { from: Number(first), to: Number(last), cells: Number(cells), word: word.toLowerCase(), place };
}

/** Puts in the channels of every cell past the first, and names each with its cell. What can't be repeated is marked. */
export function repeatCells(builder: Builder, mode: GrowingMode): void {
	for (const { from, to, cells, word, place } of mode.repeats) {
		const some = mode.slots.filter(({ at }) => from <= at && at <= to);
		if (cells < 2 || cells > MOST_CELLS) {
			builder.mark('cells-off', place, { cells, most: MOST_CELLS });
			continue;
		}
		if (some.length === 0) {
			builder.mark('cells-none', place, { from, to });
			continue;
		}
		const step = to - from + 1;
		const last = to + step * (cells - 1);
		if (last > LAST_SLOT) {
			builder.mark('slot-past-512', place, { slot: last });
			continue;
		}
		const called = (name: string, cell: number): string => `${name.replace(CELL, '').trim()} ${word} ${cell}`.trim();
		for (let cell = 2; cell <= cells; cell++)
			for (const slot of some) mode.slots.push(ofCell(slot, step * (cell - 1), called(slot.name, cell), place));
		for (const slot of some) slot.name = called(slot.name, 1);
	}
}

const ofCell = ({ fine, ...slot }: Growing, by: number, name: string, place: Place): Growing => ({
	...slot,
	at: slot.at + by,
	...(fine === undefined ? {} : { fine: fine + by }),
	name,
	place,
});
