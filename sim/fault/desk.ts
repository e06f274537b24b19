import { footprintOf, modeOf, type Slot } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { deskOf, levelsOn, meant } from './sheet.ts';
import type { Fault, FaultSpot, RepairId } from './types.ts';

type PatchLine = NonNullable<RigSheet['desk']>['patch'][number];

const patches = (sheet: RigSheet): readonly PatchLine[] => sheet.desk?.patch ?? [];
const outputs = (sheet: RigSheet): FaultSpot[] =>
	(sheet.desk?.outputs ?? []).filter(({ on }) => on).map(({ id }) => ({ place: id }));
const chart = (sheet: RigSheet, patch: PatchLine): readonly Slot[] =>
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

/** A start code that is not levels: text (E1.11 annex; from memory). */
const OTHER_CODE = 0x17;

const startCodeOf = (sheet: RigSheet, output: string): number =>
	deskOf(sheet).outputs.find(({ id }) => id === output)?.startCode ?? 0;

/** The desk sends what stands, whatever its faders do: nobody changed anything, so only what they move next shows it. */
function held(id: string, weight: number, repair: RepairId, by: 'blind' | 'frozen'): Fault {
	return {
		id,
		since: 2,
		family: 'desk',
		weight,
		repair,
		cautions: [],
		spots: (sheet) => (sheet.desk && !sheet.desk.held ? [{ place: 'desk' }] : []),
		events: () => [{ type: 'desk.hold', by }],
	};
}

/** The desk takes the fixture to be in another mode, and lays what it means by name onto that mode's slots. */
function otherMode(sheet: RigSheet, place: string, mode: string): RigEvent[] {
	const patch = patches(sheet).find(({ fixture }) => fixture === place);
	const { profile } = meant(sheet, place);
	const wanted = profile.modes.find(({ id }) => id === mode);
	if (!patch || !wanted) return [];
	const levelAt = (slot: number): number =>
		deskOf(sheet).levels.find((level) => level.universe === patch.universe && level.slot === slot)?.level ?? 0;
	const meantSlots = chart(sheet, patch);
	const doing = ({ drives }: Slot): string =>
		drives.kind === 'emitter' ? `${drives.emitter}` : drives.kind === 'bands' ? 'bands' : drives.kind;
	const mine = levelsOn(sheet, place, footprintOf(modeOf(profile, patch.mode)));
	const rest = deskOf(sheet).levels.filter((level) => !mine.includes(level));
	const moved = wanted.slots.flatMap((slot) => {
		const same = meantSlots.find((each) => doing(each) === doing(slot));
		if (!same) return [];
		const level = levelAt(patch.address + same.at - 1);
		const fine = same.fine === undefined ? level : levelAt(patch.address + same.fine - 1);
		return [
			{ slot: patch.address + slot.at - 1, level },
			...(slot.fine === undefined ? [] : [{ slot: patch.address + slot.fine - 1, level: fine }]),
		];
	});
	return [
		{ type: 'desk.patch', ...patch, mode },
		{
			type: 'desk.recall',
			levels: [
				// its own slots alone: what it now sends on past them another's chart may read
				...rest.filter(
					({ universe, slot }) => universe !== patch.universe || !moved.some((each) => each.slot === slot),
				),
				...moved
					.filter(({ slot, level }) => slot <= 512 && level > 0)
					.map(({ slot, level }) => ({ universe: patch.universe, slot, level })),
			],
		},
	];
}

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
	{
		// as common as patched at another address: the mode is picked from a list of the same names
		id: 'patched-other-mode',
		since: 2,
		family: 'desk',
		weight: 6,
		repair: 'set-patch',
		cautions: [],
		spots: (sheet) =>
			patches(sheet).flatMap(({ fixture, mode }) => {
				const others = meant(sheet, fixture).profile.modes.filter(({ id }) => id !== mode);
				return others.map(({ id }) => ({ place: fixture, detail: id, share: 1 / others.length }));
			}),
		events: (sheet, { place, detail }) => otherMode(sheet, place, detail ?? ''),
	},
	held('desk-blind', 4, 'leave-blind', 'blind'),
	held('desk-frozen', 1, 'restart-desk', 'frozen'),
	{
		// somebody tried the outputs' setup: seldom
		id: 'start-code-wrong',
		since: 2,
		family: 'desk',
		weight: 1,
		repair: 'set-start-code',
		cautions: [],
		spots: (sheet) => outputs(sheet).filter(({ place }) => startCodeOf(sheet, place) === 0),
		events: (_, { place }) => [{ type: 'desk.start-code', output: place, code: OTHER_CODE }],
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
