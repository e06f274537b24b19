import { footprintOf, modeOf, type Slot } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { chart, outputs, patches } from './desk.ts';
import { deskOf, levelsOn, meant } from './sheet.ts';
import type { Fault, RepairId } from './types.ts';

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

/** Faults of how a desk stands: what it takes a fixture for, and whether it sends what its faders say. */
export const DESK_STATE: readonly Fault[] = [
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
