import { modeOf } from '../../shared/profile/index.ts';
import { hash01 } from '../../shared/random/index.ts';
import { actingSettings, type DriveState, driveOf, hasDataIn, signalOf } from '../fixture/index.ts';
import { compileMode, frameOf, makeAsk, outputOf, type SlotRequest, wattsOf } from '../light/index.ts';
import type { Desk, Gear, Unit } from './gear.ts';
import { darkPlan, heardBy, type LightPlan, type Moment, ownPlan, programmePlan, staticPlan } from './own.ts';

/** What drives a fixture's light at a time, and what it asks for. @param asSent by frames as sent, whatever damaged them on the way */
export function planAt(gear: Gear, unit: Unit, moment: Moment, asSent = false): LightPlan {
	const drive = driveOf(unit.state);
	if (drive === 'unpowered') return darkPlan(unit.profile);
	if (!isByLine(drive)) return ownPlan(unit, moment);
	const signal = signalOf(unit.state);
	if (signal === 'none' || signal === 'dark') return darkPlan(unit.profile);
	if (signal === 'running') return ownPlan(unit, moment, true);
	const frame = frameAt(gear, unit, moment, asSent);
	if (!frame) return darkPlan(unit.profile);
	return withLeadersFlash(gear, unit, framePlan(unit, readFrame(unit, frame), moment), moment);
}

export const isByLine = (drive: DriveState): boolean => drive === 'line' || drive === 'following';

/** The slot a fixture reads from, 1..512: its start address, or slot one for a follower of a kind that reads there. */
export function readsFrom(unit: Unit): number {
	const settings = actingSettings(unit.state);
	return driveOf(unit.state) === 'following' && unit.profile.follows === 'slot-one' ? 1 : settings.address;
}

/** What a frame asks of this fixture, through the chart of its mode. */
export function readFrame(unit: Unit, frame: Uint8Array): SlotRequest {
	const ask = makeAsk(unit.profile);
	compileMode(unit.profile, actingSettings(unit.state).mode).read(frame, readsFrom(unit), ask);
	return ask;
}

function framePlan(unit: Unit, ask: SlotRequest, moment: Moment): LightPlan {
	const { profile } = unit;
	if (ask.dark) return darkPlan(profile);
	if (ask.programme >= 0) {
		// programmes called up by the desk count from the rig's own zero, so that a row of them runs in step
		const { programme: index, speed, intensity } = ask;
		const heard = heardBy(unit, unit.state.context.heard);
		const plan = programmePlan(profile, { index, speed, since: 0, heard, intensity }, moment);
		return ask.strobe > 0 ? { ...plan, strobe: ask.strobe } : plan;
	}
	if (ask.held >= 0) return staticPlan(profile, ask.held, ask.intensity, ask.strobe);
	return { levels: ask.levels, intensity: ask.intensity, strobe: ask.strobe, moving: false, programme: null };
}

/** A leader's flashes and movement come down the line as frames that change: those who read them flash and move with it. */
function withLeadersFlash(gear: Gear, unit: Unit, plan: LightPlan, moment: Moment): LightPlan {
	if (!hasDataIn(unit.state)) return plan;
	const talker = gear.receptions.get(unit.placed.id)?.talker;
	const leader = talker?.kind === 'leader' ? gear.units.get(talker.fixture) : undefined;
	if (!leader) return plan;
	const led = ownPlan(leader, moment);
	return { ...plan, strobe: Math.max(plan.strobe, led.strobe), moving: plan.moving || led.moving };
}

const EMPTY = new Uint8Array(512);

/**
 * The frame a desk sends on a universe: the levels entered, with the master over what it holds down.
 * @returns 512 levels, slot 1 first; not to be written into
 */
export function frameOfDesk(gear: Gear, universe: number): Uint8Array {
	const { desk } = gear;
	const { levels, master } = desk?.held ?? desk ?? { levels: null, master: 255 };
	const entered = levels?.get(universe) ?? EMPTY;
	return !desk || master === 255 ? entered : mastered(gear, { ...desk, master }, universe, entered);
}

/**
 * The master brings down intensity slots; in a mode that has none it brings down the colour slots instead, as desks
 * do for fixtures without a dimmer (common practice, no source). Levels on slots patched to nothing stay.
 */
function mastered(gear: Gear, desk: Desk, universe: number, entered: Uint8Array): Uint8Array {
	const frame = entered.slice();
	for (const patch of desk.patch) {
		const unit = gear.units.get(patch.fixture);
		if (patch.universe !== universe || !unit) continue;
		const { slots } = modeOf(unit.profile, patch.mode);
		const hasIntensity = slots.some((slot) => slot.drives.kind === 'intensity');
		for (const slot of slots) {
			if (slot.drives.kind !== (hasIntensity ? 'intensity' : 'emitter')) continue;
			const coarse = patch.address + slot.at - 2;
			const fine = slot.fine === undefined ? null : patch.address + slot.fine - 2;
			if (coarse > 511) continue;
			const word = (frame[coarse] ?? 0) * 256 + (fine === null ? 0 : (frame[fine] ?? 0));
			const held = Math.round((word * desk.master) / 255);
			frame[coarse] = held >> 8;
			if (fine !== null && fine <= 511) frame[fine] = held & 255;
		}
	}
	return frame;
}

/** The frame a leader sends at a time: its own light, by its own mode's chart, from slot 1; the other slots are 0. */
export function frameOfLeader(leader: Unit, moment: Moment): Uint8Array {
	const frame = new Uint8Array(512);
	const { levels, intensity } = ownPlan(leader, moment);
	frame.set(frameOf(leader.profile, actingSettings(leader.state).mode, levels, intensity[0] ?? 0));
	return frame;
}

/** Milliseconds a frame stands before the next, at the line's top rate: about 22.7. */
const FRAME_MS = 1000 / 44;

/**
 * The frame a fixture makes of what reaches it at a time: whole, damaged, or the one it kept.
 * @param asSent as if nothing had damaged it on the way
 * @returns 512 levels, or null where it has none
 */
export function frameAt(gear: Gear, unit: Unit, moment: Moment, asSent = false): Uint8Array | null {
	if (!hasDataIn(unit.state)) return unit.kept;
	const reception = gear.receptions.get(unit.placed.id);
	if (!reception) return null;
	const { talker, rate } = reception;
	const leader = talker?.kind === 'leader' ? gear.units.get(talker.fixture) : undefined;
	const whole =
		talker?.kind === 'desk' ? frameOfDesk(gear, talker.universe) : leader ? frameOfLeader(leader, moment) : EMPTY;
	if (asSent || reception.quality !== 'marginal' || moment === 'mean') return whole;
	const number = Math.floor(moment / FRAME_MS);
	const seat = seatOf(unit.placed.id);
	return hash01(seat, number) < rate ? damaged(whole, seat, number) : whole;
}

/** A damaged frame: bytes slip, so that slots read a neighbour's level, and some read noise. */
function damaged(frame: Uint8Array, seat: number, number: number): Uint8Array {
	const slip = 1 + Math.floor(hash01(seat, number, 1) * 3);
	return frame.map((_, slot) =>
		hash01(seat, number, slot + 2) < 0.2 ? Math.floor(hash01(number, seat, slot) * 256) : (frame[slot + slip] ?? 0),
	);
}

/** A number from an id, the same every time. */
function seatOf(id: string): number {
	let sum = 7;
	for (let i = 0; i < id.length; i++) sum = (sum * 31 + id.charCodeAt(i)) | 0;
	return sum;
}

/**
 * Emitter outputs 0..1 by cell, then emitter, after dim curve, limit and the lamp's own wrongs.
 * @param strobe 1 for the lit part of a flash, `mean` for the average over it
 */
export function outputsOf(unit: Unit, plan: LightPlan, strobe: 1 | 'mean' = 1): Float32Array {
	const { curve, limit } = actingSettings(unit.state);
	const { profile, condition } = unit;
	const { levels, intensity } = plan;
	return outputOf(
		{ profile, levels, intensity, curve, limit, condition, strobe: plan.strobe > 0 ? strobe : 1 },
		new Float32Array(levels.length),
	);
}

/** What a fixture draws on the average while nothing changes, watts. */
export function meanWatts(gear: Gear, unit: Unit): number {
	return wattsOf(unit.profile, outputsOf(unit, planAt(gear, unit, 'mean'), 'mean'));
}
