import type { RemoteButton } from '../../../sim/event/index.ts';
import type { Gear } from '../../../sim/rig/index.ts';

/** A fixture with a sensor, as the plan shows it. */
export interface SightLine {
	readonly fixture: string;
	readonly name: string;
	readonly number: number;
	/** Along the wall and away from it, metres. */
	readonly x: number;
	readonly y: number;
	readonly hidden: boolean;
}

/** Metres from the wall to the person with the remote, and from a fixture to what hides it. */
export const PERSON = 9;

/** Fixtures with a sensor, as seen from above. */
export function sightLines(gear: Readonly<Gear>): SightLine[] {
	return [...gear.units].flatMap(([fixture, { placed, profile, hidden }], at) =>
		profile.sensor
			? { fixture, name: placed.name, number: at + 1, x: placed.place.x, y: placed.place.throw, hidden }
			: [],
	);
}

/** Buttons for held colours and programmes: those of the fixtures here that have a sensor, each once. */
export function namedButtons(
	gear: Readonly<Gear>,
	kind: 'held' | 'programme',
): { button: RemoteButton; name: string }[] {
	const names = new Map<string, string>();
	for (const { profile } of gear.units.values()) {
		if (!profile.sensor) continue;
		const list = kind === 'held' ? profile.held : profile.programmes;
		for (const { id, name } of list) if (!names.has(id)) names.set(id, name);
	}
	return [...names].map(([id, name]) => ({ button: `${kind}:${id}`, name }));
}
