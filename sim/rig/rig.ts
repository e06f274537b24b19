import { TIMING } from '../../shared/dmx/index.ts';
import { assert, CHECKED, InputError, shown } from '../../shared/error/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import {
	type FixtureEvent,
	hasMains,
	inputFrom,
	nextDeadline,
	repeatsAt,
	startFixture,
	stepFixture,
} from '../fixture/index.ts';
import { forkGear, type Gear, gearFrom, type Rig, type Unit } from './gear.ts';
import { lookAt } from './look.ts';
import { apply } from './send.ts';
import { leadersOf, settle, settleDraw, settleMains } from './settle.ts';
import { replace, tell } from './step.ts';

/** What holds an event to what it must be before a rig takes it. */
export type HoldEvent = (event: RigEvent) => void;

/**
 * A rig from a whole sheet: every fixture set and wired as the sheet says, at clock zero.
 * @param harm done to it before anybody looks; no part of the log
 */
export function rigFrom(sheet: RigSheet, harm: readonly RigEvent[], hold: HoldEvent): Rig {
	const gear = gearFrom(sheet);
	takeOver(gear);
	settle(gear, new Map());
	for (const event of harm) change(gear, event);
	return rigOf(gear, [], hold);
}

/** A rig with a log played into it. @throws InputError as `replay` */
export function played(rig: Rig, log: readonly RigEvent[]): Rig {
	if (!Array.isArray(log)) throw new InputError('log.shape', '', { expected: 'list', found: shown(log) });
	for (const [i, event] of log.entries()) {
		try {
			if (event?.type === 'clock.wait') rig.wait(event.ms);
			else rig.send(event);
		} catch (error) {
			throw error instanceof InputError ? error.within(`[${i}]`) : error;
		}
	}
	return rig;
}

function change(gear: Gear, ...events: readonly RigEvent[]): void {
	const before = leadersOf(gear);
	for (const event of events) apply(gear, event);
	settle(gear, before);
}

function rigOf(gear: Gear, log: RigEvent[], hold: HoldEvent): Rig {
	return {
		sheet: gear.sheet,
		get now() {
			return gear.now;
		},
		get log() {
			return log;
		},
		send(event) {
			hold(event);
			change(gear, event);
			log.push(event);
		},
		sendTogether(events) {
			change(gear, ...events);
			log.push(...events);
		},
		wait(milliseconds) {
			if (!(Number.isFinite(milliseconds) && milliseconds >= 0))
				throw new InputError('rig.wait', 'milliseconds', { expected: 'from-0', found: shown(milliseconds) });
			if (milliseconds === 0) return;
			advance(gear, gear.now + milliseconds);
			// waits in a row are one wait: a live bench makes many small ones
			const last = log.at(-1);
			if (last?.type === 'clock.wait') log[log.length - 1] = { type: 'clock.wait', ms: last.ms + milliseconds };
			else log.push({ type: 'clock.wait', ms: milliseconds });
		},
		look: (fixture) => lookAt(gear, fixture),
		fork: () => rigOf(forkGear(gear), [...log], hold),
		gear,
	};
}

/** Moves the clock to `target`, stopping wherever something happens by itself: a panel sleeps, data is lost, a battery ends. */
function advance(gear: Gear, target: number): void {
	if (CHECKED) assert(target >= gear.now, 'a clock that goes back', target - gear.now);
	for (;;) {
		settleDraw(gear);
		const next = nextOf(gear);
		if (next === null || next > target) break;
		if (CHECKED) assert(next >= gear.now, 'something due in the past', next - gear.now);
		const before = leadersOf(gear);
		gear.now = next;
		for (const [id, unit] of gear.units)
			if (unit.deadline !== null && unit.deadline <= next) tell(gear, id, { type: 'clock.advance', now: next });
		settle(gear, before);
	}
	gear.now = target;
	// even where no repeat is due yet: where the clock stood last must not hang on how a wait was cut
	for (const [id, { state }] of gear.units) {
		if (repeatsAt(state) !== null) tell(gear, id, { type: 'clock.advance', now: target });
	}
}

function nextOf(gear: Gear): number | null {
	let next: number | null = null;
	for (const { deadline } of gear.units.values())
		if (deadline !== null && (next === null || deadline < next)) next = deadline;
	return next;
}

/** Takes over what a sheet says of a rig that is in use already: sound in the hall, worn batteries, data that was lost. For gear fresh from its sheet. */
function takeOver(gear: Gear): void {
	const isUsed = ({ placed }: Unit): boolean => placed.condition !== undefined || placed.lost !== undefined;
	if ([...gear.units.values()].some(isUsed)) settleMains(gear);
	for (const [id, unit] of gear.units) if (isUsed(unit)) replace(gear, id, usedUnit(unit));
	const { sound } = gear.sheet.hall;
	if (sound) apply(gear, { type: 'sound.play', level: sound });
}

/** The unit as it is after what its sheet says has happened to it: data came, went, and was gone for the loss time at 0 on the clock. */
function usedUnit(unit: Unit): Unit {
	const { placed, profile, condition } = unit;
	const input = inputFrom(profile, placed, hasMains(unit.state));
	const since = placed.lost === undefined ? 0 : -TIMING.lossOfDataMs;
	let state = startFixture(profile, {
		...input,
		now: since,
		battery: input.battery && { ...input.battery, at: since },
	});
	const events: FixtureEvent[] = [];
	if (placed.lost !== undefined)
		events.push(
			{ type: 'data.change', present: true },
			{ type: 'data.change', present: false },
			{ type: 'clock.advance', now: 0 },
		);
	// its panel is left alone from now on, and not from when the data went
	if (placed.lost !== undefined && profile.panel.kind !== 'dip') events.push({ type: 'key.up', key: 'back' });
	const { battery } = profile.power;
	if (battery)
		events.push({
			type: 'battery.become',
			capacity: battery.wattHours * condition.batteryHealth,
			takesCharge: !condition.chargerDead,
			wattHours: battery.wattHours * placed.charge,
		});
	for (const event of events) state = stepFixture(profile, state, event);
	return {
		...unit,
		state,
		kept: placed.lost ? frameOf(placed.lost) : null,
		deadline: nextDeadline(profile, state),
	};
}

function frameOf(levels: readonly { readonly slot: number; readonly level: number }[]): Uint8Array {
	const frame = new Uint8Array(512);
	for (const { slot, level } of levels) frame[slot - 1] = level;
	return frame;
}
