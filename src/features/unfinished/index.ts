/**
 * Tasks half done. While a drill or a lesson's task is at work, what was done on its rig and what help was used are kept, in this
 * tab and on the device, and a new version of the site waits; `takeUp` finds it again after an update, a reload or a crash, by the
 * name its results go under and its seed. What counts as help is the drill's own affair.
 */
export { TakenUpNotice } from './TakenUp.tsx';
export { seedLeft, type TakenUp, type TaskName, takeUp, useUnfinished } from './unfinished.ts';
