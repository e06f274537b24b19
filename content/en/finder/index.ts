/**
 * The finder's own words on screen: how a walk is started, what stands round each check, the verdict, the log. What is checked,
 * seen, suspected and mended has its words in `content/en/checks`, `content/en/faults`, `content/en/repairs` and `content/en/complaints`.
 */
export { amountWords, led } from './amounts.ts';
export { cautionWait } from './cautions.ts';
export { checkWords, needWords, sortWords } from './check.ts';
export { countWords } from './counts.ts';
export { allowWords, finderWords, logWords, partWait } from './frame.ts';
export { handOnWords } from './hand-on.ts';
export { pictureWords } from './picture.ts';
export { planAsks } from './plan.ts';
export { sheetWords } from './sheet.ts';
export { bundledWords, complaintWords, fixtureWords, quickWords, startWords } from './start.ts';
export { standInWords, suspectWords } from './suspects.ts';
export { verdictWords } from './verdict.ts';
export { whyWords } from './why.ts';
