import { InputError } from '../error/index.ts';
import { LAST_SLOT, requireAddress, requireFootprint, requireUniverse } from './address.ts';

/** The slots a fixture takes: universe 1 to 63999, start 1 to 512, footprint 0 to 512 (0: it takes none). */
export type Placement = { readonly universe: number; readonly start: number; readonly footprint: number };

/** A placement with the fixture's id. */
export type NamedPlacement = Placement & { readonly id: string };

/** Two fixtures that listen to the same slots. */
export type Overlap = {
	/** The one that starts lower (or, starting equal, stands earlier in the list). */
	readonly first: string;
	readonly second: string;
	readonly universe: number;
	/** The first and last slot they share, both included. */
	readonly from: number;
	readonly to: number;
	/** True when start and footprint are equal: often meant, so that two fixtures move as one. */
	readonly identical: boolean;
};

function checkPlacement(placement: Placement, path: string): void {
	requireUniverse(placement.universe, `${path}.universe`);
	requireAddress(placement.start, `${path}.start`);
	if (placement.footprint !== 0) requireFootprint(placement.footprint, `${path}.footprint`);
}

/** The last slot that is really sent to it: what runs past 512 reaches nobody. */
function lastSent(placement: Placement): number {
	return Math.min(placement.start + placement.footprint - 1, LAST_SLOT);
}

/**
 * Every pair of fixtures that share slots, by universe, then by the start of the second, then of the first.
 * Slots past 512 are not counted, and a footprint of 0 shares nothing.
 * @throws InputError `universe.range`, `address.range`, `footprint.range`, or `id.twice` when an id stands twice.
 */
export function overlaps(placements: readonly NamedPlacement[]): Overlap[] {
	const ids = new Set<string>();
	placements.forEach((placement, i) => {
		checkPlacement(placement, `[${i}]`);
		if (ids.has(placement.id)) {
			throw new InputError('id.twice', `[${i}].id`, { trouble: 'id-twice', id: placement.id });
		}
		ids.add(placement.id);
	});

	const found: Overlap[] = [];
	let open: NamedPlacement[] = []; // those that may still reach into the next one
	const inOrder = placements
		.filter((placement) => placement.footprint > 0)
		.sort((a, b) => a.universe - b.universe || a.start - b.start);
	for (const second of inOrder) {
		open = open.filter((first) => first.universe === second.universe && lastSent(first) >= second.start);
		for (const first of open) {
			found.push({
				first: first.id,
				second: second.id,
				universe: second.universe,
				from: second.start,
				to: Math.min(lastSent(first), lastSent(second)),
				identical: first.start === second.start && first.footprint === second.footprint,
			});
		}
		open.push(second);
	}
	return found;
}

/** Where to look for a free address. */
export type PlacementSearch = {
	/** 1 to 63999; 1 unless told. */
	readonly universe?: number;
	/** The lowest start address to take, 1 to 512; 1 unless told. */
	readonly from?: number;
};

/**
 * The lowest start address at which a footprint fits into one universe without touching a taken slot, or null when it
 * fits nowhere.
 * @throws InputError `universe.range`, `address.range`, `footprint.range`.
 */
export function nextFreeAddress(
	taken: readonly Placement[],
	footprint: number,
	search: PlacementSearch = {},
): number | null {
	requireFootprint(footprint);
	const universe = requireUniverse(search.universe ?? 1);
	let start = requireAddress(search.from ?? 1, 'from');
	taken.forEach((placement, i) => {
		checkPlacement(placement, `taken[${i}]`);
	});

	const here = taken
		.filter((placement) => placement.universe === universe && placement.footprint > 0)
		.sort((a, b) => a.start - b.start);
	for (const placement of here) {
		if (start + footprint - 1 < placement.start) break;
		start = Math.max(start, lastSent(placement) + 1);
	}
	return start + footprint - 1 <= LAST_SLOT ? start : null;
}

/**
 * How many slots of one universe are taken (0 to 512), each counted once however many fixtures share it.
 * @throws InputError `universe.range`, `address.range`, `footprint.range`.
 */
export function slotsTaken(taken: readonly Placement[], universe = 1): number {
	requireUniverse(universe);
	const used = new Uint8Array(LAST_SLOT + 1);
	taken.forEach((placement, i) => {
		checkPlacement(placement, `taken[${i}]`);
		if (placement.universe === universe) used.fill(1, placement.start, placement.start + placement.footprint);
	});
	return used.reduce((sum, one) => sum + one, 0);
}

/**
 * How many slots of one universe are free (0 to 512): 512 less those taken.
 * @throws InputError `universe.range`, `address.range`, `footprint.range`.
 */
export function slotsLeft(taken: readonly Placement[], universe = 1): number {
	return LAST_SLOT - slotsTaken(taken, universe);
}

/**
 * How many more fixtures of one footprint find room in a universe without touching a taken slot; fewer than the free slots
 * would hold where they lie in gaps too small.
 * @throws InputError `universe.range`, `address.range`, `footprint.range`.
 */
export function howManyMore(taken: readonly Placement[], footprint: number, universe = 1): number {
	let more = 0;
	let from: number | null = nextFreeAddress(taken, footprint, { universe });
	while (from !== null) {
		more++;
		const after: number = from + footprint;
		from = after > LAST_SLOT ? null : nextFreeAddress(taken, footprint, { universe, from: after });
	}
	return more;
}
