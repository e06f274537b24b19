/**
 * The course in words: one MDX file a lesson, whose front matter says what it teaches and on which rig (each value in JSON, which
 * YAML reads as it stands), and here the words round all of them: the parts of the day, the page's own headings, the ways in.
 * Nothing that a rig shows, and no answer, is typed in a lesson: those are worked out.
 */
export { type Case, cases, caseWords } from './cases.ts';
export { courseWords, ways } from './course.ts';
export { figureWords } from './figures.ts';
export { PART_IDS, type PartId, parts } from './parts.ts';
export { plans, planWords, type TeachingPlan } from './plans.ts';
export { calcWords } from './reckon.ts';
export { lessonWords } from './words.ts';
