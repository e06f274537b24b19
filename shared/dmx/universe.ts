import { requireWhole } from '../error/index.ts';
import { LAST_SLOT, requireAddress, requireFootprint } from './address.ts';

/** The highest universe number. Source: ANSI E1.31, universes 1 to 63999 carry data (read in restatements). */
export const LAST_UNIVERSE = 63999;

/** One slot of one universe: universe 1 to 63999, slot 1 to 512. */
export type Spot = { readonly universe: number; readonly slot: number };

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
export function fromAbsolute(absolute: number): Spot {
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
export function spread(from: Spot, footprints: readonly number[]): Spot[] {
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
