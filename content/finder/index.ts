/**
 * The finder's own words on screen: how a walk is started, what stands round each check, the verdict, the log. What is checked,
 * seen, suspected and mended has its words in `content/checks`, `content/faults`, `content/mends` and `content/complaints`.
 */
export { amountWords, led } from './amounts.ts';
export { checkWords, needWords, sortWords, suspectWords, whyWords } from './check.ts';
export { allowWords, countWords, finderWords, logWords } from './frame.ts';
export { pictureWords } from './picture.ts';
export { bundledWords, complaintWords, fixtureWords, quickWords, sheetWords, startWords } from './start.ts';
export { verdictWords } from './verdict.ts';
