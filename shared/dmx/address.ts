import { InputError, requireWhole } from '../error/index.ts';

/** Slots in one universe. Source: ANSI E1.11, a packet carries at most 512 data slots after the start code. */
export const LAST_SLOT = 512;

/** Hands a start address or slot number back if it is one: a whole number from 1 to 512. Throws `address.range`. */
export function requireAddress(
	address: number,
	path = 'start',
	of: 'start-address' | 'slot' = 'start-address',
): number {
	return requireWhole(address, { lo: 1, hi: LAST_SLOT, code: 'address.range', path, of });
}

/**
 * Hands a footprint back if it is one: how many slots a fixture takes in its mode, 1 to 512.
 * (E1.20 also knows footprint 0, a device that takes no slots; it has no start address, so nothing here applies to it.)
 * @throws InputError `footprint.range`.
 */
export function requireFootprint(footprint: number, path = 'footprint'): number {
	return requireWhole(footprint, { lo: 1, hi: LAST_SLOT, code: 'footprint.range', path, of: 'footprint' });
}

/**
 * The number of the last slot a fixture takes: start + footprint − 1. It may lie past 512 (up to 1023); ask `runsPast`.
 * @throws InputError `address.range`, `footprint.range`.
 */
export function lastSlot(start: number, footprint: number): number {
	return requireAddress(start) + requireFootprint(footprint) - 1;
}

/**
 * How many of a fixture's slots lie past 512 and so are never sent to it (they do not go on in the next universe):
 * 0 when it fits.
 * @throws InputError `address.range`, `footprint.range`.
 */
export function slotsPast(start: number, footprint: number): number {
	return Math.max(0, lastSlot(start, footprint) - LAST_SLOT);
}

/** Whether a fixture's footprint runs past slot 512. Throws `address.range`, `footprint.range`. */
export function runsPast(start: number, footprint: number): boolean {
	return lastSlot(start, footprint) > LAST_SLOT;
}

/** The highest start address at which a footprint still fits: 513 − footprint. Throws `footprint.range`. */
export function highestStart(footprint: number): number {
	return LAST_SLOT + 1 - requireFootprint(footprint);
}

/**
 * The slot, counted on the desk, of a fixture's nth slot (n from 1): start + n − 1.
 * @throws InputError `address.range`, `slot.range` when n is not 1 to 512, `address.past-end` when it lies past 512.
 */
export function slotOf(start: number, n: number): number {
	requireAddress(start);
	requireWhole(n, { lo: 1, hi: LAST_SLOT, code: 'slot.range', path: 'n', of: 'fixture-slot' });
	const slot = start + n - 1;
	if (slot > LAST_SLOT) {
		throw new InputError('address.past-end', 'n', {
			trouble: 'slot-past-end',
			n,
			start,
			slot,
			last: LAST_SLOT,
			highest: LAST_SLOT + 1 - n,
		});
	}
	return slot;
}

/**
 * How many fixtures of one footprint fit back to back from a start address (1 unless told) to slot 512.
 * @throws InputError `address.range`, `footprint.range`.
 */
export function howManyFit(footprint: number, from = 1): number {
	return Math.floor((LAST_SLOT + 1 - requireAddress(from, 'from')) / requireFootprint(footprint));
}

/**
 * The start address of the nth fixture (n from 1) of a row of one footprint, back to back from `first`:
 * first + (n − 1) × footprint.
 * @throws InputError `address.range`, `footprint.range`, `count.range` when n is not 1 to 512, `address.past-end` when
 * that fixture would not fit whole.
 */
export function nthAddress(first: number, footprint: number, n: number): number {
	requireAddress(first, 'first');
	requireFootprint(footprint);
	requireWhole(n, { lo: 1, hi: LAST_SLOT, code: 'count.range', path: 'n', of: 'place-in-row' });
	const start = first + (n - 1) * footprint;
	if (start + footprint - 1 > LAST_SLOT) {
		throw new InputError('address.past-end', 'n', {
			trouble: 'fixture-past-end',
			n,
			first,
			footprint,
			last: LAST_SLOT,
			fit: howManyFit(footprint, first),
		});
	}
	return start;
}

/** A row of start addresses, and where it ends early. */
export type AddressRow = {
	/** The start addresses of the fixtures that fit, in the order of their footprints. */
	readonly starts: readonly number[];
	/** The index of the first footprint that runs past 512, and with it all after it; null when all fit. */
	readonly stopsAt: number | null;
};

/**
 * Start addresses for fixtures of these footprints, back to back from `first`, in one universe.
 * @throws InputError `address.range`, `footprint.range` (with the footprint's place as its path).
 */
export function backToBack(first: number, footprints: readonly number[]): AddressRow {
	let next = requireAddress(first, 'first');
	footprints.forEach((footprint, i) => {
		requireFootprint(footprint, `footprints[${i}]`);
	});
	const starts: number[] = [];
	for (const [i, footprint] of footprints.entries()) {
		if (next + footprint - 1 > LAST_SLOT) return { starts, stopsAt: i };
		starts.push(next);
		next += footprint;
	}
	return { starts, stopsAt: null };
}

/** The highest universe number. Source: ANSI E1.31, universes 1 to 63999 carry data (read in restatements). */
export const LAST_UNIVERSE = 63999;

/** One slot of one universe: universe 1 to 63999, slot 1 to 512. */
export type UniverseSlot = { readonly universe: number; readonly slot: number };

/** Hands a universe number back if it is one: a whole number from 1 to 63999. Throws `universe.range`. */
export function requireUniverse(universe: number, path = 'universe'): number {
	return requireWhole(universe, { lo: 1, hi: LAST_UNIVERSE, code: 'universe.range', path, of: 'universe' });
}

/**
 * The number a slot has when all universes are counted through, 512 a universe, from 1: universe 2 slot 1 is 513.
 * Common practice among desks, no source.
 * @throws InputError `universe.range`, `address.range`.
 */
export function toAbsolute(universe: number, slot: number): number {
	return (requireUniverse(universe) - 1) * LAST_SLOT + requireAddress(slot, 'slot', 'slot');
}

/**
 * The universe and slot of a number counted through all universes (1 to 32767488): 513 is universe 2 slot 1.
 * @throws InputError `absolute.range`.
 */
export function fromAbsolute(absolute: number): UniverseSlot {
	requireWhole(absolute, {
		lo: 1,
		hi: LAST_UNIVERSE * LAST_SLOT,
		code: 'absolute.range',
		path: 'absolute',
		of: 'absolute-address',
	});
	const before = absolute - 1;
	return { universe: Math.floor(before / LAST_SLOT) + 1, slot: (before % LAST_SLOT) + 1 };
}

/**
 * Where fixtures of these footprints go, back to back from a spot, moving on to slot 1 of the next universe when one
 * does not fit: a fixture never lies across two universes.
 * @throws InputError `universe.range` (also when the universes run out), `address.range`, `footprint.range`.
 */
export function spread(from: UniverseSlot, footprints: readonly number[]): UniverseSlot[] {
	let universe = requireUniverse(from.universe, 'from.universe');
	let slot = requireAddress(from.slot, 'from.slot', 'slot');
	return footprints.map((footprint, i) => {
		requireFootprint(footprint, `footprints[${i}]`);
		if (slot + footprint - 1 > LAST_SLOT) {
			universe = requireUniverse(universe + 1, `footprints[${i}]`);
			slot = 1;
		}
		const spot = { universe, slot };
		slot += footprint;
		return spot;
	});
}
