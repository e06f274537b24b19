import { partWait } from '#words/finder/index.ts';
import { laterWith } from '../../ui/index.ts';

/** A part of the finder whose script is fetched when it is first drawn. */
export const later = laterWith(partWait, 'hint');
