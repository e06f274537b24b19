import { modeOf } from '../../shared/profile/index.ts';
import { hash01 } from '../../shared/random/index.ts';
import { hasDataIn } from '../fixture/index.ts';
import { frameOf } from '../light/index.ts';
import type { Desk, Gear, Unit } from './gear.ts';
import { type Moment, ownPlan } from './own.ts';

const EMPTY = new Uint8Array(512);

/**
 * The frame a desk sends on a universe: the levels entered, with the master over what it holds down.
 * @returns 512 levels, slot 1 first; not to be written into
 */
export function frameOfDesk(gear: Gear, universe: number): Uint8Array {
	const { desk } = gear;
	const entered = desk?.levels.get(universe) ?? EMPTY;
	return !desk || desk.master === 255 ? entered : mastered(gear, desk, universe, entered);
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
	frame.set(frameOf(leader.profile, leader.state.context.settings.mode, levels, intensity[0] ?? 0));
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
