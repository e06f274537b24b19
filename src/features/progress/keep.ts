import { type Found, type Store, shelfOf } from '../../shelf/index.ts';
import { NO_PROGRESS, type Progress } from './result.ts';
import { progressText } from './version.ts';

/** Where progress is kept on the device; what is damaged goes to the second, a list to which more may be added. */
export const PROGRESS_KEY = 'prep-bay.progress';
export const PROGRESS_ASIDE_KEY = `${PROGRESS_KEY}.damaged`;

/** What was found on the device. */
export interface Opened extends Omit<Found<Progress>, 'kept'> {
	readonly progress: Progress;
}

const shelf = shelfOf(
	PROGRESS_KEY,
	NO_PROGRESS,
	async () => {
		const { readProgress } = await import('./reading.ts');
		return (text) => {
			const { progress, damaged } = readProgress(text);
			return { kept: progress, damaged };
		};
	},
	progressText,
);

const opened = ({ kept, ...rest }: Found<Progress>): Opened => ({ progress: kept, ...rest });

/** Progress kept on the device. What cannot be read is set aside before anything is written over it, and the rest is there. */
export const openProgress = async (store: Store): Promise<Opened> => opened(await shelf.open(store));

/**
 * Changes what is kept: read again first, since another tab may have written meanwhile.
 * @returns what is there then
 */
export const changeProgress = async (store: Store, change: (progress: Progress) => Progress): Promise<Opened> =>
	opened(await shelf.change(store, change));

/** What was set aside so far, as text; null where there is none. */
export const asideText = (store: Store): string | null => shelf.aside(store);
