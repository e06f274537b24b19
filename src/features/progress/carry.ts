import { isInputError } from '../../../shared/error/index.ts';
import { merged, type Progress } from './result.ts';

/** Most characters of a file that is taken in. */
const LONGEST_FILE = 2_000_000;

/** What came of an import. */
export type Imported =
	| { readonly is: 'taken'; readonly progress: Progress; readonly kinds: number; readonly damaged: number }
	| { readonly is: 'bad' | 'newer' };

/** A file's results merged into one's own; a file that holds none changes nothing. */
export async function importProgress(own: Progress, text: string): Promise<Imported> {
	if (text.length > LONGEST_FILE) return { is: 'bad' };
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
