import type { RigEvent } from '../../sim/event/index.ts';

/** One line of the log: when it happened on the rig's clock, and how often in a row. */
export interface LogLine {
	readonly key: number;
	readonly at: number;
	readonly event: RigEvent;
}

/** The log's lines with the clock told beside each, latest first; waits and releases of keys are left out. */
export function logLines(log: readonly RigEvent[]): LogLine[] {
	let at = 0;
	const lines: LogLine[] = [];
	for (const [key, event] of log.entries()) {
		if (event.type === 'clock.wait') at += event.ms;
		else if (event.type !== 'key.up') lines.push({ key, at, event });
	}
	return lines.reverse();
}
