import type { RigSheetInput } from '../schema.ts';

type Fixture = RigSheetInput['fixtures'][number];
type Cable = NonNullable<RigSheetInput['cables']>[number];
type Level = { universe: number; slot: number; level: number };

/** The made-up hall of every bundled rig. */
export const HALL = 'Lantern Row Hall';

export function wash(
	id: string,
	name: string,
	x: number,
	settings: Fixture['settings'],
	rest: Partial<Fixture> = {},
): Fixture {
	return {
		id,
		name,
		profile: 'tallow-6',
		place: { x, y: 0, throw: 3.4 },
		settings: { mode: 'middle', ...settings },
		...rest,
	};
}

export function bar(
	id: string,
	name: string,
	x: number,
	settings: Fixture['settings'],
	rest: Partial<Fixture> = {},
): Fixture {
	return {
		id,
		name,
		profile: 'picket-8',
		place: { x, y: 5, throw: 2.2, overhead: true },
		settings,
		plug: 'wall',
		...rest,
	};
}

/** Levels that stand up, from a slot on. */
export function levels(universe: number, from: number, values: readonly number[]): Level[] {
	return values.flatMap((level, i) => (level > 0 ? [{ universe, slot: from + i, level }] : []));
}

/** Cables of one length from a first socket on, through each fixture's in and out. */
export function chain(first: number, start: string, fixtures: readonly string[], length = 5): Cable[] {
	return fixtures.map((fixture, i) => ({
		id: `cable-${first + i}`,
		kind: 'data',
		length,
		from: i === 0 ? start : `${fixtures[i - 1]}:out`,
		to: `${fixture}:in`,
	}));
}

/**
 * Looks in the wash's nine-slot mode: intensity, function, speed, red, green, blue, white, amber, ultraviolet. Two colours each,
 * so that one emitter's loss shows.
 */
export const WASH_LOOKS: readonly (readonly number[])[] = [
	[255, 0, 0, 0, 0, 0, 90, 255, 0],
	[255, 0, 0, 255, 0, 110, 0, 0, 0],
	[255, 0, 0, 60, 0, 255, 0, 0, 0],
	[255, 0, 0, 0, 230, 90, 0, 0, 0],
];

/** A look in the bar's nine-slot mode: shutter, blue, green, red, warm white, intensity (two slots), function, speed. */
export const BAR_LOOK: readonly number[] = [40, 200, 0, 120, 60, 255, 255, 0, 0];
