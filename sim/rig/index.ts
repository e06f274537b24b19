/**
 * A rig sheet opened: fixtures, line, desk and remote as one simulated thing that events drive and a log replays. `send` and
 * `wait` change it, `look` says what a person would see, `why` gives the reason trail from source to light, and `toSheet` says how
 * it stands as a sheet again. What is handed in is held to the schemas here; `trusted.ts` is the door for those who have read it
 * already.
 *
 * Modelled: everything a hand can do to panels, plugs, cables, desk and remote, and what follows from it, with time jumping from
 * one thing that happens to the next. Frames are not sent one by one: a frame is worked out when somebody looks, since nothing
 * but a look depends on it. Left out: the delay of a frame (23 ms) between leader and follower, the moments in which plugs
 * bounce, a desk's own fades; a tech would see none of them. Real kit differs most in what a receiver makes of damaged frames.
 */

import * as v from 'valibot';
import { readShape } from '../../shared/profile/index.ts';
import { type RigSheet, readSheet } from '../../shared/sheet/index.ts';
import { type RigEvent, readEvent } from '../event/index.ts';
import { faultEvents } from '../fault/index.ts';
import type { OpenOptions, Rig } from './gear.ts';
import { played, rigFrom } from './rig.ts';

export type { Desk, DeskOutput, Gear, OpenOptions, Patch, Rig, Sight, Unit } from './gear.ts';
export { askedOf, dataIndicatorAfter, lookUnder } from './look.ts';
export { readsFrom } from './plan.ts';
export { REASON_IDS, type Reason, type ReasonId } from './reason.ts';
export { toSheet } from './toSheet.ts';
export { why } from './why.ts';

/**
 * Opens a rig from a sheet: every fixture set and wired as the sheet says, at clock zero.
 * @param sheet as `readSheet` gives it
 * @param options `faults`: put in before anybody looks; they are no part of the log
 * @throws InputError `sheet.*` for what is no sheet, `rig.options` for what are no options, `fault.*` for a fault that does not
 *   fit this rig
 */
export function openRig(sheet: RigSheet, options: OpenOptions = {}): Rig {
	requireFaults(options);
	const whole = checkedSheet(sheet);
	return rigFrom(
		whole,
		(options.faults ?? []).flatMap((fault) => faultEvents(whole, fault)),
		readEvent,
	);
}

/**
 * A rig with a log played into it: the same sheet and log give the same rig, state for state.
 * @throws InputError as `openRig`, and as `send` does, for an event that fits nothing; `path` says which
 */
export function replay(sheet: RigSheet, log: readonly RigEvent[], options: OpenOptions = {}): Rig {
	return played(openRig(sheet, options), log);
}

const optionsSchema = v.object({
	faults: v.optional(v.array(v.object({ fault: v.string(), place: v.string(), detail: v.optional(v.string()) }))),
});

const read = new WeakMap<RigSheet, RigSheet>();

/**
 * The sheet, with what it leaves out filled in.
 * @throws InputError `sheet.*` as `readSheet`; a sheet that passed is not read again
 */
function checkedSheet(sheet: RigSheet): RigSheet {
	const before = typeof sheet === 'object' && sheet !== null ? read.get(sheet) : undefined;
	if (before) return before;
	const found = readSheet(sheet);
	// whoever asks a rig for its sheet gets the one they gave
	const whole = JSON.stringify(found) === JSON.stringify(sheet) ? sheet : found;
	read.set(sheet, whole).set(whole, whole);
	return whole;
}

/** @throws InputError `rig.options` for what is no list of placed faults; whether each fits this rig is for the catalogue to say */
function requireFaults(options: OpenOptions): void {
	readShape(optionsSchema, options, 'rig.options');
}
