import type { RigSheet } from '../../shared/sheet/index.ts';

/** Metres a second of a tech between cases and people (common practice, no source). */
const PACE = 1;

/** Metres from the wall to where a desk stands (common practice, no source). */
const DESK_BACK = 10;

/** Where the tech can stand, and the seconds between any two. */
export interface Ground {
	readonly places: readonly string[];
	/** Row by row, seconds from place to place. */
	readonly walk: Float64Array;
	/** The number of a place; `hand` is wherever the tech is, and so the first. */
	indexOf(place: string): number;
}

/** The ground a sheet's fixtures and desk stand on. `hand` lies no way from anywhere. */
export function groundOf(sheet: RigSheet): Ground {
	const spots = new Map<string, readonly [x: number, y: number] | null>([['hand', null]]);
	spots.set('desk', [sheet.hall.width / 2, DESK_BACK]);
	for (const { id, place } of sheet.fixtures) spots.set(id, [place.x, place.throw]);
	for (const { id } of sheet.splitters) spots.set(id, [sheet.hall.width / 2, DESK_BACK]);
	const places = [...spots.keys()];
	const walk = new Float64Array(places.length ** 2);
	const at = [...spots.values()];
	for (let from = 0; from < places.length; from++) {
		for (let to = 0; to < places.length; to++) {
			const [a, b] = [at[from], at[to]];
			walk[from * places.length + to] = a && b && from !== to ? 2 + Math.hypot(a[0] - b[0], a[1] - b[1]) / PACE : 0;
		}
	}
	return { places, walk, indexOf: (place) => Math.max(0, places.indexOf(place)) };
}
