import { BOX_LISTS, type RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';

/** A bench as it is kept or sent: data, and nothing that runs. */
export interface BenchRecord {
	readonly sheet: RigSheet;
	readonly log: readonly RigEvent[];
}

/** Most of each that a bench draws and works out without choking a phone. */
export const MOST = Object.freeze({
	fixtures: 128,
	...Object.fromEntries(BOX_LISTS.map((list) => [list, 16])),
	cables: 200,
	terminators: 200,
	profiles: 40,
});

/** Whether a fragment (with or without its `#`) says that it holds a rig. */
export const holdsRig = (fragment: string): boolean => /^#?rig=/.test(fragment);

/** The longest wait that one event of a log may hold when it comes from outside, ms: 30 days. */
const LONGEST_WAIT_MS = 30 * 24 * 3_600_000;
/** Most that one is cut into: the reading of the log refuses what is left. */
const MOST_PARTS = 1000;

/** An event as it may be kept: a wait that is longer than one may be, as several; anything else as it is. */
export function inWaits(event: unknown): readonly unknown[] {
	const { type, ms } = (event ?? {}) as { type?: unknown; ms?: unknown };
	if (type !== 'clock.wait' || typeof ms !== 'number' || !(ms > LONGEST_WAIT_MS)) return [event];
	const parts = Math.ceil(ms / LONGEST_WAIT_MS);
	if (parts > MOST_PARTS) return [event];
	const whole = Array.from({ length: parts - 1 }, () => ({ type, ms: LONGEST_WAIT_MS }));
	return [...whole, { type, ms: ms - LONGEST_WAIT_MS * (parts - 1) }];
}

/** A log with no wait longer than a log may bring from outside: waits in a row are one on a live bench, and may run to months. */
export const fitForKeeping = (log: readonly RigEvent[]): readonly RigEvent[] =>
	log.some((event) => event.type === 'clock.wait' && event.ms > LONGEST_WAIT_MS)
		? (log.flatMap(inWaits) as RigEvent[])
		: log;
