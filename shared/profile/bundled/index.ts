/** The bundled fixtures, all of them: invented, so that they are nobody's. */
import type { Profile } from '../schema.ts';
import { putAtHand } from './at-hand.ts';
import { cobble } from './cobble.ts';
import { picket8 } from './picket-8.ts';
import { tallow6 } from './tallow-6.ts';
import { thimble4 } from './thimble-4.ts';

/** In the order a bench offers them. */
export const BUNDLED: readonly Profile[] = Object.freeze([tallow6, picket8, cobble, thimble4]);

/** Those there were first: a quiz that names no fixture is set on these, as it was when there were no others. */
export const FIRST_BUNDLED: readonly Profile[] = Object.freeze(BUNDLED.slice(0, 3));

// whoever has this file has them all at hand: scripts, tests, and pages that offer every one
putAtHand(BUNDLED);

/** The bundled profile of that id, or undefined. */
export function bundledProfile(id: string): Profile | undefined {
	return BUNDLED.find((profile) => profile.id === id);
}
