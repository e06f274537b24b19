import { LAST_SLOT, levelOfFraction, splitWord, wordOfFraction } from '../../shared/dmx/index.ts';
import { assert, CHECKED } from '../../shared/error/index.ts';
import { type Band, footprintOf, modeOf, type Profile, type Slot } from '../../shared/profile/index.ts';
import { cellsOf, inChartOrder } from './chart.ts';

/**
 * The frame a leader sends: its own light, laid out by its mode's chart, so that a follower in the same mode shows the same.
 *
 * What is lost on the way: an emitter the mode has no slot for; the difference between cells that share a slot (the
 * brightest is sent, so that no follower is darker than its leader); and what lies between two values of a slot. Where a mode
 * has no intensity slot the intensity is worked into the levels. Band slots stand where they leave the light alone: a leader's
 * flashes and steps travel as frames that change.
 * @param levels 0..1 by cell, then emitter
 * @param intensity 0..1, over all cells
 * @returns levels 0..255 of the footprint, the first for slot 1
 * @throws InputError `mode.unknown` where the profile has no such mode
 */
export function frameOf(profile: Profile, modeId: string, levels: Float32Array, intensity: number): Uint8Array {
	const mode = modeOf(profile, modeId);
	const frame = new Uint8Array(footprintOf(mode));
	if (CHECKED) assert(frame.length <= LAST_SLOT, 'a mode of more slots than a universe has', frame.length);
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
			frame[slot.at - 1] = quietValue(drives.bands);
		}
	}
	return frame;
}

/** A value that leaves the light alone: the first of an open band, else of one that does nothing, else 0. */
function quietValue(bands: readonly Band[]): number {
	const quiet = bands.find((it) => it.effect.do === 'open') ?? bands.find((it) => it.effect.do === 'nothing');
	return quiet?.from ?? 0;
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
