import { type Limits, requireNumber, requireWhole } from '../error/index.ts';
import { LAST_SLOT } from './address.ts';
import { requireLevel } from './level.ts';

/**
 * What the line can carry. Source: EIA-485 (loads, volts, ohms) and ANSI E1.11 (terminator), read in restatements.
 */
export const EIA485 = Object.freeze({
	/** Unit loads on one line, at most. */
	mostUnitLoads: 32,
	/** One unit load, in ohms between the data wires: the least input resistance of a receiver. */
	unitLoadOhms: 12_000,
	/** The terminator across data− and data+ (pins 2 and 3) at the far end, in ohms; as much as the cable's own. */
	terminatorOhms: 120,
	/** The load a driver is tested into, in ohms: two terminators and a full line of receivers, near enough. */
	testLoadOhms: 54,
	/** A driver's least difference between the wires, in volts, into the test load. */
	leastDriveVolts: 1.5,
	/** A receiver is sure of a bit from this difference on, in volts, either way round. */
	receiverVolts: 0.2,
	/** The common-mode volts a receiver must bear. */
	commonModeVolts: Object.freeze({ lowest: -7, highest: 12 }),
});

/** Hands a receiver's share of a unit load back if it is one: over 0, to 32. Modern receivers are 1/8 or 1/4. */
function requireLoad(load: number, path: string): number {
	return requireNumber(load, {
		lo: Number.MIN_VALUE,
		hi: EIA485.mostUnitLoads,
		code: 'load.range',
		path,
		of: 'unit-load',
	});
}

/** The sum of receivers' unit loads. Throws InputError `load.range`. */
export function totalUnitLoads(loads: readonly number[]): number {
	return loads.reduce((sum, load, i) => sum + requireLoad(load, `loads[${i}]`), 0);
}

/** Whether these receivers are more than one line may carry, which is 32 unit loads. Throws InputError `load.range`. */
export function isOverloaded(loads: readonly number[]): boolean {
	return totalUnitLoads(loads) > EIA485.mostUnitLoads;
}

/** Unit loads a line with these receivers has room for still: 32 less their sum, and never less than 0. Throws InputError `load.range`. */
export function unitLoadsLeft(loads: readonly number[]): number {
	return Math.max(0, EIA485.mostUnitLoads - totalUnitLoads(loads));
}

/** How many receivers of one unit load each (a share of 1 unit load) one line may carry. Throws InputError `load.range`. */
export function mostReceivers(load: number): number {
	return Math.floor(EIA485.mostUnitLoads / requireLoad(load, 'load'));
}

/**
 * What the driver sees between the data wires, in ohms: terminators (0 or more, 120 Ω each) and unit loads (0 to 1000,
 * 12 kΩ each) side by side. Infinity with neither. The cable's own resistance is left out.
 * @throws InputError `load.range`, `terminator.range`.
 */
export function lineOhms(terminators: number, unitLoads: number): number {
	requireWhole(terminators, {
		lo: 0,
		hi: 100,
		code: 'terminator.range',
		path: 'terminators',
		of: 'terminators',
	});
	requireNumber(unitLoads, { lo: 0, hi: 1000, code: 'load.range', path: 'unitLoads', of: 'unit-loads' });
	return 1 / (terminators / EIA485.terminatorOhms + unitLoads / EIA485.unitLoadOhms);
}

/** A conductor of the line. The second pair is seldom wired, and by three-pin connectors not at all. */
export type Conductor = 'common' | 'data-minus' | 'data-plus' | 'second-minus' | 'second-plus';

/** Conductors by pin, pin 1 first. Source: ANSI E1.11, read in tables that quote it. */
export const PINS: readonly Conductor[] = Object.freeze([
	'common',
	'data-minus',
	'data-plus',
	'second-minus',
	'second-plus',
]);

/** The conductor on a pin (1 to 5). Throws InputError `pin.range`. */
export function conductorOf(pin: number): Conductor {
	requireWhole(pin, { lo: 1, hi: PINS.length, code: 'pin.range', path: 'pin', of: 'pin' });
	return PINS[pin - 1] as Conductor;
}

/** The pin (1 to 5) a conductor is on. */
export function pinOf(conductor: Conductor): number {
	return PINS.indexOf(conductor) + 1;
}

/** Break to break, at most, that a receiver must still take: 1.25 s (ANSI E1.11: a driver's constants, and from memory). */
const LONGEST_GAP_US = 1_250_000;

/**
 * Times on the line; `Us` is microseconds, `Ms` milliseconds. Source: ANSI E1.11, read in tables that restate it (makers'
 * and open-source drivers'), since the standard itself was not to be had. That loss
 * of data comes no sooner than the longest gap a receiver must take is from memory.
 */
export const TIMING = Object.freeze({
	/** Bits a second. */
	bitRate: 250_000,
	/** One bit: 1 / 250,000 s. */
	bitUs: 4,
	/** One slot: 1 start bit, 8 data bits, 2 stop bits. */
	slotUs: 44,
	/** What a transmitter must keep to. */
	transmitter: Object.freeze({
		shortestBreakUs: 92,
		shortestMarkAfterBreakUs: 12,
		/** Break to break, at least. */
		shortestPacketUs: 1204,
		/** Break to break, at most. */
		longestPacketUs: 1_000_000,
	}),
	/** What a receiver must still take. */
	receiver: Object.freeze({
		shortestBreakUs: 88,
		shortestMarkAfterBreakUs: 8,
		shortestPacketUs: 1196,
		longestPacketUs: LONGEST_GAP_US,
	}),
	/**
	 * How long these fixtures go without a packet before they take the data for lost: the least a receiver may, since it must
	 * still take packets that far apart. A maker may wait longer. What then happens is the loss setting.
	 */
	lossOfDataMs: LONGEST_GAP_US / 1000,
});

/** The parts of a packet that may be longer than the least, each in microseconds. */
export type PacketShape = {
	/** Least and default 92. */
	readonly break?: number;
	/** Least and default 12. */
	readonly markAfterBreak?: number;
	/** Idle between one slot and the next; default 0. */
	readonly betweenSlots?: number;
	/** Idle after the last slot; default 0. */
	readonly beforeBreak?: number;
};

function atLeast(found: number, lo: number, path: keyof PacketShape, of: Limits<'timing.range'>['of']): number {
	return requireNumber(found, { lo, hi: TIMING.transmitter.longestPacketUs, code: 'timing.range', path, of });
}

/**
 * How long a packet of so many data slots (0 to 512; the start code comes on top) takes, in microseconds:
 * break + mark after break + (slots + 1) × 44, and any idle times. A full packet at its fastest: 22,676.
 * Below 24 slots this is less than the least time from break to break; see `breakToBreak`.
 * @throws InputError `slots.range`, `timing.range` when a part is shorter than a transmitter may send or over 1 s.
 */
export function packetMicroseconds(slots: number, shape: PacketShape = {}): number {
	requireWhole(slots, { lo: 0, hi: LAST_SLOT, code: 'slots.range', path: 'slots', of: 'data-slots' });
	const { shortestBreakUs, shortestMarkAfterBreakUs } = TIMING.transmitter;
	return (
		atLeast(shape.break ?? shortestBreakUs, shortestBreakUs, 'break', 'break') +
		atLeast(
			shape.markAfterBreak ?? shortestMarkAfterBreakUs,
			shortestMarkAfterBreakUs,
			'markAfterBreak',
			'mark-after-break',
		) +
		(slots + 1) * TIMING.slotUs +
		slots * atLeast(shape.betweenSlots ?? 0, 0, 'betweenSlots', 'between-slots') +
		atLeast(shape.beforeBreak ?? 0, 0, 'beforeBreak', 'before-break')
	);
}

/**
 * The time from one break to the next, in microseconds: the packet, or 1204 where it is shorter, since a transmitter
 * must then wait.
 * @throws InputError `slots.range`, `timing.range`.
 */
export function breakToBreak(slots: number, shape: PacketShape = {}): number {
	return Math.max(packetMicroseconds(slots, shape), TIMING.transmitter.shortestPacketUs);
}

/**
 * How many packets of so many data slots go out a second, at most: 44.10 for a full universe, 830.56 for 24 slots.
 * @throws InputError `slots.range`, `timing.range`.
 */
export function refreshRate(slots: number, shape: PacketShape = {}): number {
	return 1_000_000 / breakToBreak(slots, shape);
}

/** Whether one of our receivers whose last packet was this many milliseconds ago has lost data: from 1250 on. */
export function isDataLost(milliseconds: number): boolean {
	return milliseconds >= TIMING.lossOfDataMs;
}

/** What the first slot of a packet says about the rest. */
export type StartCode = {
	readonly code: number;
	/** Permanent id; words about it live in `content/`. */
	readonly id: StartCodeId;
};

/** Ids of the start codes with a meaning of their own. */
export type StartCodeId = 'levels' | 'text' | 'test' | 'utf8-text' | 'maker' | 'rdm' | 'system-information';

/**
 * The named start codes. Source: ANSI E1.11 (levels, text, test, UTF-8 text, maker's own, system information) and
 * E1.20 (RDM), read in an open-source driver that restates the standard's annex.
 */
export const START_CODES: readonly StartCode[] = Object.freeze([
	Object.freeze({ code: 0x00, id: 'levels' } as const),
	Object.freeze({ code: 0x17, id: 'text' } as const),
	Object.freeze({ code: 0x55, id: 'test' } as const),
	Object.freeze({ code: 0x90, id: 'utf8-text' } as const),
	Object.freeze({ code: 0x91, id: 'maker' } as const),
	Object.freeze({ code: 0xcc, id: 'rdm' } as const),
	Object.freeze({ code: 0xcf, id: 'system-information' } as const),
]);

/** The null start code: the slots are levels. A fixture takes its levels from no other packet. */
const LEVELS_START_CODE = 0x00;

/** The named start code of a byte (0 to 255), undefined when it has no name. Throws `level.range`. */
export function startCodeOf(code: number): StartCode | undefined {
	requireLevel(code, 'code');
	return START_CODES.find((known) => known.code === code);
}

/** Whether a packet with this start code (0 to 255) carries levels, which 0 alone does. Throws `level.range`. */
export function carriesLevels(code: number): boolean {
	return requireLevel(code, 'code') === LEVELS_START_CODE;
}
