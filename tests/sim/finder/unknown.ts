import type { Profile, Slot } from '../../../shared/profile/index.ts';
import { bundledProfile } from '../../../shared/profile/index.ts';
import { bundledRig, GOOD_WIRES, type RigId, type RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { MENDS, type RepairId } from '../../../sim/fault/index.ts';
import { type Witness, witness } from '../../../sim/finder/index.ts';
import { isSwitchedOn } from '../../../sim/fixture/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';

/**
 * Faults that the catalogue does not have, kept apart from it: so that the finder can be seen to say that it does not know. Either
 * the fixture is another inside than its kind is (a profile doctored for it alone, which nobody at a desk or a panel can see), or
 * something goes wrong again as soon as it has been put right.
 */
export interface UnknownFault {
	readonly id: string;
	readonly rig: RigId;
	/** Where people complain. */
	readonly fixture: string;
	/** What the fixture really is inside. */
	inside?(profile: Profile): Profile;
	/** Done at the start, and again after each repair. */
	events?(rig: Rig): readonly RigEvent[];
	/** The same, for what no event can say. */
	act?(rig: Rig): void;
}

const IN_USE = new Set(['middle', 'whole-plus', 'five', 'seven']);

/** The chart of the modes that these rigs are in, slot by slot. */
const recharted =
	(change: (slot: Slot, slots: readonly Slot[]) => Slot) =>
	(profile: Profile): Profile => ({
		...profile,
		modes: profile.modes.map((mode) => ({
			...mode,
			slots: IN_USE.has(mode.id) ? mode.slots.map((slot) => change(slot, mode.slots)) : mode.slots,
		})),
	});

/** A slot that does nothing that could be seen. */
const idle = ({ id, at }: Pick<Slot, 'id' | 'at'>): Slot => ({ id, name: id, at, drives: { kind: 'speed' } });

const drivesEmitter = (slot: Slot, emitter: string): boolean =>
	slot.drives.kind === 'emitter' && slot.drives.emitter === emitter;

const swapped =
	(one: string, two: string) =>
	(slot: Slot): Slot =>
		drivesEmitter(slot, one)
			? { ...slot, drives: { kind: 'emitter', emitter: two } }
			: drivesEmitter(slot, two)
				? { ...slot, drives: { kind: 'emitter', emitter: one } }
				: slot;

const wash = (id: string, more: Omit<UnknownFault, 'id' | 'rig' | 'fixture'>): UnknownFault => ({
	id,
	rig: 'four-in-line',
	fixture: 'wash-2',
	...more,
});

export const UNKNOWN_FAULTS: readonly UnknownFault[] = [
	wash('reads one slot on', {
		inside: (profile) => ({
			...profile,
			modes: profile.modes.map((mode) => ({
				...mode,
				slots: [
					idle({ id: 'before', at: 1 }),
					...mode.slots.map((slot) => ({
						...slot,
						at: slot.at + 1,
						...(slot.fine === undefined ? {} : { fine: slot.fine + 1 }),
					})),
				],
			})),
		}),
	}),
	wash('two slots changed over', { inside: recharted(swapped('red', 'green')) }),
	wash('one slot does nothing', { inside: recharted((slot) => (drivesEmitter(slot, 'green') ? idle(slot) : slot)) }),
	wash('every colour handed on by one', {
		inside: recharted((slot, slots) => {
			const colours = slots.filter(({ drives }) => drives.kind === 'emitter');
			const next = colours[(colours.indexOf(slot) + 1) % colours.length];
			return slot.drives.kind === 'emitter' && next ? { ...slot, drives: next.drives } : slot;
		}),
	}),
	wash('shows one look whatever comes', {
		inside: recharted((slot) =>
			slot.at === 1
				? {
						id: slot.id,
						name: slot.name,
						at: 1,
						drives: {
							kind: 'bands',
							bands: [{ id: 'stuck', name: 'stuck', from: 0, to: 255, effect: { do: 'held', held: 'candle' } }],
						},
					}
				: idle(slot),
		),
	}),
	wash('intensity upside down', {
		inside: recharted((slot) =>
			slot.drives.kind === 'intensity'
				? {
						id: slot.id,
						name: slot.name,
						at: slot.at,
						drives: {
							kind: 'bands',
							bands: [
								{ id: 'low', name: 'low', from: 0, to: 100, effect: { do: 'open' } },
								{ id: 'high', name: 'high', from: 101, to: 255, effect: { do: 'dark' } },
							],
						},
					}
				: slot.drives.kind === 'bands'
					? idle(slot)
					: slot,
		),
	}),
	wash('runs a fade where its colours should decide', {
		inside: recharted((slot) =>
			slot.drives.kind === 'bands'
				? {
						...slot,
						drives: {
							kind: 'bands',
							bands: slot.drives.bands.map((band) =>
								band.effect.do === 'nothing' ? { ...band, effect: { do: 'programme', programme: 'drift' } } : band,
							),
						},
					}
				: slot,
		),
	}),
	wash('two emitters wired crosswise', {
		inside: (profile) => {
			const [red, blue] = ['red', 'blue'].map((id) => profile.emitters.find((each) => each.id === id)?.xy);
			return {
				...profile,
				emitters: profile.emitters.map((each) =>
					each.id === 'red' && blue ? { ...each, xy: blue } : each.id === 'blue' && red ? { ...each, xy: red } : each,
				),
			};
		},
	}),
	wash('never cools down', {
		events: () => [{ type: 'condition.become', fixture: 'wash-2', change: { foldBack: 0.2 } }],
	}),
	wash('its supply is dead inside', { events: () => [{ type: 'power.switch', fixture: 'wash-2', on: false }] }),
	wash('hears nothing, nor does its spare', {
		events: () => [{ type: 'condition.become', fixture: 'wash-2', change: { receiverDead: true } }],
	}),
	wash('something beside the cable disturbs it', {
		events: () => [{ type: 'cable.become', cable: 'cable-2', change: { kind: 'microphone', length: 400 } }],
	}),
	wash('the desk sends another start code', {
		events: () => [{ type: 'desk.start-code', output: 'a', code: 0x17 }],
	}),
	{
		id: 'a second source on the line',
		rig: 'two-universes',
		fixture: 'bar-2',
		events: ({ gear }) =>
			gear.cables.some(({ id }) => id === 'stray')
				? []
				: [
						{
							type: 'cable.lay',
							cable: { id: 'stray', kind: 'data', length: 10, from: null, to: null, ...GOOD_WIRES },
						},
						{ type: 'cable.become', cable: 'stray', change: { from: 'desk:b', to: 'bar-1:in' } },
					],
	},
	{
		id: 'a socket in the wall is dead',
		rig: 'two-universes',
		fixture: 'bar-1',
		act: ({ gear }) => {
			const unit = gear.units.get('bar-1');
			if (unit) (gear.units as Map<string, typeof unit>).set('bar-1', { ...unit, plug: 'dead-socket' });
		},
	},
	{
		id: 'half the cells read no red',
		rig: 'two-universes',
		fixture: 'bar-2',
		inside: recharted((slot) => (drivesEmitter(slot, 'red') ? { ...slot, cells: [1, 2, 3, 4] } : slot)),
	},
	{
		id: 'its switches count from one',
		rig: 'mixed-panels',
		fixture: 'old-1',
		inside: (profile) =>
			profile.panel.kind === 'dip' ? { ...profile, panel: { ...profile.panel, wiring: 'sum-plus-one' } } : profile,
	},
	{
		id: 'the leader sends by another chart',
		rig: 'leader-and-three',
		fixture: 'wash-3',
		events: () => [{ type: 'settings.become', fixture: 'wash-1', change: { mode: 'long' } }],
	},
	{
		id: 'its static colours are out of order',
		rig: 'one-wash',
		fixture: 'wash-1',
		inside: (profile) => ({
			...profile,
			held: profile.held.map((held, i) => ({
				...held,
				levels: profile.held[(i + 1) % profile.held.length]?.levels ?? held.levels,
			})),
		}),
	},
];

/** Milliseconds until a rig has settled, as the finder's own rigs have. */
const SETTLE_MS = 3000;

/** The rig with such a fault in it, as a tech finds it. */
export function unknownRig(fault: UnknownFault): Witness {
	const sheet = bundledRig(fault.rig);
	const opened = openRig(sheetInside(sheet, fault));
	// what is inside the one fixture is nobody's to see: for everybody else the sheet stands
	Object.assign(opened.gear, { sheet });
	const rig = opened.fork();
	rig.wait(SETTLE_MS);
	goWrong(rig, fault);
	return witness(rig);
}

function sheetInside(sheet: RigSheet, { fixture, inside }: UnknownFault): RigSheet {
	const placed = sheet.fixtures.find(({ id }) => id === fixture);
	const profile = placed && bundledProfile(placed.profile);
	if (!inside || !profile) return sheet;
	return {
		...sheet,
		profiles: [{ ...inside(profile), id: 'odd-inside' }],
		fixtures: sheet.fixtures.map((each) => (each.id === fixture ? { ...each, profile: 'odd-inside' } : each)),
	};
}

/** The fault comes about, or comes back. */
function goWrong(rig: Rig, fault: UnknownFault): void {
	fault.act?.(rig);
	rig.sendTogether(fault.events?.(rig) ?? []);
	// as after a fault that was there at power-up
	for (const [fixture, { kept, state }] of [...rig.gear.units])
		if (kept && isSwitchedOn(state))
			rig.sendTogether([
				{ type: 'power.switch', fixture, on: false },
				{ type: 'power.switch', fixture, on: true },
			]);
	rig.wait(SETTLE_MS);
}

/** The rig after a repair, which did not touch what is really wrong. */
export function repaired(w: Witness, fault: UnknownFault, id: RepairId, place: string): Witness {
	const rig = w.rig.fork();
	const events = MENDS[id]
		.events(rig.sheet, place, { patch: rig.gear.desk?.patch, remote: rig.gear.remote })
		.filter((event) => event.type !== 'terminator.fit' || !rig.gear.terminators.includes(event.port));
	rig.sendTogether(events);
	rig.wait(SETTLE_MS);
	goWrong(rig, fault);
	return witness(rig);
}
