import { KEPT } from '../../storage/index.ts';
import type { Progress } from './result.ts';

/** Progress as text, to be kept or exported. */
export function progressText(progress: Progress): string {
	return JSON.stringify({ version: KEPT.progress.version, kinds: Object.fromEntries(progress) });
}
