import type { Profile, Slot } from '../../../shared/profile/index.ts';
import { bundledRig, profileFor, type RigId } from '../../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../../../sim/event/index.ts';
import { faultEvents, placedFaults } from '../../../sim/fault/index.ts';
import { repairText } from '../../../sim/finder/table.ts';
import type { FixtureCondition } from '../../../sim/light/index.ts';
import { drivesEmitter, idle, recharted, swapped, type UnknownFault, whole } from './unknown.ts';

/**
 * Faults outside the catalogue by rule: a family says what goes wrong, and place, device, direction and how it comes and goes are varied
 * over the bundled rigs. Ours; none was met.
 */

interface Stand {
	readonly rig: RigId;
	readonly fixture: string;
	readonly profile: Profile;
}

const standOf = (rig: RigId, fixture: string): Stand => {
	const sheet = bundledRig(rig);
	const placed = sheet.fixtures.find(({ id }) => id === fixture);
	return { rig, fixture, profile: profileFor(sheet, placed?.profile ?? '') };
};

const [washOne, wash, washFour, barOne, bar, barFour, mixedBar, oldOne, old] = (
	[
		['four-in-line', 'wash-1'],
		['four-in-line', 'wash-3'],
		['four-in-line', 'wash-4'],
		['two-universes', 'bar-1'],
		['two-universes', 'bar-2'],
		['two-universes', 'bar-4'],
		['mixed-panels', 'bar-1'],
		['mixed-panels', 'old-1'],
		['mixed-panels', 'old-2'],
	] as const
).map(([rig, fixture]) => standOf(rig, fixture)) as [Stand, Stand, Stand, Stand, Stand, Stand, Stand, Stand, Stand];
const [led, ledLast, alone] = [
	standOf('leader-and-three', 'wash-2'),
	standOf('leader-and-three', 'wash-4'),
	standOf('one-wash', 'wash-1'),
] as [Stand, Stand, Stand];
const DESK = [washOne, wash, washFour, barOne, bar, barFour, mixedBar, oldOne, old];

const at = (
	{ rig, fixture }: Stand,
	what: string,
	more: Omit<UnknownFault, 'id' | 'rig' | 'fixture'>,
): UnknownFault => ({
	id: `${what}, ${fixture} of ${rig}`,
	rig,
	fixture,
	...more,
});

const each = <T>(stands: readonly Stand[], list: readonly T[], make: (stand: Stand, item: T) => UnknownFault[]) =>
	stands.flatMap((stand) => list.flatMap((item) => make(stand, item)));

const colours = ({ profile }: Stand): string[] =>
	profile.emitters.filter((one) => !one.ultraviolet).map(({ id }) => id);

/** Inside the fixture: the chart is read otherwise than it is printed. */
const CHARTS: readonly UnknownFault[] = [
	// so many slots late, and so many early
	...each(DESK, [1, 2, 3, -1, -2], (stand, by) => [
		at(stand, `reads ${by} on`, { inside: (profile) => movedBy(profile, by) }),
	]),
	...each(DESK, [0, 1], (stand, pair) => {
		const [one, two] = [colours(stand)[pair], colours(stand)[pair + 1]];
		return one && two ? [at(stand, `${one} and ${two} changed over`, { inside: recharted(swapped(one, two)) })] : [];
	}),
	...each(DESK, [0, 1, 2], (stand, which) => {
		const dead = colours(stand)[which] ?? '';
		return [
			at(stand, `the slot of ${dead} does nothing`, {
				inside: recharted((slot) => (drivesEmitter(slot, dead) ? idle(slot) : slot)),
			}),
		];
	}),
	...each([wash, bar, old], ['held', 'programme'] as const, (stand, kind) => {
		const shown = stand.profile[kind === 'held' ? 'held' : 'programmes'][1]?.id ?? '';
		const effect =
			kind === 'held' ? { do: 'held' as const, held: shown } : { do: 'programme' as const, programme: shown };
		return [
			at(stand, `${shown} whatever comes`, {
				inside: recharted((slot) =>
					slot.at > 1
						? idle(slot)
						: {
								id: slot.id,
								name: slot.name,
								at: 1,
								drives: { kind: 'bands', bands: [{ id: 'stuck', name: 'stuck', from: 0, to: 255, effect }] },
							},
				),
			}),
		];
	}),
	// brightness the wrong way round, or no more than on and off
	...each([washOne, wash, washFour, old], ['upside down', 'on or off'] as const, (stand, how) => [
		at(stand, `brightness ${how}`, { inside: recharted((slot) => bandsFor(slot, how === 'upside down')) }),
	]),
	...each([wash, washFour, bar, old], [1, 2], (stand, by) => [
		at(stand, `emitters wired ${by} further on`, {
			inside: (profile) => ({
				...profile,
				emitters: profile.emitters.map((one, i) => ({
					...one,
					xy: profile.emitters[(i + by) % Math.min(3, profile.emitters.length)]?.xy ?? one.xy,
				})),
			}),
		}),
	]),
	...each([alone, standOf('leader-and-three', 'wash-1')], [1, 2, 3], (stand, by) => [
		at(stand, `its static colours ${by} out of order`, {
			inside: (profile) => ({
				...profile,
				held: profile.held.map((held, i) => ({
					...held,
					levels: profile.held[(i + by) % profile.held.length]?.levels ?? held.levels,
				})),
			}),
		}),
	]),
];

/** The whole chart so many slots on, or back; what is then left empty does nothing. */
function movedBy(profile: Profile, by: number): Profile {
	const moved = (slots: readonly Slot[]): Slot[] =>
		whole(
			slots
				.map((slot) => ({ ...slot, at: slot.at + by, ...(slot.fine === undefined ? {} : { fine: slot.fine + by }) }))
				.filter((slot) => slot.at >= 1 && (slot.fine === undefined || slot.fine >= 1)),
		);
	return { ...profile, modes: profile.modes.map((mode) => ({ ...mode, slots: moved(mode.slots) })) };
}

function bandsFor(slot: Slot, isTurned: boolean): Slot {
	if (slot.drives.kind === 'bands') return idle(slot);
	if (slot.drives.kind !== 'intensity') return slot;
	const [low, high] = isTurned ? (['open', 'dark'] as const) : (['dark', 'open'] as const);
	return {
		id: slot.id,
		name: slot.name,
		at: slot.at,
		drives: {
			kind: 'bands',
			bands: [
				{ id: 'low', name: 'low', from: 0, to: 190, effect: { do: low } },
				{ id: 'high', name: 'high', from: 191, to: 255, effect: { do: high } },
			],
		},
	};
}

/** Inside the fixture, and its spare has it too: wrong again after each repair. */
const INSIDE: readonly UnknownFault[] = each(
	[wash, washFour, bar, barFour, old, led],
	[
		['hears nothing', { receiverDead: true }],
		['is too hot for good', { foldBack: 0.2 }],
		['something is grown over its lens', { covered: true }],
		['its in socket is bad again', { badSocket: 'in' }],
		['its out socket is bad again', { badSocket: 'out' }],
		['loads the line', { extraLoads: 30 }],
		['its first emitter is dead again', { deadEmitters: ['red'] }],
	] as const satisfies readonly (readonly [string, Partial<FixtureCondition>])[],
	(stand, [what, change]) => [
		at(stand, what, {
			events: () => [{ type: 'condition.become', fixture: stand.fixture, change: change as Partial<FixtureCondition> }],
		}),
	],
);

/** Faults of the catalogue that come back whatever is done: by family, what is behind them is not in it. */
const BACK: readonly (readonly [Stand, string])[] = [
	...[wash, washFour, bar, oldOne, led].flatMap((stand) =>
		[
			'switched-off',
			'wrong-mode',
			'wrong-address',
			'left-on-held',
			'left-on-programme',
			'one-switch-wrong',
			'limit-low',
		].map((fault) => [stand, fault] as const),
	),
	...[wash, bar, oldOne, ledLast].flatMap((stand) =>
		['cable-out', 'minus-open', 'wires-swapped', 'cable-too-long'].map((fault) => [stand, fault] as const),
	),
	...[washFour, bar, old].flatMap((stand) =>
		['master-down', 'output-off', 'wrong-universe', 'levels-down', 'patched-elsewhere', 'function-left-up'].map(
			(fault) => [stand, fault] as const,
		),
	),
	...[alone, wash].flatMap((stand) =>
		['battery-low', 'sensor-shut', 'remote-battery-flat', 'out-of-sight', 'fixture-other-code'].map(
			(fault) => [stand, fault] as const,
		),
	),
];

const comesBack: readonly UnknownFault[] = BACK.flatMap(([stand, fault]) => {
	const placed = nearest(stand, fault);
	if (!placed) return [];
	const sheet = bundledRig(stand.rig);
	return [at(stand, `${fault} comes back`, { events: () => faultEvents(sheet, placed) })];
});

/** The same that come and go by themselves. Which of the looks they are there for follows from the pattern. */
const PATTERNS: readonly (readonly [string, (answers: number) => boolean])[] = [
	['now and then', (n) => n % 2 === 0],
	['mostly', (n) => n % 3 !== 2],
	['seldom', (n) => n % 4 === 0],
];

const comesAndGoes: readonly UnknownFault[] = [
	...[wash, bar, oldOne, led].flatMap((stand) =>
		['cable-dead', 'minus-open', 'receiver-dead', 'switched-off', 'lens-covered', 'bad-socket-in'].map(
			(fault) => [stand, fault] as const,
		),
	),
].flatMap(([stand, fault], number) => {
	const placed = nearest(stand, fault);
	const [name, isThere] = PATTERNS[number % PATTERNS.length] ?? [];
	if (!placed || !isThere) return [];
	const sheet = bundledRig(stand.rig);
	return [
		at(stand, `${fault} ${name}`, {
			events: () => faultEvents(sheet, placed),
			isThere,
			endedBy: repairText(sheet, placed),
		}),
	];
});

/** A fault of the catalogue at a fixture, or at the cable that reaches it. */
function nearest({ rig, fixture }: Stand, fault: string): PlacedFault | undefined {
	const sheet = bundledRig(rig);
	const own = sheet.cables.find(({ to }) => to === `${fixture}:in`)?.id;
	const all = placedFaults(sheet).filter(({ placed }) => placed.fault === fault);
	return (
		all.find(({ placed }) => placed.place === fixture || placed.place === own) ??
		(['a', 'b', 'desk', 'remote', 'rig'].includes(all[0]?.placed.place ?? '') ? all[0] : undefined)
	)?.placed;
}

/** Between the devices: what nobody thinks of because the sheet says otherwise. */
const ELSEWHERE: readonly UnknownFault[] = [
	...each([wash, bar, old], [1, 11, 100], (stand, by) => [
		at(stand, `the desk sends all ${by} slots late`, { events: (rig) => sentLate(rig.sheet, by) }),
	]),
	...each([wash, barOne, oldOne], ['kept', 'shared'] as const, (stand, how) => [
		at(stand, `two address plans, ${how}`, {
			events: ({ gear }) =>
				gear.desk?.patch.map(({ fixture, universe, mode }) => ({
					type: 'desk.patch' as const,
					fixture,
					universe,
					mode,
					address: how === 'kept' ? 200 : 1,
				})) ?? [],
		}),
	]),
];

function sentLate(sheet: ReturnType<typeof bundledRig>, by: number): RigEvent[] {
	return [
		{
			type: 'desk.recall',
			levels: (sheet.desk?.levels ?? [])
				.map(({ universe, slot, level }) => ({ universe, slot: slot + by, level }))
				.filter(({ slot }) => slot <= 512),
		},
	];
}

/** All of them, each once. */
export const RULED_FAULTS: readonly UnknownFault[] = [
	...CHARTS,
	...INSIDE,
	...comesBack,
	...comesAndGoes,
	...ELSEWHERE,
];

/** How many of each family, for the record. */
export const FAMILIES: readonly (readonly [family: string, faults: readonly UnknownFault[]])[] = [
	['read otherwise inside', CHARTS],
	['wrong inside, spare too', INSIDE],
	['comes back', comesBack],
	['comes and goes', comesAndGoes],
	['elsewhere', ELSEWHERE],
];
