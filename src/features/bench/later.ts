import { benchWords } from '#words/bench/index.ts';
import { laterWith } from '../../ui/index.ts';

/** A part of the bench whose script is fetched when it is first drawn. */
export const later = laterWith(benchWords, 'coming');
