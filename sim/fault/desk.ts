import { footprintOf, modeOf, type Slot } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { deskOf, levelsOn, meant } from './sheet.ts';
import type { Fault, FaultSpot } from './types.ts';

type PatchLine = NonNullable<RigSheet['desk']>['patch'][number];

export const patches = (sheet: RigSheet): readonly PatchLine[] => sheet.desk?.patch ?? [];
export const outputs = (sheet: RigSheet): FaultSpot[] =>
	(sheet.desk?.outputs ?? []).filter(({ on }) => on).map(({ id }) => ({ place: id }));
export const chart = (sheet: RigSheet, patch: PatchLine): readonly Slot[] =>
	modeOf(meant(sheet, patch.fixture).profile, patch.mode).slots;

/** What stands on a fixture's slots, moved by some slots: as a desk does whose patch is off. */
function movedLevels(
	sheet: RigSheet,
	place: string,
	to: { readonly universe?: number; readonly address: number },
): RigEvent[] {
	const patch = patches(sheet).find((each) => each.fixture === place);
	if (!patch) return [];
	const mine = levelsOn(sheet, place, footprintOf(modeOf(meant(sheet, place).profile, patch.mode)));
	const rest = deskOf(sheet).levels.filter((level) => !mine.includes(level));
	const moved = mine
		.map(({ slot, level }) => ({
			universe: to.universe ?? patch.universe,
			slot: slot - patch.address + to.address,
			level,
		}))
		.filter(({ slot }) => slot >= 1 && slot <= 512);
	return [
		{ type: 'desk.patch', ...patch, address: to.address, universe: to.universe ?? patch.universe },
		{ type: 'desk.recall', levels: [...rest, ...moved] },
	];
}

/** A band slot of the fixture's chart left standing in a band that does such a thing. */
function bandLeft(sheet: RigSheet, place: string, wanted: (effect: string) => boolean): RigEvent[] {
	const patch = patches(sheet).find((each) => each.fixture === place);
	if (!patch) return [];
	for (const slot of chart(sheet, patch)) {
		if (slot.drives.kind !== 'bands') continue;
		const band = slot.drives.bands.find(({ effect }) => wanted(effect.do));
		if (band)
			return [
				{
					type: 'desk.level',
					universe: patch.universe,
					slot: patch.address + slot.at - 1,
					level: Math.floor((band.from + band.to) / 2),
				},
			];
	}
	return [];
}

const withBand =
	(wanted: (effect: string) => boolean) =>
	(sheet: RigSheet): FaultSpot[] =>
		patches(sheet)
			.filter(({ fixture }) => bandLeft(sheet, fixture, wanted).length > 0)
			.map(({ fixture }) => ({ place: fixture }));

const isProgramme = (effect: string): boolean => effect === 'programme';
const isStrobe = (effect: string): boolean => effect === 'strobe';
const isDark = (effect: string): boolean => effect === 'dark';

/** Faults at the desk. */
export const DESK: readonly Fault[] = [
	{
		id: 'output-off',
		family: 'desk',
		weight: 3,
		repair: 'output-on',
		cautions: [],
		spots: outputs,
		events: (_, { place }) => [{ type: 'desk.output', output: place, on: false }],
	},
	{
		id: 'master-down',
		family: 'desk',
		weight: 5,
		repair: 'raise-master',
		cautions: [],
		spots: (sheet) =>
			sheet.desk
				? [
						{ place: 'desk', detail: 'out', share: 0.6 },
						{ place: 'desk', detail: 'low', share: 0.4 },
					]
				: [],
		events: (_, { detail }) => [{ type: 'desk.master', level: detail === 'out' ? 0 : 40 }],
	},
	{
		id: 'wrong-universe',
		family: 'desk',
		weight: 4,
		repair: 'set-universe',
		cautions: [],
		spots: outputs,
		events: (sheet, { place }) => {
			const universe = deskOf(sheet).outputs.find(({ id }) => id === place)?.universe ?? 1;
			return [{ type: 'desk.universe', output: place, universe: universe + 10 }];
		},
	},
	{
		id: 'patched-elsewhere',
		family: 'desk',
		weight: 6,
		repair: 'set-patch',
		cautions: [],
		spots: (sheet) =>
			patches(sheet)
				.filter(({ address }) => address < 500)
				.map(({ fixture }) => ({ place: fixture })),
		events: (sheet, { place }) =>
			movedLevels(sheet, place, {
				address: (patches(sheet).find(({ fixture }) => fixture === place)?.address ?? 1) + 10,
			}),
	},
	{
		id: 'patched-other-universe',
		family: 'desk',
		weight: 2,
		repair: 'set-patch',
		cautions: [],
		spots: (sheet) =>
			(sheet.desk?.outputs.length ?? 0) > 1 ? patches(sheet).map(({ fixture }) => ({ place: fixture })) : [],
		events: (sheet, { place }) => {
			const patch = patches(sheet).find(({ fixture }) => fixture === place);
			const other = deskOf(sheet).outputs.find(({ universe }) => universe !== patch?.universe);
			return patch && other ? movedLevels(sheet, place, { universe: other.universe, address: patch.address }) : [];
		},
	},
	{
		id: 'levels-down',
		family: 'desk',
		weight: 5,
		repair: 'set-levels',
		cautions: [],
		spots: (sheet) => patches(sheet).map(({ fixture }) => ({ place: fixture })),
		events: (sheet, { place }) => {
			const patch = patches(sheet).find(({ fixture }) => fixture === place);
			if (!patch) return [];
			const down = chart(sheet, patch).filter(({ drives }) => drives.kind === 'intensity');
			const slots = down.length > 0 ? down : chart(sheet, patch).filter(({ drives }) => drives.kind === 'emitter');
			return slots
				.flatMap((slot) => [slot.at, ...(slot.fine === undefined ? [] : [slot.fine])])
				.map((at) => ({
					type: 'desk.level' as const,
					universe: patch.universe,
					slot: patch.address + at - 1,
					level: 0,
				}))
				.filter(({ slot }) => slot <= 512);
		},
	},
	{
		id: 'wrong-colour-slots',
		family: 'desk',
		weight: 4,
		repair: 'set-levels',
		cautions: [],
		spots: (sheet) =>
			patches(sheet)
				.filter(({ fixture }) => colourTurn(sheet, fixture).length > 0)
				.map(({ fixture }) => ({ place: fixture })),
		events: (sheet, { place }) => colourTurn(sheet, place),
	},
	{
		id: 'function-left-up',
		family: 'desk',
		weight: 6,
		repair: 'set-levels',
		cautions: [],
		spots: withBand(isProgramme),
		events: (sheet, { place }) => bandLeft(sheet, place, isProgramme),
	},
	{
		id: 'strobe-left-up',
		family: 'desk',
		weight: 5,
		repair: 'set-levels',
		cautions: ['flashing'],
		spots: withBand(isStrobe),
		events: (sheet, { place }) => bandLeft(sheet, place, isStrobe),
	},
	{
		id: 'shutter-closed',
		family: 'desk',
		weight: 4,
		repair: 'set-levels',
		cautions: [],
		spots: withBand(isDark),
		events: (sheet, { place }) => bandLeft(sheet, place, isDark),
	},
];

/** The levels of a fixture's colour slots handed on by one: the wrong fader was raised. */
function colourTurn(sheet: RigSheet, place: string): RigEvent[] {
	const patch = patches(sheet).find(({ fixture }) => fixture === place);
	if (!patch) return [];
	const slots = chart(sheet, patch)
		.filter(({ drives }) => drives.kind === 'emitter')
		.map(({ at }) => patch.address + at - 1)
		.filter((slot) => slot <= 512);
	const level = (slot: number) =>
		deskOf(sheet).levels.find((each) => each.universe === patch.universe && each.slot === slot)?.level ?? 0;
	const turned = slots.map((slot, i) => ({ slot, level: level(slots[(i + 1) % slots.length] ?? slot) }));
	return turned
		.filter(({ slot, level: to }) => to !== level(slot))
		.map(({ slot, level: to }) => ({ type: 'desk.level', universe: patch.universe, slot, level: to }));
}
