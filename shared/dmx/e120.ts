import { requireWhole } from '../error/index.ts';
import { TOP_LEVEL } from './level.ts';

/**
 * Numbers of ANSI E1.20 (RDM), by which a desk can ask a fixture for what a person reads off its panel. Parameter ids
 * read off a dissector's table; the start address without slots read in an open-source project's issues; the rest from
 * memory.
 */
export const E120 = Object.freeze({
	/** What a device with footprint 0 gives as its start address. */
	noStartAddress: 0xffff,
	startAddress: Object.freeze({ lowest: 1, highest: 512 }),
	footprint: Object.freeze({ lowest: 0, highest: 512 }),
	/** E1.20's word for a fixture's mode is personality; they are numbered from 1, in one byte. */
	personality: Object.freeze({ lowest: 1, highest: 255 }),
	/** Parameter ids. */
	parameters: Object.freeze({
		deviceInfo: 0x0060,
		personality: 0x00e0,
		personalityDescription: 0x00e1,
		startAddress: 0x00f0,
		slotInfo: 0x0120,
		identify: 0x1000,
	}),
});

/**
 * The checksum of an RDM message, 0 to 65535: the sum of all its bytes (0 to 255), start code included, modulo 65536.
 * It is sent behind them, high byte first.
 * @throws InputError `byte.range` when one is no byte.
 */
export function rdmChecksum(bytes: Iterable<number>): number {
	let sum = 0;
	let i = 0;
	for (const byte of bytes) {
		requireWhole(byte, { lo: 0, hi: TOP_LEVEL, code: 'byte.range', path: `bytes[${i}]`, of: 'byte' });
		sum = (sum + byte) & 0xffff;
		i++;
	}
	return sum;
}
