import type { Port, SheetCable } from '../../shared/sheet/index.ts';
import type { Box, DataSource, LineCause, Receiver } from './types.ts';

/**
 * The working parts of one solve, made afresh for each call and thrown away after it. A line is taps (places where
 * conductors meet) joined by legs (cables, and the contacts of bad sockets).
 */

/** One conductor at one tap. Those that touch are joined into one by `wires.ts`; only the root's marks count. */
export interface Wire {
	readonly id: number;
	up: Wire | null;
	/** Who drives it; null: nobody. */
	drives: Drive[] | null;
	/** A terminator hangs on it. */
	terminated: boolean;
	/** It reaches mains earth somewhere. */
	earthed: boolean;
}

/** A place where conductors meet: a fixture's two sockets wired through, any other socket, a bad contact, or an end in the air. */
export interface Tap {
	readonly kind: 'fixture' | 'socket' | 'contact' | 'loose';
	/** Its socket; for a fixture its `in`; for an end in the air the socket its cable hangs from. */
	readonly port: Port;
	readonly device: string;
	readonly receiver: Receiver | null;
	/** Unit loads across its pair. */
	readonly loads: number;
	/** Terminators across its pair. */
	terminators: number;
	readonly common: Wire;
	readonly minus: Wire;
	readonly plus: Wire;
	readonly legs: Leg[];
	stretch: Stretch | null;
	/** Ends of conducting legs of its own stretch that meet here. */
	degree: number;
}

/** A cable between two taps, or (cable null) the contact of a bad socket, through which nothing passes. */
export interface Leg {
	readonly cable: SheetCable | null;
	readonly from: Tap;
	readonly to: Tap;
	/** Sockets it is plugged into. */
	readonly fromPort: Port;
	readonly toPort: Port;
	readonly metres: number;
	/** Its whole data wires: each as the conductor it touches at `from`, and the one it touches at `to`. */
	readonly joins: readonly (readonly [Wire, Wire])[];
}

/** What sends into a tap: a talker, or an output of a box. */
export interface Drive {
	readonly port: Port;
	readonly tap: Tap;
	readonly talker: DataSource | null;
	readonly box: Box | null;
	/** The input of the box that is sent on here, when it is plugged. */
	readonly input: Tap | null;
}

/** Taps that both data wires join: one line, electrically. */
export interface Stretch {
	readonly taps: Tap[];
	/** Legs inside it by which at least one data wire passes. */
	readonly legs: Leg[];
	/** The two data wires touch: it closes on itself with the pair crossed. */
	readonly shorted: boolean;
	/** Sockets of it that hold more than one plug. */
	readonly splits: Set<Port>;
	/** Worked out on the first question, once who drives it is settled. */
	troubles: readonly FrameTrouble[] | null;
	ring: readonly string[] | null;
}

/** Something that damages frames, and what share of them. */
export interface FrameTrouble {
	readonly cause: LineCause;
	readonly rate: number;
}

/** Everything laid out. */
export interface Plant {
	/** By socket; a fixture's sound sockets are one tap, under the fixture's id. */
	readonly taps: ReadonlyMap<string, Tap>;
	/** The tap behind a socket. */
	tapOf(port: Port): Tap | undefined;
	/** All taps, ends in the air among them. */
	readonly all: readonly Tap[];
	/** In order of cable id. */
	readonly legs: readonly Leg[];
	/** How many plugs each socket holds, where it holds any. */
	readonly plugs: ReadonlyMap<Port, number>;
	/** Sockets with a terminator in them, sorted, each once. */
	readonly terminators: readonly Port[];
}

/** Plain code-unit order, the same on every machine, so that no answer hangs on a list's order or a locale. */
export function byText(a: string, b: string): number {
	return a < b ? -1 : a > b ? 1 : 0;
}

/** Sorts things by a text of theirs, into a new list. */
export function sortedBy<T>(things: Iterable<T>, text: (thing: T) => string): T[] {
	return [...things].sort((a, b) => byText(text(a), text(b)));
}

/** To the thousandth: sums of metres or unit loads otherwise end in noise, and differ with their order. */
export function thousandths(sum: number): number {
	return Math.round(sum * 1000) / 1000;
}

/** Makes wires; each has an id, from 0, by which pairs of them are told apart. */
export function wireMaker(): () => Wire {
	let made = 0;
	return () => ({ id: made++, up: null, drives: null, terminated: false, earthed: false });
}

/** The one wire that stands for all that touch this one. */
export function root(wire: Wire): Wire {
	let at = wire;
	while (at.up !== null) {
		if (at.up.up !== null) at.up = at.up.up;
		at = at.up;
	}
	return at;
}

/** Lets two wires touch. Only before any is marked: marks are not carried over. */
export function join(one: Wire, other: Wire): void {
	const a = root(one);
	const b = root(other);
	if (a !== b) b.up = a;
}
