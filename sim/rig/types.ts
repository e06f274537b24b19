import type { Key } from '../../shared/profile/index.ts';
import type { Port, RigSheet, SheetCable } from '../../shared/sheet/index.ts';
import type { CellLight, Condition } from '../light/index.ts';

/** A button of the remote. */
export type RemoteButton =
	| 'light'
	| 'dark'
	| 'brighter'
	| 'dimmer'
	| 'faster'
	| 'slower'
	| `held:${string}`
	| `programme:${string}`;

/**
 * All that can happen to a rig. A log of these, with the sheet, is the whole history: plain JSON,
 * so it travels in a link.
 */
export type RigEvent =
	| { readonly type: 'clock.wait'; readonly ms: number }
	// hands on a panel; a tap is down and up at once
	| { readonly type: 'key.tap'; readonly fixture: string; readonly key: Key }
	| { readonly type: 'key.down'; readonly fixture: string; readonly key: Key }
	| { readonly type: 'key.up'; readonly fixture: string; readonly key: Key }
	| { readonly type: 'switch.flip'; readonly fixture: string; readonly switch: number; readonly up: boolean }
	| { readonly type: 'slide.move'; readonly fixture: string; readonly slide: string; readonly to: number }
	// power
	| { readonly type: 'power.switch'; readonly fixture: string; readonly on: boolean }
	| { readonly type: 'mains.plug'; readonly fixture: string; readonly into: string }
	| { readonly type: 'hall.power'; readonly on: boolean }
	// the line
	| { readonly type: 'cable.lay'; readonly cable: SheetCable }
	| { readonly type: 'cable.lift'; readonly cable: string }
	| { readonly type: 'cable.plug'; readonly cable: string; readonly end: 'from' | 'to'; readonly port: Port }
	| { readonly type: 'cable.unplug'; readonly cable: string; readonly end: 'from' | 'to' }
	/** Lends or mends wires, length and kind of a cable: breaking things, and putting in a known-good one. */
	| {
			readonly type: 'cable.become';
			readonly cable: string;
			readonly change: Partial<Pick<SheetCable, 'kind' | 'length' | 'common' | 'minus' | 'plus' | 'swapped'>>;
	  }
	| { readonly type: 'terminator.fit'; readonly port: Port }
	| { readonly type: 'terminator.remove'; readonly port: Port }
	// the desk
	| { readonly type: 'desk.level'; readonly universe: number; readonly slot: number; readonly level: number }
	| { readonly type: 'desk.master'; readonly level: number }
	| { readonly type: 'desk.output'; readonly output: string; readonly on: boolean }
	| { readonly type: 'desk.universe'; readonly output: string; readonly universe: number }
	| {
			readonly type: 'desk.patch';
			readonly fixture: string;
			readonly universe: number;
			readonly address: number;
			readonly mode: string;
	  }
	| { readonly type: 'desk.start-code'; readonly output: string; readonly code: number }
	// remote, eyes and ears
	| { readonly type: 'remote.press'; readonly button: RemoteButton }
	| { readonly type: 'remote.become'; readonly code: number; readonly battery: boolean }
	| { readonly type: 'sight.block'; readonly fixture: string; readonly hidden: boolean }
	| { readonly type: 'sound.play'; readonly level: number }
	// what is wrong inside a fixture
	| { readonly type: 'condition.become'; readonly fixture: string; readonly change: Partial<Condition> };

export type RigEventType = RigEvent['type'];

/** What the fixture's back shows. */
export type Display =
	| {
			readonly kind: 'keyed';
			readonly lit: boolean;
			readonly lines: readonly string[];
			readonly state: 'dark' | 'asleep' | 'locked' | 'browsing' | 'editing' | 'confirming';
	  }
	| {
			readonly kind: 'switches';
			readonly up: readonly boolean[];
			readonly slides: readonly { readonly id: string; readonly position: number; readonly label: string }[];
	  };

/** Only what a person standing there could see. */
export interface Sight {
	readonly fixture: string;
	readonly display: Display;
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

/** One link of the reason trail. Words for each `id` live in `content/reasons`. */
export interface Reason {
	/** Permanent id: `power.battery`, `drive.programme-band`, `line.clean` ... */
	readonly id: string;
	readonly stage: 'power' | 'drive' | 'source' | 'line' | 'address' | 'slots' | 'level' | 'lamp' | 'light';
	/** Whether this link lets the light through, changes it, or stops it. */
	readonly effect: 'passes' | 'shapes' | 'stops';
	/** What the words need: ids, numbers, values. JSON only. */
	readonly facts: Readonly<Record<string, string | number | boolean | null | readonly (string | number)[]>>;
}

/** A fault put into a rig as it opens: catalogue id, where, and which of the kind. */
export interface PlacedFault {
	readonly fault: string;
	readonly place: string;
	readonly detail?: string;
}

export interface OpenOptions {
	readonly faults?: readonly PlacedFault[];
}

export interface Rig {
	readonly sheet: RigSheet;
	/** Milliseconds since it opened. */
	readonly now: number;
	readonly log: readonly RigEvent[];
	/** Every change goes through here. Throws InputError on an event that fits nothing in the rig. */
	send(event: RigEvent): void;
	/** The only thing that moves the clock. Logged as `clock.wait`. */
	wait(milliseconds: number): void;
	look(fixture: string): Sight;
	why(fixture: string): Reason[];
	/** Another rig from the same state; the two go on apart. Cheap: state is shared until it changes. */
	fork(): Rig;
}
