import type { Progress } from './result.ts';

/** The version that is written. */
export const VERSION = 2;

/** One version's data as the next one's. It sees the whole, entries unread. */
export type Migration = (old: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** Progress as text, to be kept or exported. */
export function progressText(progress: Progress): string {
	return JSON.stringify({ version: VERSION, kinds: Object.fromEntries(progress) });
}
