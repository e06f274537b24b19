import { holdsRig, isKept } from '../rig/index.ts';
import { firstBench, type Keeping, type Opening } from './opened.ts';

/**
 * Opens the bench that a link holds, else the one kept on the device, else a ready-made one. What reads the first two is fetched
 * only where there is something to read.
 */
export async function openBench(fragment: string, storage: Keeping): Promise<Opening> {
	if (!holdsRig(fragment) && !isKept(storage)) return { store: firstBench(), ownAside: false, trouble: null };
	const { openKept, openLink } = await import('./reopening.ts');
	return holdsRig(fragment) ? openLink(fragment, storage) : openKept(storage);
}
