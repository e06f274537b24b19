import type { PanelKey, SomeSettings } from '../../shared/profile/index.ts';
import type { Port, SheetCable } from '../../shared/sheet/index.ts';
import type { FixtureCondition } from '../light/index.ts';

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
	| { readonly type: 'key.tap'; readonly fixture: string; readonly key: PanelKey }
	| { readonly type: 'key.down'; readonly fixture: string; readonly key: PanelKey }
	| { readonly type: 'key.up'; readonly fixture: string; readonly key: PanelKey }
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
	/** What a cable is and where its ends are, however it came about: breaking things, and putting in a known-good one. A Y lead is two ends in one socket. */
	| {
			readonly type: 'cable.become';
			readonly cable: string;
			readonly change: Partial<Omit<SheetCable, 'id'>>;
	  }
	| { readonly type: 'terminator.fit'; readonly port: Port }
	| { readonly type: 'terminator.remove'; readonly port: Port }
	// the desk
	| { readonly type: 'desk.level'; readonly universe: number; readonly slot: number; readonly level: number }
	/** A kept look called up: these levels, and all others out. */
	| {
			readonly type: 'desk.recall';
			readonly levels: readonly { readonly universe: number; readonly slot: number; readonly level: number }[];
	  }
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
	/** Its faders stop doing anything, and it sends on what stands: somebody left it blind, or it has frozen. Null: it follows its faders. */
	| { readonly type: 'desk.hold'; readonly by: 'blind' | 'frozen' | null }
	// boxes between desk and fixtures
	| { readonly type: 'box.switch'; readonly box: string; readonly on: boolean }
	/** One of its outputs goes dead, or works again. */
	| { readonly type: 'box.output'; readonly box: string; readonly socket: string; readonly dead: boolean }
	// remote, eyes and ears
	| { readonly type: 'remote.press'; readonly button: RemoteButton }
	| { readonly type: 'remote.become'; readonly code: number; readonly battery: boolean }
	| { readonly type: 'sight.block'; readonly fixture: string; readonly hidden: boolean }
	| { readonly type: 'sound.play'; readonly level: number }
	/** Somebody set it before you came: settings change with no hand on the panel. Keyed panels only. */
	| { readonly type: 'settings.become'; readonly fixture: string; readonly change: SomeSettings }
	/** Charge in a battery, 0 to 1 of what it holds: a flat one, or a fresh one put in. */
	| { readonly type: 'charge.become'; readonly fixture: string; readonly charge: number }
	// what is wrong inside a fixture
	| { readonly type: 'condition.become'; readonly fixture: string; readonly change: Partial<FixtureCondition> };

export type RigEventType = RigEvent['type'];

/** A fault put into a rig as it opens: catalogue id, where, and which of the kind. */
export interface PlacedFault {
	readonly fault: string;
	readonly place: string;
	readonly detail?: string;
}
