import type { Profile, Slot } from '../../../shared/profile/index.ts';
import { bundledRig, profileFor, type RigId, type RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { MENDS, type RepairId } from '../../../sim/fault/index.ts';
import { meantWitness, type Witness, witness } from '../../../sim/finder/index.ts';
import { isSwitchedOn } from '../../../sim/fixture/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';

/**
 * Faults that the catalogue does not have, kept apart from it: so that the finder can be seen to say that it does not know. Either
 * the fixture is another inside than its kind is (a profile doctored for it alone, which nobody at a desk or a panel can see), or
 * something goes wrong again as soon as it has been put right, or it comes and goes.
 */
export interface UnknownFault {
	readonly id: string;
	readonly rig: RigId;
	/** Where people complain. */
	readonly fixture: string;
	/** Which fixture is odd inside, where that is another. */
	readonly odd?: string;
	/** What the fixture really is inside. */
	inside?(profile: Profile): Profile;
	/** Done at the start, and again after each repair. */
	events?(rig: Rig): readonly RigEvent[];
	/** The same, for what no event can say. */
	act?(rig: Rig): void;
	/** Whether it is there to be seen after so many answers; left out, always. */
	isThere?(answers: number): boolean;
	/** The repair that would really end it, `id@place`, where the catalogue has it: one that comes and goes is that part's own fault. */
	readonly endedBy?: string;
}

const IN_USE = new Set(['middle', 'whole-plus', 'five', 'seven']);

/** The chart of the modes that these rigs are in, slot by slot. */
export const recharted =
	(change: (slot: Slot, slots: readonly Slot[]) => Slot) =>
	(profile: Profile): Profile => ({
		...profile,
		modes: profile.modes.map((mode) => ({
			...mode,
			slots: IN_USE.has(mode.id) ? whole(mode.slots.map((slot) => change(slot, mode.slots))) : mode.slots,
		})),
	});

/** A slot that does nothing that could be seen. */
export const idle = ({ id, at }: Pick<Slot, 'id' | 'at'>): Slot => ({ id, name: id, at, drives: { kind: 'speed' } });

/** A chart with slots that do nothing where a number was left out. */
export function whole(slots: readonly Slot[]): Slot[] {
	const used = new Set(slots.flatMap(({ at, fine }) => [at, fine ?? at]));
	const empty = Array.from({ length: Math.max(...used) }, (_, i) => i + 1).filter((number) => !used.has(number));
	return [...slots, ...empty.map((number) => idle({ id: `empty-${number}`, at: number }))].sort((a, b) => a.at - b.at);
}

export const drivesEmitter = (slot: Slot, emitter: string): boolean =>
	slot.drives.kind === 'emitter' && slot.drives.emitter === emitter;

/** Two colour slots that each drive the other's emitter. */
export const swapped =
	(one: string, two: string) =>
	(slot: Slot): Slot =>
		drivesEmitter(slot, one)
			? { ...slot, drives: { kind: 'emitter', emitter: two } }
			: drivesEmitter(slot, two)
				? { ...slot, drives: { kind: 'emitter', emitter: one } }
				: slot;

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

/** The rig while such a fault is away. */
export const meanwhile = (fault: UnknownFault): Witness => meantWitness(bundledRig(fault.rig));

function sheetInside(sheet: RigSheet, { fixture, odd = fixture, inside }: UnknownFault): RigSheet {
	const placed = sheet.fixtures.find(({ id }) => id === odd);
	if (!inside || !placed) return sheet;
	return {
		...sheet,
		profiles: [{ ...inside(profileFor(sheet, placed.profile)), id: 'odd-inside' }],
		fixtures: sheet.fixtures.map((each) => (each.id === odd ? { ...each, profile: 'odd-inside' } : each)),
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

/** The rig after a repair; what is really wrong, it did not touch. */
export function repaired(w: Witness, fault: UnknownFault, id: RepairId, place: string): Witness {
	const rig = w.rig.fork();
	const events = MENDS[id]
		.events(rig.sheet, place, { patch: rig.gear.desk?.patch, remote: rig.gear.remote, cables: rig.gear.cables })
		.filter((event) => event.type !== 'terminator.fit' || !rig.gear.terminators.includes(event.port));
	rig.sendTogether(events);
	rig.wait(SETTLE_MS);
	goWrong(rig, fault);
	return witness(rig);
}
