import { presetNames } from '#words/bench/index.ts';
import { switchesFor } from '../../../shared/dmx/index.ts';
import type { SomeSettings } from '../../../shared/profile/index.ts';
import type { RigSheet, SheetDesk, SheetFixture } from '../../../shared/sheet/index.ts';
import { cable, emptySheet, fourInLine, LOOKS, lineOf, patchAt, tallow } from './firstSheet.ts';

/** Ready-made benches, permanent ids. Their names are in `content/en/bench`. */
export const PRESET_IDS = ['one', 'four', 'leader', 'mixed', 'universes'] as const;
export type PresetId = (typeof PRESET_IDS)[number];

const bar = (n: number, x: number, settings: SomeSettings): SheetFixture => ({
	...tallow(n, x, settings),
	id: `bar-${n}`,
	name: presetNames.bar(n),
	profile: 'picket-8',
	place: { x, y: 5, throw: 2.2, overhead: true },
	plug: 'wall',
});

const old: SheetFixture = {
	...tallow(2, 13.5, {}),
	name: presetNames.old,
	profile: 'cobble',
	place: { x: 13.5, y: 0, throw: 4.6, overhead: false },
	switches: [...switchesFor(21, 'sum'), false],
	slides: [1, 0, 0],
	plug: 'wall',
};

const desk = (universes: number[], patch: SheetDesk['patch'], levels: SheetDesk['levels'][]): SheetDesk => ({
	name: presetNames.desk,
	outputs: universes.map((universe, i) => ({ id: 'ab'.charAt(i), universe, on: true })),
	patch,
	levels: levels.flat(),
	master: 255,
});

const places = [2, 6, 10, 14];

const sheets: Readonly<Record<PresetId, () => Partial<RigSheet>>> = {
	one: () => ({
		fixtures: [{ ...tallow(1, 8, { mode: 'short' }), on: false }],
		desk: desk([1], [patchAt('wash-1', 1, 10, 'middle')], [lineOf(1, 10, LOOKS[1])]),
	}),
	four: fourInLine,
	leader: () => {
		const { cables = [], terminators = [] } = fourInLine();
		const [, ...rest] = cables;
		const lead: SomeSettings = { work: 'programme', programme: 'drift', speed: 85, lead: 'on' };
		return {
			fixtures: places.map((x, i) => tallow(i + 1, x, i === 0 ? lead : { work: 'follow' })),
			cables: rest,
			terminators,
		};
	},
	mixed: () => ({
		fixtures: [tallow(1, 2.5, { work: 'line', address: 1 }), bar(1, 8, { address: 10, mode: 'halves' }), old],
		desk: desk(
			[1],
			[patchAt('wash-1', 1, 1, 'middle'), patchAt('bar-1', 1, 10, 'halves'), patchAt('wash-2', 1, 21, 'five')],
			[
				lineOf(1, 1, LOOKS[0]),
				lineOf(1, 10, [0, 0, 255, 90, 255, 60, 0, 0, 255, 0, 40]),
				lineOf(1, 21, [0, 255, 0, 200, 255]),
			],
		),
		cables: [cable(1, 'desk:a', 'wash-1:in'), cable(2, 'wash-1:out', 'bar-1:in'), cable(3, 'bar-1:out', 'wash-2:in')],
		terminators: ['wash-2:out'],
	}),
	universes: () => ({
		fixtures: places.map((x, i) => bar(i + 1, x, { mode: 'cells', address: 1 + 35 * (i % 2) })),
		desk: desk(
			[1, 2],
			places.map((_, i) => patchAt(`bar-${i + 1}`, i < 2 ? 1 : 2, 1 + 35 * (i % 2), 'cells')),
			places.map((_, i) => lineOf(i < 2 ? 1 : 2, 1 + 35 * (i % 2), cellsLook(i < 2))),
		),
		cables: [
			cable(1, 'desk:a', 'bar-1:in'),
			cable(2, 'bar-1:out', 'bar-2:in'),
			cable(3, 'desk:b', 'bar-3:in'),
			cable(4, 'bar-3:out', 'bar-4:in'),
		],
		terminators: ['bar-2:out', 'bar-4:out'],
	}),
};

/** Shutter open, intensity full, then blue, green, red and warm white for each of eight cells. */
const cellsLook = (warm: boolean): number[] => [
	40,
	255,
	0,
	...Array.from({ length: 8 }, (_, n) => [n * 36, warm ? 0 : 160, 255 - n * 32, n % 2 ? 0 : 60]).flat(),
];

/** The sheet of a ready-made bench. */
export const presetSheet = (id: PresetId): RigSheet => ({ ...emptySheet(), ...sheets[id]() });
