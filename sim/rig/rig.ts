import { InputError, shown } from '../../shared/error/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { faultEvents } from '../fault/index.ts';
import { advance } from './clock.ts';
import { forkGear, type Gear, gearFrom } from './gear.ts';
import { requireEvent, requireFaults, soundSheet } from './guard.ts';
import { takeOver } from './inUse.ts';
import { lookAt } from './look.ts';
import { apply } from './send.ts';
import { leadersOf, settle } from './settle.ts';
import type { OpenOptions, Rig } from './types.ts';
import { whyOf } from './why.ts';

/**
 * Opens a rig from a sheet: every fixture set and wired as the sheet says, at clock zero.
 * @param sheet as `readSheet` gives it
 * @param options `faults`: put in before anybody looks; they are no part of the log
 * @throws InputError `sheet.*` for what is no sheet, `rig.options` for what are no options, `fault.*` for a fault that does not
 *   fit this rig
 */
export function openRig(sheet: RigSheet, options: OpenOptions = {}): Rig {
	requireFaults(options);
	const { gear } = openUnharmed(sheet);
	for (const event of (options.faults ?? []).flatMap((fault) => faultEvents(gear.sheet, fault))) change(gear, event);
	return rigOf(gear, []);
}

/** As `openRig`, with nothing wrong in it: a page that opens rigs so need not carry the fault catalogue. */
export function openUnharmed(sheet: RigSheet): Rig {
	const gear = gearFrom(soundSheet(sheet));
	takeOver(gear);
	settle(gear, new Map());
	return rigOf(gear, []);
}

/**
 * A rig with a log played into it: the same sheet and log give the same rig, state for state.
 * @throws InputError as `send` does, for an event that fits nothing; `path` says which
 */
export function replay(sheet: RigSheet, log: readonly RigEvent[], options: OpenOptions = {}): Rig {
	return played(openRig(sheet, options), log);
}

/** As `replay`, with nothing wrong in the rig but what the log does to it. @throws InputError as `replay` */
export function replayUnharmed(sheet: RigSheet, log: readonly RigEvent[]): Rig {
	return played(openUnharmed(sheet), log);
}

function played(rig: Rig, log: readonly RigEvent[]): Rig {
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

function rigOf(gear: Gear, log: RigEvent[]): Rig {
	return {
		sheet: gear.sheet,
		get now() {
			return gear.now;
		},
		get log() {
			return log;
		},
		send(event) {
			requireEvent(event);
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
		why: (fixture) => whyOf(gear, fixture),
		fork: () => rigOf(forkGear(gear), [...log]),
		gear,
	};
}
