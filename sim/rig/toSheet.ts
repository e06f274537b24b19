import type { SomeSettings } from '../../shared/profile/index.ts';
import { boxListsOf, type RigSheet, type SheetDesk, type SheetFixture } from '../../shared/sheet/index.ts';
import { ALL_DOWN, chargeOf, type FixtureState, isSwitchedOn, signalOf } from '../fixture/index.ts';
import { UNHARMED } from '../light/index.ts';
import type { Desk, Rig, Unit } from './gear.ts';

/**
 * A rig as it stands, as a sheet: address, mode and all other settings, switches, plugs, cables, desk, charge, who is hidden from
 * the remote, what is wrong in a fixture or a cable, what a fixture last had of data that it lost, the hall's power and sound.
 * What the sheet the rig came from leaves to a default is left out here too while it stands at that default.
 *
 * A sheet says how things stand and not what is under way, so some things come to rest in it:
 * - A panel: menus are left, an edit is dropped, a key is let go; it is awake, or locked where its lock is on.
 * - Data that went less than the loss time ago counts as lost.
 * - Programmes begin again, and a microphone begins to hear what there is to hear now: beats of before are no part of a sheet.
 * - The clock starts at 0, so that programmes called up by a desk, and which frames a bad line damages, fall otherwise in time.
 * - What a remote set on a fixture with DIP switches is gone, as its switches say another thing.
 */
export function toSheet({ gear }: Pick<Rig, 'gear'>): RigSheet {
	const { sheet, desk } = gear;
	return {
		...sheet,
		hall: {
			...sheet.hall,
			...changed(sheet.hall, { power: true, sound: 0 }, { power: gear.hallPower, sound: gear.sound }),
		},
		fixtures: [...gear.units.values()].map((unit) => fixtureOf(unit, gear.now)),
		desk: desk && sheet.desk && deskOf(desk, sheet.desk),
		...boxListsOf(sheet, gear.boxes),
		cables: [...gear.cables],
		terminators: [...gear.terminators],
		remote: gear.remote && { ...gear.remote },
	};
}

/** Those of a thing's values that were named before, or that are not at rest. */
function changed<T extends object>(named: object, rest: T, now: T): Partial<T> {
	return Object.fromEntries(
		Object.entries(now).filter(
			([key, value]) => key in named || JSON.stringify(value) !== JSON.stringify(rest[key as keyof T]),
		),
	) as Partial<T>;
}

function fixtureOf(unit: Unit, now: number): SheetFixture {
	const { placed, state, plug, hidden } = unit;
	const { condition, lost, ...laid } = placed;
	const wrong = changed(condition ?? {}, UNHARMED, unit.condition) as NonNullable<SheetFixture['condition']>;
	return {
		...laid,
		...settingOf(unit),
		on: isSwitchedOn(state),
		plug,
		charge: shareOfCharge(unit, now),
		hidden,
		...(condition || Object.keys(wrong).length > 0 ? { condition: wrong } : {}),
		...(isLost(state) ? { lost: unit.kept && standing(unit.kept) } : {}),
	};
}

/** A fixture with keys by its settings, one with DIP switches by those and its slides. */
function settingOf({ placed, profile, state: { context } }: Unit): Partial<SheetFixture> {
	const { panel } = profile;
	if (panel.kind !== 'dip')
		return { settings: changed<SomeSettings>(placed.settings, profile.defaults, context.settings) };
	const { switches, slides } = context;
	return changed<Partial<SheetFixture>>(
		placed,
		{ switches: [...ALL_DOWN], slides: panel.slides.map(() => 0) },
		{ switches: [...switches], slides: [...slides] },
	);
}

/** Whether it had data and has none, be the loss time up or not. */
function isLost(state: FixtureState): boolean {
	const signal = signalOf(state);
	return signal !== 'none' && signal !== 'present';
}

/** The share of a new battery's charge that is in it: as its sheet puts it while that still holds. */
function shareOfCharge({ placed, profile, state }: Unit, now: number): number {
	const { battery } = profile.power;
	const inIt = state.context.battery;
	if (!battery || !inIt) return placed.charge;
	const wattHours = chargeOf(profile, state, now);
	const asPlaced = Math.min(battery.wattHours * placed.charge, inIt.capacity);
	return asPlaced === wattHours ? placed.charge : Math.min(1, wattHours / battery.wattHours);
}

/** What stands up in a frame. */
const standing = (frame: Uint8Array): { slot: number; level: number }[] =>
	[...frame].flatMap((level, i) => (level > 0 ? [{ slot: i + 1, level }] : []));

const listed = (levels: Desk['levels']): SheetDesk['levels'] =>
	[...levels]
		.sort(([a], [b]) => a - b)
		.flatMap(([universe, frame]) => standing(frame).map((each) => ({ universe, ...each })));

function deskOf({ outputs, patch, levels, master, held }: Desk, { held: _, ...laid }: SheetDesk): SheetDesk {
	return {
		...laid,
		outputs: outputs.map(({ startCode, ...output }, i) => ({
			...output,
			...changed(laid.outputs[i] ?? {}, { startCode: 0 }, { startCode }),
		})),
		patch: patch.map((each) => ({ ...each })),
		levels: listed(levels),
		master,
		...(held ? { held: { ...held, levels: listed(held.levels) } } : {}),
	};
}
