import type { QuestionSays } from '../../content/papers/index.ts';
import type { Kinds } from './fill.ts';

/** Words of the kinds that are read from a rig, by id, for `papers.ts`. */
export const rigQuestions: Readonly<Record<string, QuestionSays>> = {};

/** How their facts are worded, where the plain kinds have no word for it. */
export const rigPaperKinds: Kinds = {};
