/**
 * Papers on screen. Three pages: the trainer's (set, give out, gather in, see what it shows, keep), the learner's (sit a paper), and
 * the printed one. Setting, marking and reading what came in are asked of a worker (`work.ts`, by the names in `protocol.ts`), which
 * answers in words and numbers, so that a page carries only what it shows; kinds of question that need the rig are fetched there with
 * the first paper that has one. `sit/sitting.ts` is a sitting as plain data, kept at every answer and held by one tab at a time;
 * `carry/` is how papers and results get about and are kept.
 */
export { askPapers } from './asking.ts';
export { AskOne, PrintPage, SitPage, TrainerPage } from './pages.tsx';
