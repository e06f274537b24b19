import { holdsRig, isKept, type RigStore, rigStore } from '../rig/index.ts';
import { fourInLine } from './firstSheet.ts';

/** How a bench came to be on the page. */
export interface Opening {
	readonly store: RigStore;
	/** A link took its place, and the person's own stands kept beside it. */
	readonly ownAside: boolean;
	/** A sentence about what went wrong on the way, if anything. */
	readonly trouble: string | null;
}

export type Keeping = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** The ready-made bench of a first visit. */
export const firstBench = (): RigStore => rigStore(fourInLine());

/**
 * Opens the bench that a link holds, else the one kept on the device, else a ready-made one. What reads the first two is fetched
 * only where there is something to read.
 */
export async function openBench(fragment: string, storage: Keeping): Promise<Opening> {
	if (!holdsRig(fragment) && !isKept(storage)) return { store: firstBench(), ownAside: false, trouble: null };
	const { openKept, openLink } = await import('./reopening.ts');
	return holdsRig(fragment) ? openLink(fragment, storage) : openKept(storage);
}
