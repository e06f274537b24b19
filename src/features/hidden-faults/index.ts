/**
 * Fault drills: a bundled rig with one or two faults hidden in it, and a learner who chooses their own checks. `Hidden` is the whole
 * of it, for its page. What a check shows is read off the rig that is really broken, repairs change that rig, and the seconds, the
 * finder's own walk beside them and the judgement of each choice are `sim/finder`'s; all of it runs in a worker (`work.ts`),
 * words and all. A drill follows from rig, seed and count (`link.ts`), so a link holds no answer and a kept drill is only its steps.
 */
export { Hidden } from './Hidden.tsx';
