/**
 * The checks: what a tech can look at, try or swap, and which of them this rig has. None says what it will show: each reads
 * it off a rig. Kinds are permanent; a check is a kind in a place.
 */

export { CHECK_KINDS } from './kinds.ts';
export { checksOf } from './list.ts';
export type { Check, CheckSort } from './types.ts';
