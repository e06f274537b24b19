import { paperWords } from '#words/papers/index.ts';
import { laterWith } from '../../ui/index.ts';

/** A part of these pages whose script is fetched when it is first drawn. */
export const later = laterWith({ ...paperWords, coming: paperWords.loading }, 'papers-wait');
