import { boxesOf, type RigSheet, splitPort } from '../../shared/sheet/index.ts';
import { MENDS, type Need, type RepairId } from '../fault/index.ts';
import type { Rig } from '../rig/index.ts';

/** How a sheet is wired, for a tech who walks it: who comes before whom. */
export interface Route {
	/** Fixtures of one line from the talker on, each with the cable that reaches it. */
	readonly order: readonly { readonly fixture: string; readonly cable: string | null }[];
}

/** The line a fixture hangs on, as the sheet means it: fixtures by how far down they are. */
export function routeOf(meant: Rig, fixture: string): Route {
	const mine = meant.gear.receptions.get(fixture);
	const source = mine?.talker ? JSON.stringify(mine.talker) : null;
	const order = [...meant.gear.receptions.values()]
		.filter(
			(reception) => reception.fixture === fixture || (source !== null && JSON.stringify(reception.talker) === source),
		)
		.map((reception) => ({
			fixture: reception.fixture,
			cable: reception.path.at(-1)?.cable ?? null,
			depth: reception.path.length,
		}))
		.sort((a, b) => a.depth - b.depth);
	return { order: order.map(({ fixture: id, cable }) => ({ fixture: id, cable })) };
}

/** The fixture meant to lead, if any. */
export function leaderOf(meant: Rig): string | null {
	for (const [id, unit] of meant.gear.units) {
		const { lead, work } = unit.state.context.settings;
		if (lead === 'on' && (work === 'held' || work === 'programme')) return id;
	}
	return null;
}

/** Where one stands to lay a hand on something, and what that takes. */
export interface StandingPlace {
	/** A device, or the place up beside one that hangs. */
	readonly at: string;
	readonly needs: readonly Need[];
	readonly cautions: readonly string[];
}

const isHigh = (sheet: RigSheet, device: string): boolean =>
	sheet.fixtures.find(({ id }) => id === device)?.place.overhead ?? false;

/** At a device; where it hangs, up a ladder beside it. */
export const standAt = (sheet: RigSheet, device: string): StandingPlace =>
	isHigh(sheet, device)
		? { at: upAt(device), needs: ['ladder'], cautions: ['height', 'hanging'] }
		: { at: device, needs: [], cautions: [] };

/**
 * At a cable.
 * @param both whether both its ends are looked at or handled: then up where either hangs, and otherwise from the floor where either can
 */
export function standAtCable(sheet: RigSheet, id: string, both: boolean): StandingPlace {
	const cable = sheet.cables.find((each) => each.id === id);
	const ends = [cable?.from, cable?.to].flatMap((port) => (port ? [splitPort(port).device] : []));
	const wanted = ends.find((device) => isHigh(sheet, device) === both);
	return standAt(sheet, wanted ?? ends[0] ?? 'desk');
}

/** At where a repair is done. */
export function standForRepair(
	sheet: RigSheet,
	{ id, place }: { readonly id: RepairId; readonly place: string },
): StandingPlace {
	if (MENDS[id].needs.includes('desk')) return standAt(sheet, 'desk');
	if (sheet.cables.some((cable) => cable.id === place)) return standAtCable(sheet, place, true);
	if (place === 'rig' || place === 'remote') return standAt(sheet, 'hand');
	// the socket is in the wall, wherever the fixture hangs
	if (id === 'other-socket') return { at: place, needs: [], cautions: [] };
	return standAt(sheet, place.includes(':') ? splitPort(place).device : place);
}

/** Seconds to pull the plug of a row at the wall, and to put it back last (common practice, no source). */
const ISOLATE = 30;

/** Whether a repair moves a lead that hangs on another fixture's link: its row is isolated for that, and goes dark. */
export const isolatesFor = (
	sheet: RigSheet,
	{ id, place }: { readonly id: RepairId; readonly place: string },
): boolean => id === 'plug-mains' && sheet.fixtures.some((fixture) => fixture.id === place && fixture.plug !== 'wall');

/** Seconds of a repair for a hand that stands there already. */
export const repairSeconds = (sheet: RigSheet, repair: { readonly id: RepairId; readonly place: string }): number =>
	MENDS[repair.id].seconds + (isolatesFor(sheet, repair) ? ISOLATE : 0);

/** The same with the climb, for a hand that stands on the floor. */
export const repairSecondsFromFloor = (
	sheet: RigSheet,
	repair: { readonly id: RepairId; readonly place: string },
): number => repairSeconds(sheet, repair) + (standForRepair(sheet, repair).needs.includes('ladder') ? CLIMB : 0);

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
const upAt = (fixture: string): string => `${fixture}:up`;

/** Where the tech can stand, and the seconds between any two. */
export interface WalkTable {
	readonly places: readonly string[];
	/** Row by row, seconds from place to place. */
	readonly walk: Float64Array;
	/** The number of a place; `hand` is wherever the tech is, and so the first. */
	indexOf(place: string): number;
}

/** The ground a sheet's fixtures and desk stand on, with a place up beside each that hangs. `hand` lies no way from anywhere, but for the climb. */
export function groundOf(sheet: RigSheet): WalkTable {
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
