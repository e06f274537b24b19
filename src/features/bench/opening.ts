import { holdsRig, isKept } from '../rig/index.ts';
import { firstBench, type Opening, plainly, type Ways } from './opened.ts';

/**
 * Opens the bench that a link holds, else the one kept on the device, else a ready-made one. What reads the first two is fetched
 * only where there is something to read.
 */
export async function openBench(fragment: string, ways: Ways): Promise<Opening> {
	if (!holdsRig(fragment) && !isKept(ways.storage)) return plainly(await firstBench());
	const { openKept, openLink } = await import('./reopening.ts');
	return holdsRig(fragment) ? openLink(fragment, ways) : openKept(ways);
}
