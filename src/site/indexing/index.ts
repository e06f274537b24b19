/**
 * What can be searched: every lesson and its sections, every term, section of the reference, fault and caution, each with its place
 * on the site. Gathered when the site is built, from the words and tables the pages themselves show; no page loads it.
 */
export { searchDocs } from './docs.ts';
export type { LessonText } from './lessons.ts';
