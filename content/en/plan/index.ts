/**
 * Words of tonight's rig: the plan, what is wrong with it, its sums, the table that is pasted in, the prep slips and the printed
 * pages, what is ticked off at the lights and what changed. Facts come from the plan; a name by an id stands under that id.
 */
export { changeWords } from './changes.ts';
export { checkWords } from './check.ts';
export { figureNames, figureWords, howWords, needWords, partNames, unitOf } from './figures.ts';
export { lightWords } from './light.ts';
export { planPage, planWords, practiseWords, rowWords, ruleWords, startWords } from './page.ts';
export { problemText, repairText } from './problems.ts';
export { labelWords, lineWords, loadWords } from './sheets.ts';
export { printWords, slipSteps, slipWords } from './slips.ts';
export { pasteWords, rowTroubles, tableWords } from './table.ts';
export { stepNames, stepShort, tickWords, warningOf, warningWords } from './ticks.ts';
