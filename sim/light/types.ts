import type { Mode, Profile } from '../../shared/profile/index.ts';

/**
 * What a frame asks of a fixture, read through a mode's chart. One is made per fixture and
 * written over for each frame: nothing is allocated on the way.
 */
export interface SlotRequest {
	/** 0..1, from the intensity slot; 1 where the mode has none. Per cell where slots are per cell. */
	readonly intensity: Float32Array;
	/** 0..1 by cell, then emitter: `levels[cell * emitters + emitter]`. */
	readonly levels: Float32Array;
	/** Index of the held colour a band calls up, or -1. */
	held: number;
	/** Index of the programme a band starts, or -1. */
	programme: number;
	/** 1..100, from the speed slot; 50 where there is none. */
	speed: number;
	/** Flashes a second from a strobe band; 0 steady. */
	strobe: number;
	/** A band that closes the light. */
	dark: boolean;
}

/** A mode's chart compiled for speed: look-up tables by slot. */
export interface CompiledMode {
	readonly profile: Profile;
	readonly mode: Mode;
	/** Slots it takes. */
	readonly footprint: number;
	/** Reads `frame` (512 levels; index 0 is slot 1) from `start` (1..512) into `ask`. Slots past 512 read as 0. */
	read(frame: Uint8Array, start: number, ask: SlotRequest): void;
}

/** What a microphone has heard so far. `level` 0..1; `beats` counted; `since`: ms of the last beat. */
export interface SoundState {
	readonly level: number;
	readonly beats: number;
	readonly since: number;
}

/** Small wrongs in the fixture itself. */
export interface FixtureCondition {
	/** Emitter ids that do not light. */
	readonly deadEmitters: readonly string[];
	/** Output allowed by its thermal protection, 0..1; 1 is cool. */
	readonly foldBack: number;
	/** Something stands over the lens. */
	readonly covered: boolean;
	/** The line receiver is dead. */
	readonly receiverDead: boolean;
	/** A data socket with a bad contact. */
	readonly badSocket: 'in' | 'out' | null;
	/** Unit loads that its line input puts on the line beyond those of its profile; 0 is sound. */
	readonly extraLoads: number;
	readonly sensorDead: boolean;
	readonly microphoneDead: boolean;
	readonly displayDead: boolean;
	/** Battery capacity left against new, 0..1; and whether it takes charge. */
	readonly batteryHealth: number;
	readonly chargerDead: boolean;
	/** What keeps mains from it, whatever its plug is in: a fuse of its own, its power supply, the socket in the wall, the lead, a breaker. */
	readonly fuseBlown: boolean;
	readonly supplyDead: boolean;
	readonly socketDead: boolean;
	readonly leadDead: boolean;
	readonly breakerOff: boolean;
	/** Something covers the window of its remote sensor, or blinds it. */
	readonly sensorCovered: boolean;
}

/** Light as a person sees it. */
export interface CellLight {
	/** 0..1 by emitter, in the profile's order, after everything. */
	readonly levels: readonly number[];
	/** Relative brightness 0..1 against this cell at full. */
	readonly brightness: number;
	/** Output of its strongest visible emitter, 0..1: how far up it is, whatever its colour. */
	readonly strength: number;
	/** sRGB `#rrggbb` of the pool at this brightness, gamut-mapped. */
	readonly colour: string;
	/** Plain words: 'deep red', 'warm white', 'dark'. */
	readonly words: string;
	/** CIE 1931 x, y of the visible mix; null when dark. */
	readonly xy: readonly [number, number] | null;
	/** Ultraviolet level 0..1: barely seen, still there. */
	readonly ultraviolet: number;
}

/** A fixture with nothing wrong in it. */
export const UNHARMED: FixtureCondition = Object.freeze({
	deadEmitters: [],
	foldBack: 1,
	covered: false,
	receiverDead: false,
	badSocket: null,
	extraLoads: 0,
	sensorDead: false,
	microphoneDead: false,
	displayDead: false,
	batteryHealth: 1,
	chargerDead: false,
	fuseBlown: false,
	supplyDead: false,
	socketDead: false,
	leadDead: false,
	breakerOff: false,
	sensorCovered: false,
});
