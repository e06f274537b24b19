import { footprintOf, modeOf } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { FixtureCondition } from '../light/index.ts';
import { levelsOn, meant, meantOf } from './sheet.ts';
import type { Fault } from './types.ts';

const everywhere = (sheet: RigSheet) => sheet.fixtures.map(({ id }) => ({ place: id }));

function inside(id: string, weight: number, change: Partial<FixtureCondition>, more: Partial<Fault> = {}): Fault {
	return {
		id,
		family: 'fixture',
		weight,
		repair: 'swap-fixture',
		cautions: [],
		spots: everywhere,
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change }],
		...more,
	};
}

/** Faults of the fixture itself, and of the light on its way out. */
export const LAMP: readonly Fault[] = [
	{
		...inside('emitter-dead', 3, {}),
		spots: (sheet) =>
			meantOf(sheet).flatMap(({ fixture, profile }) =>
				profile.emitters.map(({ id }) => ({ place: fixture.id, detail: id, share: 1 / profile.emitters.length })),
			),
		events: (_, { place, detail }) => [
			{ type: 'condition.become', fixture: place, change: { deadEmitters: detail ? [detail] : [] } },
		],
	},
	inside('receiver-dead', 2, { receiverDead: true }),
	inside('folded-back', 3, { foldBack: 0.15 }, { repair: 'let-cool', cautions: ['hot'] }),
	inside(
		'display-dead',
		1,
		{ displayDead: true },
		{
			spots: (sheet) =>
				meantOf(sheet)
					.filter(({ isDip }) => !isDip)
					.map(({ fixture }) => ({ place: fixture.id })),
		},
	),
	inside(
		'microphone-dead',
		1,
		{ microphoneDead: true },
		{
			spots: (sheet) =>
				meantOf(sheet)
					.filter(({ profile, settings }) => profile.microphone && settings.work === 'programme')
					.map(({ fixture }) => ({ place: fixture.id })),
		},
	),
	inside('lens-covered', 3, { covered: true }, { family: 'light', repair: 'clear-lens', cautions: ['staring', 'hot'] }),
	{
		id: 'ultraviolet-alone',
		family: 'light',
		weight: 3,
		repair: 'set-levels',
		cautions: ['ultraviolet'],
		spots: (sheet) =>
			meantOf(sheet)
				.filter(({ fixture }) => ultravioletSlot(sheet, fixture.id) !== null)
				.map(({ fixture }) => ({ place: fixture.id })),
		events: (sheet, { place }) => {
			const uv = ultravioletSlot(sheet, place);
			if (uv === null) return [];
			return [
				...uv.others.map((slot) => ({ type: 'desk.level' as const, universe: uv.universe, slot, level: 0 })),
				{ type: 'desk.level', universe: uv.universe, slot: uv.slot, level: 255 },
			];
		},
	},
];

/** Where a patched fixture's ultraviolet slot is, and its other colour slots that stand up. */
function ultravioletSlot(sheet: RigSheet, id: string): { universe: number; slot: number; others: number[] } | null {
	const patch = sheet.desk?.patch.find(({ fixture }) => fixture === id);
	if (!patch) return null;
	const { profile } = meant(sheet, id);
	const mode = modeOf(profile, patch.mode);
	const isUv = (emitter: string) => profile.emitters.some((each) => each.id === emitter && each.ultraviolet);
	const colours = mode.slots.flatMap(({ at, drives }) =>
		drives.kind === 'emitter' ? [{ slot: patch.address + at - 1, uv: isUv(drives.emitter) }] : [],
	);
	const uv = colours.find((each) => each.uv);
	if (!uv || uv.slot > 512) return null;
	const up = new Set(
		levelsOn(sheet, id, footprintOf(mode))
			.filter(({ level }) => level > 0)
			.map(({ slot }) => slot),
	);
	return {
		universe: patch.universe,
		slot: uv.slot,
		others: colours.filter((each) => !each.uv && up.has(each.slot)).map(({ slot }) => slot),
	};
}
