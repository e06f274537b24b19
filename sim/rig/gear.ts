import { LAST_SLOT, TOP_LEVEL } from '../../shared/dmx/index.ts';
import { assert, CHECKED } from '../../shared/error/index.ts';
import type { Profile } from '../../shared/profile/index.ts';
import {
	boxesOf,
	type Port,
	profileFor,
	type RigSheet,
	type SheetBox,
	type SheetCable,
	type SheetFixture,
} from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../event/index.ts';
import { type FixtureState, inputFrom, nextDeadline, type PanelDisplay, startFixture } from '../fixture/index.ts';
import { type CellLight, type FixtureCondition, UNHARMED } from '../light/index.ts';
import type { Reception } from '../line/index.ts';

/** One fixture of an open rig. Replaced, never changed, when anything about it changes. */
export interface Unit {
	readonly placed: SheetFixture;
	readonly profile: Profile;
	readonly state: FixtureState;
	readonly condition: FixtureCondition;
	/** Where its mains plug is now, and whether something hides it from the remote. */
	readonly plug: string;
	readonly hidden: boolean;
	/** The last frame it had before data went, from slot 1; null while there is data or never was. */
	readonly kept: Uint8Array | null;
	/** The next time something happens in it by itself, ms; null when nothing will. */
	readonly deadline: number | null;
}

export interface DeskOutput {
	readonly id: string;
	readonly universe: number;
	readonly on: boolean;
	/** 0 is levels; anything else a receiver must ignore. */
	readonly startCode: number;
}

export interface Patch {
	readonly fixture: string;
	readonly universe: number;
	readonly address: number;
	readonly mode: string;
}

export interface Desk {
	readonly name: string;
	readonly outputs: readonly DeskOutput[];
	readonly patch: readonly Patch[];
	/** Levels as entered, by universe; arrays are replaced, never written into once shared. */
	readonly levels: ReadonlyMap<number, Uint8Array>;
	readonly master: number;
	/** What it sends whatever its faders do: it is blind, or frozen. Null while it sends what is entered. */
	readonly held: {
		readonly by: 'blind' | 'frozen';
		readonly levels: ReadonlyMap<number, Uint8Array>;
		readonly master: number;
	} | null;
}

/** Everything an open rig holds. The maps are this rig's own; what is in them is immutable, so a fork copies maps only. */
export interface Gear {
	readonly sheet: RigSheet;
	now: number;
	readonly units: Map<string, Unit>;
	desk: Desk | null;
	cables: readonly SheetCable[];
	/** What stands between desk and fixtures. */
	boxes: readonly SheetBox[];
	terminators: readonly Port[];
	remote: { readonly code: number; readonly battery: boolean } | null;
	/** Power in the hall's sockets. */
	hallPower: boolean;
	/** What there is to hear, 0..1. */
	sound: number;
	/** What reaches each fixture, as the wiring stands. */
	receptions: ReadonlyMap<string, Reception>;
	/** What the receptions were worked out from; another text means work them out again. */
	wiringKey: string;
	/** Fixtures whose draw may have changed since the clock last moved. */
	readonly stale: Set<string>;
}

/** Gear as a sheet has it, before anything has settled. */
export function gearFrom(sheet: RigSheet): Gear {
	const units = new Map<string, Unit>();
	for (const [i, placed] of sheet.fixtures.entries()) {
		const profile = profileFor(sheet, placed.profile, `fixtures[${i}].profile`);
		const state = startFixture(profile, inputFrom(profile, placed, false));
		units.set(placed.id, {
			placed,
			profile,
			state,
			condition: placed.condition ? { ...UNHARMED, ...placed.condition } : UNHARMED,
			plug: placed.plug,
			hidden: placed.hidden,
			kept: null,
			deadline: nextDeadline(profile, state),
		});
	}
	return {
		sheet,
		now: 0,
		units,
		desk: sheet.desk && {
			name: sheet.desk.name,
			outputs: sheet.desk.outputs.map((output) => ({ startCode: 0, ...output })),
			patch: sheet.desk.patch,
			levels: levelsFrom(sheet.desk.levels),
			master: sheet.desk.master,
			held: sheet.desk.held ? { ...sheet.desk.held, levels: levelsFrom(sheet.desk.held.levels) } : null,
		},
		cables: sheet.cables,
		boxes: boxesOf(sheet),
		terminators: sheet.terminators,
		remote: sheet.remote,
		hallPower: sheet.hall.power ?? true,
		sound: 0,
		receptions: new Map(),
		wiringKey: '',
		stale: new Set(units.keys()),
	};
}

/** Another holder of the same things. */
export function forkGear(gear: Gear): Gear {
	return { ...gear, units: new Map(gear.units), stale: new Set(gear.stale) };
}

/** Frames by universe, from a list of what stands up. */
export function levelsFrom(
	list: readonly { readonly universe: number; readonly slot: number; readonly level: number }[],
): Map<number, Uint8Array> {
	const levels = new Map<number, Uint8Array>();
	for (const { universe, slot, level } of list) {
		let frame = levels.get(universe);
		if (!frame) {
			frame = new Uint8Array(512);
			levels.set(universe, frame);
		}
		setLevel(frame, slot, level);
	}
	return levels;
}

/** Writes a level 0..255 into a frame, at a slot 1..512. */
export function setLevel(frame: Uint8Array, slot: number, level: number): void {
	// an array of bytes would take 256 for 0, and let slot 513 go by
	if (CHECKED) {
		assert(Number.isInteger(level) && level >= 0 && level <= TOP_LEVEL, 'a level that is none', level);
		assert(Number.isInteger(slot) && slot >= 1 && slot <= LAST_SLOT, 'a slot that is none', slot);
	}
	frame[slot - 1] = level;
}

/** Only what a person standing there could see. */
export interface Sight {
	readonly fixture: string;
	readonly display: PanelDisplay;
	readonly lamps: {
		readonly power: 'out' | 'lit';
		/** Steady on good data, flickering on damaged data, blinking slowly while it has none. */
		readonly data: 'out' | 'steady' | 'flickering' | 'blinking';
		/** Bars of four, and whether it charges; null where there is no battery. */
		readonly battery: { readonly bars: 0 | 1 | 2 | 3 | 4; readonly charging: boolean } | null;
		readonly sensor: 'out' | 'lit' | null;
	};
	readonly light: {
		readonly cells: readonly CellLight[];
		/** All cells together: relative brightness, sRGB, words. */
		readonly whole: CellLight;
		/** Flashes a second meant by strobe or programme; 0 where steady. */
		readonly flashes: number;
		/** Damaged data makes it jump about. */
		readonly flicker: boolean;
		/** Whether it moves through colours or levels by itself. */
		readonly moving: boolean;
	};
}

export interface OpenOptions {
	readonly faults?: readonly PlacedFault[];
}

export interface Rig {
	readonly sheet: RigSheet;
	/** Milliseconds since it opened. */
	readonly now: number;
	readonly log: readonly RigEvent[];
	/** Every change goes through here. Throws InputError on what is no event, and on one that fits nothing in the rig. */
	send(event: RigEvent): void;
	/** Several changes as one moment: what follows from them is worked out once. For those who ask of many rigs: these are events of their own making, and taken as they are. */
	sendTogether(events: readonly RigEvent[]): void;
	/** The only thing that moves the clock. Logged as `clock.wait`. */
	wait(milliseconds: number): void;
	look(fixture: string): Sight;
	/** Another rig from the same state; the two go on apart. Cheap: state is shared until it changes. */
	fork(): Rig;
	/** The rig's insides, for the marker, the finder and tests: to be read and never changed. */
	readonly gear: Readonly<Gear>;
}
