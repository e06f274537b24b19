/**
 * The door for those who made their drill themselves, from a kind and a seed: the site, and the papers. A task is taken as it is, and
 * no schema library is needed. Scripts go through `index.ts`, which holds it to its schema.
 */

import { oncePer } from '../../shared/memo/index.ts';
import type { RigEvent } from '../event/index.ts';
import { openUnharmed, replayUnharmed } from '../rig/trusted.ts';
import { findingsOf } from './check.ts';
import { countPresses } from './count.ts';
import { requireInHand } from './hands.ts';
import { mainsRecord } from './harm.ts';
import type { Mark, Task } from './types.ts';
import { fewestPresses } from './way/index.ts';

export { afterRepair, type CauseGroup, causesOf } from './causes.ts';
export { findingName } from './check.ts';
export { type Hint, hintAims, hintOn, shortestWay } from './way/index.ts';
export { strangerPresses } from './way/stranger.ts';

/** The fewest presses from the start, worked out once a drill. */
const fewestOf = oncePer((drill: Task): number => fewestPresses(drill, openUnharmed(drill.sheet)));

/**
 * Marks a learner's log: played from the start of the drill, and looked at where it ends. Nothing that was typed or clicked
 * elsewhere counts.
 * @param drill taken as it is
 * @throws InputError `drill.hands` for an event it does not leave to the learner, and as `replay` for a log that is none or an event that fits nothing
 */
export function markDrill(drill: Task, log: readonly RigEvent[]): Mark {
	requireInHand(drill, log);
	const rig = replayUnharmed(drill.sheet, log);
	const wrong = findingsOf(drill, rig);
	const off = new Set(wrong.map(({ at }) => at));
	return {
		done: wrong.length === 0,
		harm: mainsRecord(drill.sheet, log).harm,
		right: drill.goal.flatMap((_, at) => (off.has(at) ? [] : [at])),
		wrong,
		...countPresses(drill, log),
		fewest: fewestOf(drill),
		milliseconds: rig.now,
	};
}
