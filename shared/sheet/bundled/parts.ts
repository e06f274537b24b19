import { SETTING_KEYS, type SomeSettings } from '../../profile/index.ts';
import { GOOD_WIRES, noBoxes, type SheetDesk, type SheetFixture } from '../devices.ts';
import type { RigSheet, RigSheetInput, SheetCable } from '../schema.ts';

type Fixture = RigSheetInput['fixtures'][number];
type SlotLevel = { universe: number; slot: number; level: number };

/** The made-up hall of every bundled rig. */
export const HALL = 'Lantern Row Hall';

/** Four places across it, metres from house left, and what each is called. */
export const ACROSS = [2, 6, 10, 14];
export const SIDES = ['house left', 'centre left', 'centre right', 'house right'];

interface RigLayout extends Pick<RigSheetInput, 'name' | 'fixtures' | 'hall' | 'desk' | 'terminators'> {
	readonly cables?: SheetCable[];
	readonly remote?: { code: number };
}

/** The whole sheet, as `readSheet` would give it (a test holds it to that): what is bundled needs no schema. */
export function wholeSheet({ name, hall, fixtures, desk, cables = [], terminators = [], remote }: RigLayout): RigSheet {
	return {
		version: 1,
		name,
		hall: hall ?? { width: 16, height: 6 },
		fixtures: fixtures.map(wholeFixture),
		desk: desk ? wholeDesk(desk) : null,
		...noBoxes(),
		cables,
		terminators,
		remote: remote ? { code: remote.code, battery: true } : null,
		profiles: [],
	};
}

function wholeFixture({
	id,
	name,
	profile,
	place,
	settings = {},
	switches,
	slides,
	plug = 'none',
}: Fixture): SheetFixture {
	const { x, y, throw: far, overhead = false } = place;
	return {
		id,
		name,
		profile,
		place: { x, y, throw: far, overhead },
		settings: inOrder(settings),
		...(switches ? { switches } : {}),
		...(slides ? { slides } : {}),
		on: true,
		plug,
		charge: 1,
		hidden: false,
	};
}

/** In the order of the schema: the sheet's text is the same then as that of a sheet that was read. */
const inOrder = (settings: SomeSettings): SomeSettings =>
	Object.fromEntries(SETTING_KEYS.filter((key) => key in settings).map((key) => [key, settings[key]]));

const wholeDesk = ({ name, outputs, patch, levels = [] }: NonNullable<RigLayout['desk']>): SheetDesk => ({
	name,
	outputs: outputs.map(({ id, universe }) => ({ id, universe, on: true })),
	patch,
	levels,
	master: 255,
});

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
export function levels(universe: number, from: number, values: readonly number[]): SlotLevel[] {
	return values.flatMap((level, i) => (level > 0 ? [{ universe, slot: from + i, level }] : []));
}

/** Cables of one length from a first socket on, through each fixture's in and out. */
export function chain(first: number, start: string, fixtures: readonly string[], length = 5): SheetCable[] {
	return fixtures.map((fixture, i) => ({
		id: `cable-${first + i}`,
		kind: 'data',
		length,
		from: i === 0 ? start : `${fixtures[i - 1]}:out`,
		to: `${fixture}:in`,
		...GOOD_WIRES,
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
