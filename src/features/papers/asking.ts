import { paperWords } from '#words/papers/index.ts';
import { openEngine, troubleText as textOf } from '../../engine/index.ts';
import { laterWith } from '../../ui/index.ts';

/** The pages' way to the worker that sets and marks. */
export const askPapers = () => openEngine().ask;

/** What went wrong with a question to the worker, as a sentence. */
export const troubleText = (error: unknown): string => textOf(error, paperWords);

/** A part of these pages whose script is fetched when it is first drawn. */
export const later = laterWith({ ...paperWords, coming: paperWords.loading }, 'papers-wait');
