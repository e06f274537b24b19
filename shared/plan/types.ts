import type { Profile } from '../profile/index.ts';
import type { BreakerCurve } from './breaker.ts';

/** Most rows of a plan. */
export const PLAN_MOST = 2000;
/** Most profiles that a plan carries. */
export const PLAN_PROFILES = 40;

/** Who the row listens to: a desk by data, or the first fixture of the line, which leads. */
export type PlanSource = 'desk' | 'leader';

/** In which order start addresses are given: as the rows stand, along the room, type by type, or whatever takes the fewest universes. */
export const PACK_ORDERS = Object.freeze(['list', 'place', 'type', 'fewest'] as const);
export type PackOrder = (typeof PACK_ORDERS)[number];

export interface PackRules {
	/** The first universe to use, 1 to 63999. */
	readonly universe: number;
	/** Slots left free between one fixture and the next, 0 to 100. */
	readonly gap: number;
	/** Start addresses stand at 1 and every so many slots after it: 1 for any, 10 for 1, 11, 21. 1 to 100. */
	readonly step: number;
	readonly order: PackOrder;
}

/** One fixture of a plan. */
export interface PlanRow {
	/** Id of the fixture on the rig sheet; permanent within the plan. */
	readonly id: string;
	/** What the crew calls it. */
	readonly name: string;
	/** Profile id. */
	readonly profile: string;
	/** Mode id of that profile. */
	readonly mode: string;
	/** 1 to 63999. */
	readonly universe: number;
	/** Start address, 1 to 512. */
	readonly address: number;
	/** Its label is written: packing leaves it where it is. */
	readonly labelled: boolean;
	/** What its panel shows now, as planned or not; null where that is not known. */
	readonly shows: { readonly mode: string; readonly address: number } | null;
	/** What its panel shows was taken from a bench, and nobody has looked at the real one. Since version 4 of kept rigs. */
	readonly unseen?: true;
	/** Metres along the wall, above the floor, and from the wall. */
	readonly place: { readonly x: number; readonly y: number; readonly throw: number; readonly overhead: boolean };
	/** Degrees that it is turned up from square on to the wall, -80 to 80; 0 until somebody says. Since version 2 of kept rigs. */
	readonly tilt?: number;
	/** The row whose data output its cable comes from, where somebody said; left out, the line runs along the room. Since version 3. */
	readonly after?: string;
	/** What the crew calls the circuit that feeds it; empty where that is not known, or on its battery. */
	readonly circuit: string;
}

/** What was given of the supply; null where nobody has said. */
export interface PlanSupply {
	/** Volts, over 0 to 500. */
	readonly volts: number;
	/** Over 0 to 1. */
	readonly powerFactor: number | null;
	/** Rated amperes of a circuit's breaker. */
	readonly breaker: number | null;
	/** Conductor of the feed cable, mm². */
	readonly area: number | null;
	/** Metres from the outlet to the last fixture. */
	readonly metres: number | null;
	/** Amperes that the weakest of cable, link socket and plug may carry, by its label. Since version 2 of kept rigs. */
	readonly link?: number | null;
	/** How fast-acting the breaker is. Since version 2. */
	readonly curve?: BreakerCurve | null;
}

export interface PlanShow {
	/** Hours that batteries must last. */
	readonly hours: number;
	/** Tonight's look: how much of all the light is on, 0 to 1. */
	readonly look: number;
}

/** A rig as it is planned, before it is a sheet: plain JSON. */
export interface Plan {
	readonly version: 1;
	readonly name: string;
	readonly hall: { readonly width: number; readonly height: number };
	readonly source: PlanSource;
	/** What every fixture is to do when data stops, and whether its panel locks. */
	readonly loss: 'hold' | 'dark' | 'programme';
	readonly lock: 'on' | 'off';
	readonly rules: PackRules;
	readonly supply: PlanSupply;
	readonly show: PlanShow;
	/** Kilograms of one fixture by profile id, as weighed or from its label. */
	readonly kilograms: Readonly<Record<string, number>>;
	/** Peak amperes at switching on, of one fixture by profile id, from its label. Since version 2. */
	readonly surge?: Readonly<Record<string, number>>;
	readonly rows: readonly PlanRow[];
	/** Profiles of the crew's own, beside the bundled ones. */
	readonly profiles: readonly Profile[];
}
