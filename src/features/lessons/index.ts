/**
 * The course on screen. A lesson is words (`content/en/lessons`) and, in its front matter, data: the rig it stands on, a slip, a
 * task, the kinds of question that check it. The data is read through a schema when the site is built, and what can be worked
 * out then is: the sheet, the goal, what a slip looks like. In the page only a small island waits where the bench stands; bench,
 * marker and questions are fetched once that comes into view. Results go to `src/features/progress`, under a lesson's own name.
 */

export { Care, CareBelow, careIn } from './Care.tsx';
export { type SlipEffect, seenOf } from './cases.ts';
export { wholeIn } from './cautions.ts';
export { checksOf, type LessonCheck } from './checks.ts';
export { type CoursePart, type PlanRow, partsOf, timetableOf, toLearn } from './course.ts';
export { checksKey, lessonKey } from './done.ts';
export { type PracticeData, practiceOf } from './practice.ts';
export { type Lesson, readLesson } from './schema.ts';
export { slipAsked } from './slip.ts';
