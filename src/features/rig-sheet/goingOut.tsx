import { planWords } from '#words/plan/index.ts';
import { laterWith } from '../../ui/index.ts';

const later = laterWith(planWords, 'coming');

/** What leaves the page, by link, file or paper: fetched when it is first opened. */
export const Send = later(() => import('./Send.tsx'));
/** What the finder found, where it was asked by the ticks. */
export const Found = later(() => import('./Found.tsx'));
export const Papers = later(() => import('./Papers.tsx'));
