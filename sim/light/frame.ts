import { levelOfFraction, splitWord, wordOfFraction } from '../../shared/dmx/index.ts';
import { type Band, footprintOf, modeOf, type Profile, type Slot } from '../../shared/profile/index.ts';
import { strobeRate } from './bands.ts';
import { cellsOf, inChartOrder } from './chart.ts';

/**
 * The frame a leader sends: its own light, laid out by its mode's chart, so that a follower in the same mode shows the same.
 *
 * What is lost on the way: an emitter the mode has no slot for; the difference between cells that share a slot (the
 * brightest is sent, so that no follower is darker than its leader); flashing, in a mode without a strobe band; and what
 * lies between two values of a slot. Where a mode has no intensity slot the intensity is worked into the levels.
 * @param levels 0..1 by cell, then emitter
 * @param intensity 0..1, over all cells
 * @param strobe flashes a second, 0 is steady; sent by the nearest value of a strobe band
 * @returns levels 0..255 of the footprint, the first for slot 1
 * @throws InputError `mode.unknown` where the profile has no such mode
 */
export function frameOf(
	profile: Profile,
	modeId: string,
	levels: Float32Array,
	intensity: number,
	strobe = 0,
): Uint8Array {
	const mode = modeOf(profile, modeId);
	const frame = new Uint8Array(footprintOf(mode));
	const slots = inChartOrder(mode);
	const wanted = between0and1(intensity);

	// the first intensity slot over a cell carries the intensity, any further one stands full
	const carried = new Set<number>();
	for (const slot of slots.filter((it) => it.drives.kind === 'intensity')) {
		const cells = cellsOf(profile, slot);
		const fresh = cells.every((cell) => !carried.has(cell));
		write(frame, slot, fresh ? wanted : 1);
		if (fresh) for (const cell of cells) carried.add(cell);
	}

	let flashes = strobe;
	for (const slot of slots) {
		const { drives } = slot;
		if (drives.kind === 'emitter') {
			const emitter = profile.emitters.findIndex((it) => it.id === drives.emitter);
			const shares = cellsOf(profile, slot).map((cell) => {
				const level = levels[cell * profile.emitters.length + emitter] ?? 0;
				return carried.has(cell) ? level : level * wanted;
			});
			write(frame, slot, Math.max(0, ...shares));
		} else if (drives.kind === 'bands') {
			const flashing = flashes > 0 ? strobeValue(drives.bands, flashes) : null;
			// one strobe band is enough: the first is the one that is read
			if (flashing !== null) flashes = 0;
			frame[slot.at - 1] = flashing ?? quietValue(drives.bands);
		}
	}
	return frame;
}

/** A value that leaves the light alone: the first of an open band, else of one that does nothing, else 0. */
function quietValue(bands: readonly Band[]): number {
	const quiet = bands.find((it) => it.effect.do === 'open') ?? bands.find((it) => it.effect.do === 'nothing');
	return quiet?.from ?? 0;
}

/** The value of a strobe band nearest in flashes a second; null without one. */
function strobeValue(bands: readonly Band[], flashes: number): number | null {
	let nearest: number | null = null;
	let off = Number.POSITIVE_INFINITY;
	for (const band of bands) {
		if (band.effect.do !== 'strobe') continue;
		for (let value = band.from; value <= band.to; value++) {
			const distance = Math.abs(strobeRate(band, band.effect.slow, band.effect.fast, value) - flashes);
			if (distance < off) {
				off = distance;
				nearest = value;
			}
		}
	}
	return nearest;
}

function write(frame: Uint8Array, slot: Slot, share: number): void {
	const value = between0and1(share);
	if (slot.fine === undefined) {
		frame[slot.at - 1] = levelOfFraction(value);
		return;
	}
	const { coarse, fine } = splitWord(wordOfFraction(value));
	frame[slot.at - 1] = coarse;
	frame[slot.fine - 1] = fine;
}

function between0and1(value: number): number {
	return value > 0 ? Math.min(1, value) : 0;
}
