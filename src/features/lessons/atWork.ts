import { loadProfiles, type RigSheet } from '../../../shared/sheet/index.ts';
import { taskAtWork } from '../drills/index.ts';

/** What draws a lesson's bench, once the profiles of what stands on it are there. */
export async function onBench(sheet: RigSheet) {
	await loadProfiles(sheet);
	return import('./OnBench.tsx');
}

/** The same for its task. */
export const onTask = taskAtWork;
