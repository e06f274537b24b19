import type { RigEvent } from '../../../sim/event/index.ts';

/** How long a key was down, ms on the rig's clock; `over` once it was let go. */
export interface KeyDownTime {
	readonly ms: number;
	readonly over: boolean;
}

/** One line of the log: when it happened on the rig's clock, and for a key how long it was down. */
export interface LogLine {
	readonly key: number;
	readonly at: number;
	readonly event: RigEvent;
	readonly pressed: KeyDownTime | null;
}

/** The log's lines with the clock told beside each, latest first; waits and releases of keys are left out. */
export function logLines(log: readonly RigEvent[]): LogLine[] {
	let at = 0;
	const lines: LogLine[] = [];
	const down = new Map<string, number>();
	const stay = (line: number, over: boolean) => {
		const its = lines[line];
		if (its) lines[line] = { ...its, pressed: { ms: at - its.at, over } };
	};
	for (const [key, event] of log.entries()) {
		if (event.type === 'clock.wait') at += event.ms;
		else if (event.type === 'key.up') {
			const finger = `${event.fixture} ${event.key}`;
			const line = down.get(finger);
			if (line !== undefined) stay(line, true);
			down.delete(finger);
		} else {
			if (event.type === 'key.down') down.set(`${event.fixture} ${event.key}`, lines.length);
			lines.push({ key, at, event, pressed: null });
		}
	}
	for (const line of down.values()) stay(line, false);
	return lines.reverse();
}

/** Hours, minutes, seconds of a number of milliseconds: `1:04:09`. */
export function timeText(ms: number): string {
	const seconds = Math.floor(ms / 1000);
	const two = (n: number) => `${n}`.padStart(2, '0');
	return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}
