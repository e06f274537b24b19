import { later } from './asking.ts';

/** The trainer's page. */
export const TrainerPage = later(() => import('./trainer/Trainer.tsx'));

/** The learner's page. */
export const SitPage = later(() => import('./learner/Sit.tsx'));

/** The page to print from. */
export const PrintPage = later(() => import('./print/Print.tsx'));

/** One question by itself, for pages that ask a few. */
export const AskOne = later(() => import('./AskOne.tsx'));
