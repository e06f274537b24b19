import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../event/index.ts';
import type { PanelDisplay } from '../fixture/index.ts';
import type { CellLight } from '../light/index.ts';
import type { Gear } from './gear.ts';

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
