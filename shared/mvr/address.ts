import { LAST_SLOT, LAST_UNIVERSE } from '../dmx/index.ts';

/** A start address. */
export interface Spot {
	/** 1 to 63999. */
	readonly universe: number;
	/** 1 to 512. */
	readonly address: number;
}

/**
 * A start address as the file writes it: slots counted on from the first of universe 1, or universe and start address with a full
 * stop between. Space and line breaks around it are common.
 * @returns `none` for 0 or nothing, which is not patched; null for what is no start address
 */
export function readAddress(text: string): Spot | 'none' | null {
	const plain = text.trim();
	if (plain === '') return 'none';
	const [, before, after] = /^(\d{1,5})\s*\.\s*(\d{1,3})$/.exec(plain) ?? [];
	if (before !== undefined) return spotOf(Number(before), Number(after));
	if (!/^\d{1,9}$/.test(plain)) return null;
	const n = Number(plain);
	return n === 0 ? 'none' : spotOf(Math.floor((n - 1) / LAST_SLOT) + 1, ((n - 1) % LAST_SLOT) + 1);
}

const spotOf = (universe: number, address: number): Spot | null =>
	universe >= 1 && universe <= LAST_UNIVERSE && address >= 1 && address <= LAST_SLOT ? { universe, address } : null;

/** Slots counted on from the first of universe 1. */
export const absoluteOf = ({ universe, address }: Spot): number => (universe - 1) * LAST_SLOT + address;
