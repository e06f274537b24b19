/**
 * The checks: what a tech can look at, try or swap, and which of them this rig has. None says what it will show: each reads
 * it off a rig. Kinds are permanent; a check is a kind in a place.
 */

import { REPAIR_IDS } from '../../fault/index.ts';
import { triesKind } from '../tried.ts';
import { FIXTURE_LOOKS, FIXTURE_TRIES } from './fixture.ts';
import { CABLE_LOOKS, DESK_LOOKS } from './line.ts';

export { checksOf } from './list.ts';
export type { Check, CheckSort } from './types.ts';

/** Every kind of check there is, permanent ids, in the order of the catalogue. */
export const CHECK_KINDS: readonly string[] = Object.freeze([
	...[...FIXTURE_LOOKS, ...FIXTURE_TRIES, ...CABLE_LOOKS, ...DESK_LOOKS].map(({ kind }) => kind),
	'row-right',
	'neighbour-strips',
	'leader-change',
	'line-ended',
	'line-straight',
	'hall-power',
	'breakers',
	'box-lamp',
	'remote-lamp',
	'remote-code',
	...REPAIR_IDS.map(triesKind),
]);
