import { checkBands } from '../dmx/index.ts';
import type { Builder, Growing, GrowingMode } from './builder.ts';
import { repeatCells } from './cells.ts';
import type { Place } from './types.ts';

const FINE = /\b(?:fine|lsb|low byte)\b|\b16[ -]?bits?\b/i;
const baseName = (name: string): string =>
	name
		.replaceAll(new RegExp(FINE, 'gi'), '')
		.replaceAll(/coarse|[^\p{L}\d]/giu, '')
		.toLowerCase();

/** Puts fine halves with their coarse ones, and marks whatever does not fit: numbers, bands, counts. */
export function checkChart(builder: Builder, text: string): void {
	for (const mode of builder.modes) {
		if (mode.slots.length === 0) {
			builder.mark('not-read', mode.place, { text: mode.name });
			continue;
		}
		joinFine(builder, mode);
		for (const slot of mode.slots) {
			nameSlot(builder, slot);
			checkSlot(builder, slot);
		}
		repeatCells(builder, mode);
		checkNumbers(builder, mode);
	}
	if (builder.modes.every(({ slots }) => slots.length === 0) && text.trim() !== '')
		builder.mark('no-slots', { line: 1, column: 1, length: 1 }, {});
}

function joinFine(builder: Builder, mode: GrowingMode): void {
	const coarse = mode.slots.filter(({ name }) => !FINE.test(name));
	for (const slot of mode.slots.filter(({ name, fine }) => FINE.test(name) && fine === undefined)) {
		const base = baseName(slot.name);
		const mate =
			coarse.find((each) => each.fine === undefined && base !== '' && baseName(each.name) === base) ??
			(base === '' ? coarse.find((each) => each.at === slot.at - 1 && each.fine === undefined) : undefined);
		const isWhole = slot.bands.every(({ from, to }) => from === 0 && to === 255);
		if (!mate) builder.mark('fine-alone', slot.place, { slot: slot.at });
		else if (isWhole) {
			mate.fine = slot.at;
			mode.slots.splice(mode.slots.indexOf(slot), 1);
		} else builder.mark('fine-bands', slot.place, { slot: slot.at });
	}
}

function nameSlot(builder: Builder, slot: Growing): void {
	const [first] = slot.bands;
	if (slot.name === '' && first && first.words !== '') {
		slot.name = first.words;
		if (slot.bands.length === 1) first.words = '';
		else builder.mark('name-from-band', slot.place, { slot: slot.at, name: slot.name });
	} else if (slot.name === '') builder.mark('name-missing', slot.place, { slot: slot.at });
}

function checkNumbers(builder: Builder, { slots, said, place }: GrowingMode): void {
	const taken = new Map<number, Place>();
	for (const slot of slots) {
		for (const number of slot.fine === undefined ? [slot.at] : [slot.at, slot.fine]) {
			if (number < 1 || number > 512) builder.mark('slot-past-512', slot.place, { slot: number });
			if (taken.has(number)) builder.mark('slot-twice', slot.place, { slot: number });
			taken.set(number, slot.place);
		}
	}
	let before = 0;
	for (const number of [...taken.keys()].sort((a, b) => a - b)) {
		if (number > before + 1)
			builder.mark('slot-missing', taken.get(number) as Place, { from: before + 1, to: number - 1 });
		before = number;
	}
	if (said !== null && said !== before) builder.mark('count-differs', place, { said, found: before });
}

function checkSlot(builder: Builder, { at, bands, place }: Growing): void {
	if (bands.length === 0) return;
	for (const { kind, index, from, to } of checkBands(bands)) {
		const band = bands[index];
		const where = band?.place ?? place;
		if (kind === 'gap') builder.mark('gap', where, { slot: at, from, to });
		else if (kind === 'overlap') builder.mark('overlap', where, { slot: at, from, to });
		else if (kind === 'past-255') builder.mark('past-255', where, { value: to });
		else if (kind === 'reversed' && band) builder.mark('reversed', where, { from: band.from, to: band.to });
		else if (kind === 'out-of-order') builder.mark('out-of-order', where, { from, to });
	}
}
