import { InputError, isInputError } from '../../shared/error/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import { openUnharmed, type Rig } from '../../sim/rig/index.ts';

export interface PlayOptions {
	/** Leaves out what no longer fits (the sheet was changed under the log) instead of refusing the whole. */
	readonly whatFits?: boolean;
	/** Milliseconds it may take; a log from outside could ask for hours of work. */
	readonly patience?: number;
	/** A clock in milliseconds. */
	readonly clock?: () => number;
}

/** Longest wait played in one go, ms: between two the clock is looked at. */
const SLICE_MS = 600_000;

/**
 * A log played onto a sheet: the same rig as `replay` gives, within a time.
 * @throws InputError `log.slow` past its patience, and, unless told to play what fits, what `Rig.send` throws
 */
export function playBack(sheet: RigSheet, log: readonly RigEvent[], options: PlayOptions = {}): Rig {
	const { whatFits = false, patience = 6000, clock = () => performance.now() } = options;
	const began = clock();
	const rig = openUnharmed(sheet);
	const look = () => {
		if (clock() - began > patience)
			throw new InputError(
				'log.slow',
				'',
				'This rig has more history than the device can play back. Ask for a fresh one.',
			);
	};
	for (const event of log) {
		look();
		if (event.type === 'clock.wait') {
			let left = event.ms;
			for (; left > SLICE_MS; left -= SLICE_MS) {
				rig.wait(SLICE_MS);
				look();
			}
			rig.wait(left);
		} else {
			try {
				rig.send(event);
			} catch (error) {
				if (!whatFits || !isInputError(error)) throw error;
			}
		}
	}
	return rig;
}

/** The log without its last step: a key's release goes with its press, and the waits after with both. */
export function minusLast(log: readonly RigEvent[]): RigEvent[] {
	const at = log.findLastIndex((event) => event.type !== 'clock.wait' && event.type !== 'key.up');
	return log.slice(0, Math.max(0, at));
}
