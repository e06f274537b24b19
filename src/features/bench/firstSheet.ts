import { presetNames } from '#words/bench/index.ts';
import type { SomeSettings } from '../../../shared/profile/index.ts';
import {
	GOOD_WIRES,
	noBoxes,
	type RigSheet,
	type SheetCable,
	type SheetDesk,
	type SheetFixture,
} from '../../../shared/sheet/index.ts';

/** A bench with nothing on it. */
export const emptySheet = (): RigSheet => ({
	version: 1,
	name: presetNames.rig,
	hall: { width: 16, height: 6 },
	fixtures: [],
	desk: null,
	...noBoxes(),
	cables: [],
	terminators: [],
	remote: { code: 1, battery: true },
	profiles: [],
});

/** A battery wash on the floor, switched on, its nine slots unless told otherwise. */
export const tallow = (n: number, x: number, settings: SomeSettings): SheetFixture => ({
	id: `wash-${n}`,
	name: presetNames.wash(n),
	profile: 'tallow-6',
	place: { x, y: 0, throw: 3.4, overhead: false },
	settings,
	on: true,
	plug: 'none',
	charge: 1,
	hidden: false,
});

/** A sound five-metre data cable. */
export const cable = (n: number, from: string, to: string): SheetCable => ({
	id: `cable-${n}`,
	kind: 'data',
	length: 5,
	from,
	to,
	...GOOD_WIRES,
});

export const patchAt = (fixture: string, universe: number, address: number, mode: string) => ({
	fixture,
	universe,
	address,
	mode,
});

/** Levels from a slot on. */
export const lineOf = (universe: number, from: number, values: readonly number[]): SheetDesk['levels'] =>
	values.flatMap((level, i) => (level > 0 ? { universe, slot: from + i, level } : []));

/** Slots of the wash's nine-slot mode: intensity, function, speed, red, green, blue, white, amber, ultraviolet. */
export const LOOKS = [
	[255, 0, 0, 0, 0, 0, 90, 255, 0],
	[255, 0, 0, 255, 0, 110, 30, 0, 0],
	[255, 0, 0, 20, 0, 255, 0, 0, 0],
	[255, 0, 0, 0, 230, 90, 0, 0, 0],
] as const;

/** The bench of a first visit: four battery washes back to back on one universe, all lit. */
export const fourInLine = (): RigSheet => {
	const at = LOOKS.map((look, i) => ({ look, i, id: `wash-${i + 1}`, address: 1 + 9 * i }));
	return {
		...emptySheet(),
		fixtures: at.map(({ i, address }) => tallow(i + 1, 2 + 4 * i, { work: 'line', address })),
		desk: {
			name: presetNames.desk,
			outputs: [{ id: 'a', universe: 1, on: true }],
			patch: at.map(({ id, address }) => patchAt(id, 1, address, 'middle')),
			levels: at.flatMap(({ look, address }) => lineOf(1, address, look)),
			master: 255,
		},
		cables: at.map(({ i, id }) => cable(i + 1, i === 0 ? 'desk:a' : `wash-${i}:out`, `${id}:in`)),
		terminators: ['wash-4:out'],
	};
};
