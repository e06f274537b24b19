import type { RigEvent } from '../../sim/event/index.ts';
import type { Rig } from '../../sim/rig/index.ts';

/** The log's line for one event: 'Set pressed on wash 2'. No full stop. */
export function eventText(_rig: Rig, event: RigEvent): string {
	return event.type;
}
