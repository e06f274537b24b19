/**
 * Tonight's rig on screen: a plan begun in three taps, from a pasted list, the bench or a file; its rows, its problems with what one
 * tap does about each, its sums; prep slips, labels of fixtures and cables, patch list, line plan,
 * load sheet and charge plan to print; what the crew ticks off at the lights, which travels
 * and merges by link and file; and what changed since sheets were printed. The plan is kept on the device at every change, several
 * of them side by side, and goes on to the bench and the finder as a rig sheet. What is shown is decided in plain files beside the
 * components; presses are worked out in the worker (`routes.ts`).
 */
export { RigTonight } from './lazily.tsx';
export { RigPractise } from './RigPractise.tsx';
export { RigSheet } from './RigSheet.tsx';
