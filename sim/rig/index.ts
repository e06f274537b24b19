/**
 * A rig sheet opened: fixtures, line, desk and remote as one simulated thing that events drive and a log replays. `send` and
 * `wait` change it, `look` says what a person would see, `why` gives the reason trail from source to light, and `toSheet` says how
 * it stands as a sheet again. What is handed in is held to the schemas here; `trusted.ts` is the door for those who have read it
 * already.
 *
 * Modelled: everything a hand can do to panels, plugs, cables, desk and remote, and what follows from it, with time jumping from
 * one thing that happens to the next. Frames are not sent one by one: a frame is worked out when somebody looks, since nothing
 * but a look depends on it. Left out: the delay of a frame (23 ms) between leader and follower, the moments in which plugs
 * bounce, a desk's own fades; a tech would see none of them. Real kit differs most in what a receiver makes of damaged frames.
 */

export { openRig, replay } from './checked.ts';
export type { Desk, DeskOutput, Gear, Patch, Unit } from './gear.ts';
export { askedOf, dataLampAfter, lookUnder } from './look.ts';
export { readsFrom } from './plan.ts';
export { REASON_IDS, type Reason, type ReasonId } from './reason.ts';
export { toSheet } from './toSheet.ts';
export type { OpenOptions, Rig, Sight } from './types.ts';
export { why } from './why.ts';
