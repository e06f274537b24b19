import { boxesOf, type RigSheet } from '../../shared/sheet/index.ts';

/** Metres a second of a tech between cases and people (common practice, no source). */
const PACE = 1;

/** Metres from the wall to where a desk stands (common practice, no source). */
const DESK_BACK = 10;

/**
 * Seconds to go up once: ladder fetched and footed, up with both hands free, and down again (common practice, no source; 60 is the
 * least). The one place where this number lives: what is done up there on one climb shares it, since it is a way like any other.
 */
export const CLIMB = 60;

/** The place beside a fixture that hangs, up the ladder. */
export const upAt = (fixture: string): string => `${fixture}:up`;

/** Where the tech can stand, and the seconds between any two. */
export interface Ground {
	readonly places: readonly string[];
	/** Row by row, seconds from place to place. */
	readonly walk: Float64Array;
	/** The number of a place; `hand` is wherever the tech is, and so the first. */
	indexOf(place: string): number;
}

/** The ground a sheet's fixtures and desk stand on, with a place up beside each that hangs. `hand` lies no way from anywhere, but for the climb. */
export function groundOf(sheet: RigSheet): Ground {
	const spots = new Map<string, readonly [x: number, y: number] | null>([['hand', null]]);
	spots.set('desk', [sheet.hall.width / 2, DESK_BACK]);
	for (const { id, place } of sheet.fixtures) spots.set(id, [place.x, place.throw]);
	const high = new Map<string, string>();
	for (const { id, place } of sheet.fixtures) {
		if (!place.overhead) continue;
		spots.set(upAt(id), [place.x, place.throw]);
		high.set(upAt(id), id);
	}
	for (const { id } of boxesOf(sheet)) spots.set(id, [sheet.hall.width / 2, DESK_BACK]);
	const places = [...spots.keys()];
	const walk = new Float64Array(places.length ** 2);
	const at = [...spots.values()];
	for (let from = 0; from < places.length; from++) {
		for (let to = 0; to < places.length; to++) {
			const [a, b] = [at[from], at[to]];
			if (from === to) continue;
			const [below, foot] = [high.get(places[from] ?? '') ?? places[from], high.get(places[to] ?? '') ?? places[to]];
			const onFoot = a && b && below !== foot ? 2 + Math.hypot(a[0] - b[0], a[1] - b[1]) / PACE : 0;
			walk[from * places.length + to] = onFoot + (high.has(places[to] ?? '') ? CLIMB : 0);
		}
	}
	return { places, walk, indexOf: (place) => Math.max(0, places.indexOf(place)) };
}
