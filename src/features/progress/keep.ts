import { isInputError } from '../../../shared/error/index.ts';
import { type BrowserStore, MOST_READ, type OnShelf, shelfOf } from '../../storage/index.ts';
import { merged, NO_PROGRESS, type Progress, progressText } from './result.ts';

/** What was found on the device. */
export interface OpenedProgress extends Omit<OnShelf<Progress>, 'kept'> {
	readonly progress: Progress;
}

const shelf = shelfOf('progress', {
	none: NO_PROGRESS,
	reader: async () => {
		const { readProgress } = await import('./reading.ts');
		return (text) => {
			const { progress, damaged } = readProgress(text);
			return { kept: progress, damaged };
		};
	},
	write: progressText,
	merge: merged,
});

const opened = ({ kept, ...rest }: OnShelf<Progress>): OpenedProgress => ({ progress: kept, ...rest });

/** Progress kept on the device. What cannot be read is set aside before anything is written over it, and the rest is there. */
export const openProgress = async (store: BrowserStore): Promise<OpenedProgress> => opened(await shelf.open(store));

/**
 * Changes what is kept: read again first, since another tab may have written meanwhile.
 * @returns what is there then
 */
export const changeProgress = async (
	store: BrowserStore,
	change: (progress: Progress) => Progress,
): Promise<OpenedProgress> => opened(await shelf.change(store, change));

/** What was set aside last, as text; null where there is none. */
export const asideText = (store: BrowserStore): string | null => shelf.aside(store);

/** What came of an import. */
export type ImportOutcome =
	| { readonly is: 'taken'; readonly progress: Progress; readonly kinds: number; readonly damaged: number }
	| { readonly is: 'bad' | 'newer' };

/** A file's results merged into one's own; a file that holds none changes nothing. */
export async function importProgress(own: Progress, text: string): Promise<ImportOutcome> {
	if (text.length > MOST_READ.results) return { is: 'bad' };
	const { readProgress } = await import('./reading.ts');
	try {
		const { progress, damaged } = readProgress(text);
		return {
			is: 'taken',
			progress: merged(own, progress),
			kinds: progress.size,
			damaged: Object.keys(damaged).length,
		};
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { is: error.code === 'progress.newer' ? 'newer' : 'bad' };
	}
}
