import { type RigSheet, splitPort } from '../../shared/sheet/index.ts';
import { MENDS, type MendId, type Need } from '../fault/index.ts';
import type { Rig } from '../rig/index.ts';
import { CLIMB, upAt } from './walk.ts';

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
export interface Stand {
	/** A device, or the place up beside one that hangs. */
	readonly at: string;
	readonly needs: readonly Need[];
	readonly cautions: readonly string[];
}

const isHigh = (sheet: RigSheet, device: string): boolean =>
	sheet.fixtures.find(({ id }) => id === device)?.place.overhead ?? false;

/** At a device; where it hangs, up a ladder beside it. */
export const standAt = (sheet: RigSheet, device: string): Stand =>
	isHigh(sheet, device)
		? { at: upAt(device), needs: ['ladder'], cautions: ['height', 'hanging'] }
		: { at: device, needs: [], cautions: [] };

/**
 * At a cable.
 * @param both whether both its ends are looked at or handled: then up where either hangs, and otherwise from the floor where either can
 */
export function standAtCable(sheet: RigSheet, id: string, both: boolean): Stand {
	const cable = sheet.cables.find((each) => each.id === id);
	const ends = [cable?.from, cable?.to].flatMap((port) => (port ? [splitPort(port).device] : []));
	const wanted = ends.find((device) => isHigh(sheet, device) === both);
	return standAt(sheet, wanted ?? ends[0] ?? 'desk');
}

/** At where a mend is done. */
export function standForMend(sheet: RigSheet, { id, place }: { readonly id: MendId; readonly place: string }): Stand {
	if (MENDS[id].needs.includes('desk')) return standAt(sheet, 'desk');
	if (sheet.cables.some((cable) => cable.id === place)) return standAtCable(sheet, place, true);
	if (place === 'rig' || place === 'remote') return standAt(sheet, 'hand');
	return standAt(sheet, place.includes(':') ? splitPort(place).device : place);
}

/** Seconds to pull the plug of a row at the wall, and to put it back last (common practice, no source). */
const ISOLATE = 30;

/** Whether a mend moves a lead that hangs on another fixture's link: its row is isolated for that, and goes dark. */
export const isolatesFor = (sheet: RigSheet, { id, place }: { readonly id: MendId; readonly place: string }): boolean =>
	id === 'plug-mains' && sheet.fixtures.some((fixture) => fixture.id === place && fixture.plug !== 'wall');

/** Seconds of a mend for a hand that stands there already. */
export const mendSeconds = (sheet: RigSheet, mend: { readonly id: MendId; readonly place: string }): number =>
	MENDS[mend.id].seconds + (isolatesFor(sheet, mend) ? ISOLATE : 0);

/** The same with the climb, for a hand that stands on the floor. */
export const mendSecondsFromFloor = (sheet: RigSheet, mend: { readonly id: MendId; readonly place: string }): number =>
	mendSeconds(sheet, mend) + (standForMend(sheet, mend).needs.includes('ladder') ? CLIMB : 0);
