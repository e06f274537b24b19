import { type DriveState, driveOf, hasDataIn, signalOf } from '../fixture/index.ts';
import { type Ask, compileMode, makeAsk } from '../light/index.ts';
import type { Gear, Unit } from './gear.ts';
import { darkPlan, heardBy, heldPlan, type Moment, ownPlan, type Plan, programmePlan } from './own.ts';
import { frameAt } from './source.ts';

/** What drives a fixture's light at a time, and what it asks for. @param asSent by frames as sent, whatever damaged them on the way */
export function planAt(gear: Gear, unit: Unit, moment: Moment, asSent = false): Plan {
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
	const { settings } = unit.state.context;
	return driveOf(unit.state) === 'following' && unit.profile.follows === 'slot-one' ? 1 : settings.address;
}

/** What a frame asks of this fixture, through the chart of its mode. */
export function readFrame(unit: Unit, frame: Uint8Array): Ask {
	const ask = makeAsk(unit.profile);
	compileMode(unit.profile, unit.state.context.settings.mode).read(frame, readsFrom(unit), ask);
	return ask;
}

function framePlan(unit: Unit, ask: Ask, moment: Moment): Plan {
	const { profile } = unit;
	if (ask.dark) return darkPlan(profile);
	if (ask.programme >= 0) {
		// programmes called up by the desk count from the rig's own zero, so that a row of them runs in step
		const { programme: index, speed, intensity } = ask;
		const heard = heardBy(unit, unit.state.context.heard);
		const plan = programmePlan(profile, { index, speed, since: 0, heard, intensity }, moment);
		return ask.strobe > 0 ? { ...plan, strobe: ask.strobe } : plan;
	}
	if (ask.held >= 0) return heldPlan(profile, ask.held, ask.intensity, ask.strobe);
	return { levels: ask.levels, intensity: ask.intensity, strobe: ask.strobe, moving: false, programme: null };
}

/** A leader's flashes and movement come down the line as frames that change: those who read them flash and move with it. */
function withLeadersFlash(gear: Gear, unit: Unit, plan: Plan, moment: Moment): Plan {
	if (!hasDataIn(unit.state)) return plan;
	const talker = gear.receptions.get(unit.placed.id)?.talker;
	const leader = talker?.kind === 'leader' ? gear.units.get(talker.fixture) : undefined;
	if (!leader) return plan;
	const led = ownPlan(leader, moment);
	return { ...plan, strobe: Math.max(plan.strobe, led.strobe), moving: plan.moving || led.moving };
}
