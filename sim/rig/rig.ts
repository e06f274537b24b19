import { InputError, shown } from '../../shared/error/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { advance } from './clock.ts';
import { forkGear, type Gear, gearFrom } from './gear.ts';
import { takeOver } from './inUse.ts';
import { lookAt } from './look.ts';
import { apply } from './send.ts';
import { leadersOf, settle } from './settle.ts';
import type { Rig } from './types.ts';

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
