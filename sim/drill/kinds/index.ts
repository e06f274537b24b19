/**
 * The kinds of drill: each makes a rig, a goal and facts out of a stream of chance. What must be kept is added to all alike,
 * by `make.ts`.
 */
export { KINDS, type Kind, type Level } from './kinds.ts';
export type { Made } from './stage.ts';
