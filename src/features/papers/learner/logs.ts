import { TIMING } from '../../../../shared/dmx/index.ts';
import type { RigEvent } from '../../../../sim/event/index.ts';

/**
 * A log up to the last thing done: the clock that ran on after it tells nothing, and would be kept again every second. A key that
 * is let go counts as done; as much waiting stays as lost data takes to show, so that it is there when it is marked.
 */
export function worthKeeping(log: readonly RigEvent[]): readonly RigEvent[] {
	const last = log.findLastIndex((event) => event.type !== 'clock.wait');
	const after = log[last + 1];
	if (last < 0) return [];
	const done = log.slice(0, last + 1);
	return after?.type === 'clock.wait' ? [...done, { ...after, ms: Math.min(after.ms, TIMING.lossOfDataMs) }] : done;
}
