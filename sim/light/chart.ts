import { LAST_SLOT, requireAddress, TOP_LEVEL, TOP_WORD } from '../../shared/dmx/index.ts';
import { InputError } from '../../shared/error/index.ts';
import { type Band, footprintOf, type Mode, modeOf, type Profile, type Slot } from '../../shared/profile/index.ts';
import type { CompiledMode, SlotRequest } from './types.ts';

/** Speed where a mode has no speed slot. */
const MIDDLE_SPEED = 50;

/** Speed 1..100 of a speed slot's value 0..255, to the nearest whole. */
const SPEEDS: readonly number[] = Object.freeze(
	Array.from({ length: 256 }, (_, value) => 1 + Math.round((value * 99) / TOP_LEVEL)),
);

/** A slot that sets levels: where it sits, and what it sets. */
interface LevelSlot {
	/** Slots after the start address. */
	readonly at: number;
	/** The fine half, or -1. */
	readonly fine: number;
	/** Indexes it writes: into `levels` for an emitter, into `intensity` for intensity. */
	readonly targets: Int32Array;
}

/** An empty ask of the right size for a profile: nothing lit, intensity full, speed in the middle. Written over by `read`. */
export function makeAsk(profile: Profile): SlotRequest {
	return {
		intensity: new Float32Array(profile.cells).fill(1),
		levels: new Float32Array(profile.cells * profile.emitters.length),
		held: -1,
		programme: -1,
		speed: MIDDLE_SPEED,
		strobe: 0,
		dark: false,
	};
}

/** Cells a slot drives, counted from 0. */
export function cellsOf(profile: Profile, slot: Slot): number[] {
	return slot.cells?.map((cell) => cell - 1) ?? Array.from({ length: profile.cells }, (_, cell) => cell);
}

/** A mode's slots in the order they stand on the line. */
export function inChartOrder(mode: Mode): Slot[] {
	return mode.slots.toSorted((a, b) => a.at - b.at);
}

const made = new WeakMap<Profile, Map<string, CompiledMode>>();

/**
 * Compiles a mode's chart for reading frames. Made once for each profile object and mode; asked again, the same comes back.
 *
 * How slots meet: intensity slots that drive the same cell multiply; of several slots for one emitter the highest wins.
 * Band slots act on the whole fixture. Of those that hold a colour or run a programme the first in chart order wins, and
 * takes the colour slots over; of those that strobe the first wins; any that closes the light closes it.
 * @throws InputError `mode.unknown` where the profile has no such mode
 */
export function compileMode(profile: Profile, modeId: string): CompiledMode {
	let byMode = made.get(profile);
	if (byMode === undefined) {
		byMode = new Map();
		made.set(profile, byMode);
	}
	let mode = byMode.get(modeId);
	if (mode === undefined) {
		mode = new Chart(profile, modeOf(profile, modeId));
		byMode.set(modeId, mode);
	}
	return mode;
}

/** Reads one value 0..1 of a level slot; what lies past `end` is 0. */
function shareOf(slot: LevelSlot, frame: Uint8Array, base: number, end: number): number {
	const at = base + slot.at;
	const coarse = at < end ? (frame[at] as number) : 0;
	if (slot.fine < 0) return coarse / TOP_LEVEL;
	const below = base + slot.fine;
	return (coarse * 256 + (below < end ? (frame[below] as number) : 0)) / TOP_WORD;
}

class Chart implements CompiledMode {
	readonly profile: Profile;
	readonly mode: Mode;
	readonly footprint: number;
	readonly #intensity: LevelSlot[] = [];
	readonly #emitters: LevelSlot[] = [];
	readonly #bands: { readonly at: number; readonly table: BandTable }[] = [];
	/** Slots after the start address of the speed slot, or -1. */
	readonly #speed: number = -1;

	constructor(profile: Profile, mode: Mode) {
		this.profile = profile;
		this.mode = mode;
		this.footprint = footprintOf(mode);
		const width = profile.emitters.length;
		for (const slot of inChartOrder(mode)) {
			const { drives } = slot;
			const at = slot.at - 1;
			const fine = slot.fine === undefined ? -1 : slot.fine - 1;
			const cells = cellsOf(profile, slot);
			if (drives.kind === 'intensity') {
				this.#intensity.push({ at, fine, targets: Int32Array.from(cells) });
			} else if (drives.kind === 'emitter') {
				const emitter = profile.emitters.findIndex((it) => it.id === drives.emitter);
				this.#emitters.push({ at, fine, targets: Int32Array.from(cells, (cell) => cell * width + emitter) });
			} else if (drives.kind === 'bands') {
				this.#bands.push({ at, table: bandTable(profile, drives.bands) });
			} else if (this.#speed < 0) {
				this.#speed = at;
			}
		}
	}

	read(frame: Uint8Array, start: number, ask: SlotRequest): void {
		// asked first in full only where it fails: the sentence costs an allocation
		if (!(start >= 1 && start <= LAST_SLOT && start % 1 === 0)) requireAddress(start);
		const { intensity, levels } = ask;
		const { cells, emitters } = this.profile;
		if (levels.length !== cells * emitters.length || intensity.length !== cells) throw misfit(this.profile);
		const base = start - 1;
		const end = Math.min(frame.length, LAST_SLOT);

		intensity.fill(1);
		for (const slot of this.#intensity) {
			const value = shareOf(slot, frame, base, end);
			const { targets } = slot;
			for (let t = 0; t < targets.length; t++) (intensity[targets[t] as number] as number) *= value;
		}

		levels.fill(0);
		for (const slot of this.#emitters) {
			const value = shareOf(slot, frame, base, end);
			const { targets } = slot;
			for (let t = 0; t < targets.length; t++) {
				const target = targets[t] as number;
				if (value > (levels[target] as number)) levels[target] = value;
			}
		}

		const speed = base + this.#speed;
		ask.speed = this.#speed < 0 ? MIDDLE_SPEED : (SPEEDS[speed < end ? (frame[speed] as number) : 0] as number);
		this.#readBands(frame, base, end, ask);
	}

	#readBands(frame: Uint8Array, base: number, end: number, ask: SlotRequest): void {
		ask.held = -1;
		ask.programme = -1;
		ask.strobe = 0;
		ask.dark = false;
		for (const { at, table } of this.#bands) {
			const value = base + at < end ? (frame[base + at] as number) : 0;
			const does = table.does[value];
			const free = ask.held < 0 && ask.programme < 0;
			if (does === CLOSES) ask.dark = true;
			else if (does === STROBES && ask.strobe === 0) ask.strobe = table.rate[value] as number;
			else if (does === HOLDS && free) ask.held = table.which[value] as number;
			else if (does === RUNS && free) ask.programme = table.which[value] as number;
		}
	}
}

function misfit(profile: Profile): InputError {
	return new InputError('ask.shape', 'ask', {
		trouble: 'of-another-size',
		profile: profile.name,
		cells: profile.cells,
		emitters: profile.emitters.length,
	});
}

/** What a value of a band slot does, as small numbers for the table; 0 leaves the light alone. */
const CLOSES = 1;
const STROBES = 2;
const HOLDS = 3;
const RUNS = 4;

/** One band slot, looked up by value 0..255. */
export interface BandTable {
	/** `CLOSES`, `STROBES`, `HOLDS`, `RUNS`, or 0. */
	readonly does: Uint8Array;
	/** Index of the held colour or programme, where it has one. */
	readonly which: Uint16Array;
	/** Flashes a second, where it strobes. */
	readonly rate: Float32Array;
}

/** Flashes a second at a value of a strobe band: from slow at its first value to fast at its last, in a straight line. */
function strobeRate(band: { from: number; to: number }, slow: number, fast: number, value: number): number {
	return band.to === band.from ? slow : slow + ((fast - slow) * (value - band.from)) / (band.to - band.from);
}

/** Lays a slot's bands out by value. A value in no band leaves the light alone. */
function bandTable(profile: Profile, bands: readonly Band[]): BandTable {
	const does = new Uint8Array(256);
	const which = new Uint16Array(256);
	const rate = new Float32Array(256);
	for (const band of bands) {
		const { effect } = band;
		for (let value = Math.max(0, band.from); value <= Math.min(255, band.to); value++) {
			switch (effect.do) {
				case 'dark':
					does[value] = CLOSES;
					break;
				case 'strobe':
					does[value] = STROBES;
					rate[value] = strobeRate(band, effect.slow, effect.fast, value);
					break;
				case 'held':
					does[value] = HOLDS;
					which[value] = profile.held.findIndex((it) => it.id === effect.held);
					break;
				case 'programme':
					does[value] = RUNS;
					which[value] = profile.programmes.findIndex((it) => it.id === effect.programme);
					break;
				case 'open':
				case 'nothing':
					break;
			}
		}
	}
	return { does, which, rate };
}
