/**
 * Drills: tasks on a rig, generated from a seed without end. A drill is plain JSON: the sheet as the learner finds it and a
 * goal made of tagged conditions; it is marked by replaying the learner's log and looking at the rig, and its shortest way is
 * worked out over the machine itself, so that hints and the fewest presses are computed and never typed.
 *
 * Modelled: what hands may touch (each drill says which), presses counted one by one, everything that was right made part
 * of the goal so that spoiling it shows, cautions found by walking the way, and a reaction between what a display
 * shows and a key coming up (`way/hold.ts`), so that a hold ends near a value and taps do the rest. Left out: how long a
 * person takes to think and to walk. That changes nothing of what is right.
 */
export { findingsOf } from './check.ts';
export { hintOn, markDrill, shortestWay } from './checked.ts';
export { isInHand, pressesOf } from './hands.ts';
export type { Harm } from './harm.ts';
export { DRILL_KINDS, type DrillKindInfo } from './kinds/index.ts';
export { makeDrill, makeDrillWhere, makeTask } from './make.ts';
export {
	type Condition,
	DRILL_IDS,
	type Drill,
	type DrillKind,
	type Facts,
	type Finding,
	type Hand,
	type Mark,
	type Range,
	type Scene,
	type Source,
	type Task,
	type Told,
} from './types.ts';
export { fewestPresses, HAND, type Hint } from './way/index.ts';
