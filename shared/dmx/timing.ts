import { requireNumber, requireWhole } from '../error/index.ts';
import { LAST_SLOT } from './address.ts';

/**
 * Times on the line, in microseconds. Source: ANSI E1.11, read in tables that restate it (makers' and open-source
 * drivers'), since the standard itself was not to be had; `loss` alone is from memory for the standard, though makers'
 * manuals say the same.
 */
export const E111 = Object.freeze({
	/** Bits a second. */
	bitRate: 250_000,
	/** One bit: 1 / 250,000 s. */
	bit: 4,
	/** One slot: 1 start bit, 8 data bits, 2 stop bits. */
	slot: 44,
	/** What a transmitter must keep to. */
	transmitter: Object.freeze({
		shortestBreak: 92,
		shortestMarkAfterBreak: 12,
		/** Break to break, at least. */
		shortestPacket: 1204,
		/** Break to break, at most. */
		longestPacket: 1_000_000,
	}),
	/** What a receiver must still take. */
	receiver: Object.freeze({
		shortestBreak: 88,
		shortestMarkAfterBreak: 8,
		shortestPacket: 1196,
		longestPacket: 1_250_000,
	}),
	/** No packet for this long is loss of data; what then happens is the fixture's loss setting. Some receivers wait 1.25 s. */
	loss: 1_000_000,
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

function atLeast(found: number, lo: number, path: keyof PacketShape, what: string): number {
	return requireNumber(found, { lo, hi: E111.transmitter.longestPacket, code: 'timing.range', path, what });
}

/**
 * How long a packet of so many data slots (0 to 512; the start code comes on top) takes, in microseconds:
 * break + mark after break + (slots + 1) × 44, and any idle times. A full packet at its fastest: 22,676.
 * Below 24 slots this is less than the least time from break to break; see `breakToBreak`.
 * @throws InputError `slots.range`, `timing.range` when a part is shorter than a transmitter may send or over 1 s.
 */
export function packetMicroseconds(slots: number, shape: PacketShape = {}): number {
	requireWhole(slots, { lo: 0, hi: LAST_SLOT, code: 'slots.range', path: 'slots', what: 'The number of data slots' });
	const { shortestBreak, shortestMarkAfterBreak } = E111.transmitter;
	return (
		atLeast(shape.break ?? shortestBreak, shortestBreak, 'break', 'A break, in microseconds,') +
		atLeast(
			shape.markAfterBreak ?? shortestMarkAfterBreak,
			shortestMarkAfterBreak,
			'markAfterBreak',
			'A mark after break, in microseconds,',
		) +
		(slots + 1) * E111.slot +
		slots * atLeast(shape.betweenSlots ?? 0, 0, 'betweenSlots', 'An idle time between slots, in microseconds,') +
		atLeast(shape.beforeBreak ?? 0, 0, 'beforeBreak', 'A mark before break, in microseconds,')
	);
}

/**
 * The time from one break to the next, in microseconds: the packet, or 1204 where it is shorter, since a transmitter
 * must then wait.
 * @throws InputError `slots.range`, `timing.range`.
 */
export function breakToBreak(slots: number, shape: PacketShape = {}): number {
	return Math.max(packetMicroseconds(slots, shape), E111.transmitter.shortestPacket);
}

/**
 * How many packets of so many data slots go out a second, at most: 44.10 for a full universe, 830.56 for 24 slots.
 * @throws InputError `slots.range`, `timing.range`.
 */
export function refreshRate(slots: number, shape: PacketShape = {}): number {
	return 1_000_000 / breakToBreak(slots, shape);
}

/** Whether a receiver has lost data when its last packet was this many microseconds ago: from 1 s on. */
export function isDataLost(microseconds: number): boolean {
	return microseconds >= E111.loss;
}
