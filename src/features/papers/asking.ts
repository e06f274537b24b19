import { paperWords } from '../../../content/en/papers/index.ts';
import { type Ask, askWorker, NoWorker, Refused } from '../../asking/index.ts';
import type { PapersWork } from './protocol.ts';

export type AskPapers = Ask<PapersWork>;

/** The pages' way to the worker that sets and marks. */
export const askPapers = (): AskPapers =>
	askWorker<PapersWork>(() => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }));

/** What went wrong with a question to the worker, as a sentence. */
export function troubleText(error: unknown): string {
	if (error instanceof Refused) return error.message;
	return error instanceof NoWorker ? paperWords.noWorker : paperWords.broke;
}
