import type { Reason, Rig } from '../../sim/rig/index.ts';

/** One link of a fixture's reason trail as a plain sentence or two. */
export function reasonText(_rig: Rig, _fixtureId: string, reason: Reason): string {
	return reason.id;
}

/** The title of the stage a reason belongs to: 'Power', 'What decides', 'The line' ... */
export function reasonStage(reason: Reason): string {
	return reason.id.slice(0, reason.id.indexOf('.'));
}
