import { requireWhole } from '../error/index.ts';
import { LAST_SLOT, requireUniverse } from './address.ts';
import { requireLevel } from './level.ts';

/** Numbers of ANSI E1.31 (levels over a network), read in restatements of the standard. */
export const E131 = Object.freeze({
	/** UDP port. */
	port: 5568,
	/** No packet of a universe for this many seconds is loss of data on the network. */
	lossSeconds: 2.5,
	/** Bytes in front of the first level, start code included. */
	headerBytes: 126,
	/** How far behind, in steps, a sequence number may be before it counts as a fresh start: see `isLate`. */
	lateWindow: 20,
});

/** The multicast address a universe (1 to 63999) is sent to: 239.255., then its high and low byte. Throws `universe.range`. */
export function multicastAddress(universe: number): string {
	requireUniverse(universe);
	return `239.255.${universe >> 8}.${universe & 0xff}`;
}

/**
 * Whether a packet has come too late to be used, by the sequence numbers (0 to 255) of it and of the last one taken:
 * when the difference, as a signed byte, is over −20 and not over 0. Further behind, the sender has started anew.
 * @throws InputError `level.range` when a number is not 0 to 255.
 */
export function isLate(sequence: number, lastTaken: number): boolean {
	const steps = requireLevel(sequence, 'sequence') - requireLevel(lastTaken, 'lastTaken');
	const signed = (steps << 24) >> 24;
	return signed > -E131.lateWindow && signed <= 0;
}

/** Lengths in a packet, in bytes: the whole of it, and what its three layers say of themselves. */
export type E131Lengths = {
	readonly packet: number;
	readonly root: number;
	readonly framing: number;
	readonly levels: number;
};

/** The lengths of a packet with so many levels (1 to 512). Throws InputError `slots.range`. */
export function e131Lengths(slots: number): E131Lengths {
	requireWhole(slots, { lo: 1, hi: LAST_SLOT, code: 'slots.range', path: 'slots', of: 'levels' });
	const packet = E131.headerBytes + slots;
	return { packet, root: packet - 16, framing: packet - 38, levels: packet - 115 };
}
