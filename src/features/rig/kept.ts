import { BOX_LISTS, type RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';

/** A bench as it is kept or sent: data, and nothing that runs. */
export interface Kept {
	readonly sheet: RigSheet;
	readonly log: readonly RigEvent[];
}

/** Most of each that a bench draws and works out without choking a phone. */
export const MOST = Object.freeze({
	fixtures: 64,
	...Object.fromEntries(BOX_LISTS.map((list) => [list, 16])),
	cables: 200,
	terminators: 200,
	profiles: 40,
});

/** The version that new links have. Older ones are still read; a newer one is refused with a sentence. */
export const LINK_VERSION = 1;

/** Whether a fragment (with or without its `#`) says that it holds a rig. */
export const holdsRig = (fragment: string): boolean => /^#?rig=/.test(fragment);
