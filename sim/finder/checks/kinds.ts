import { MEND_IDS } from '../../fault/index.ts';
import { DESK_LOOKS } from './desk.ts';
import { FIXTURE_LOOKS, FIXTURE_TRIES } from './fixture.ts';
import { CABLE_LOOKS } from './line.ts';

/** Every kind of check there is, permanent ids, in the order of the catalogue. */
export const CHECK_KINDS: readonly string[] = Object.freeze([
	...[...FIXTURE_LOOKS, ...FIXTURE_TRIES, ...CABLE_LOOKS, ...DESK_LOOKS].map(({ kind }) => kind),
	'neighbour-strips',
	'leader-change',
	'line-ended',
	'line-straight',
	'hall-power',
	'remote-lamp',
	'remote-code',
	...MEND_IDS.map((id) => `mend-${id}`),
]);
