/**
 * Words for the papers: what kinds of question, topics and levels are called; for each kind what is asked, how the answer is come
 * by and why; the options; and a sentence for each mistake. Templates are filled in `src/wording`, by the grammar in `content/en/rig`.
 * The words of the screens around them stand in `screens.ts`.
 */

export { csvWords, exportWords } from './carry.ts';
export { flagWords, handedNames } from './flags.ts';
export { bondWords, settingFound } from './job-questions.ts';
export { answers, labels, units } from './labels.ts';
export { mistakes } from './mistakes.ts';
export { levelNames, topicNames } from './names.ts';
export { printWords } from './print.ts';
export { questions } from './questions.ts';
export { rigParts, rigQuestions } from './rig-questions.ts';
export type { QuestionSays } from './says.ts';
export { papersPage, paperWords, printPage, scanWords, sitPage, sitWords } from './screens.ts';
export { learnWords, trainerWords } from './trainer.ts';
