import { type RigSheet, splitPort } from '../../shared/sheet/index.ts';
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

/** The device a check on a cable is made at: where its near end is. */
export function cableSpot(sheet: RigSheet, id: string): string {
	const cable = sheet.cables.find((each) => each.id === id);
	const port = cable?.from ?? cable?.to;
	return port ? splitPort(port).device : 'desk';
}
