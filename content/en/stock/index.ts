/**
 * Words for the crew's own fixtures: the page they are kept on, what is said of a chart as it is read and of a
 * manual's page, and what is assumed of a fixture. Names that a chart leaves out are here too.
 */

export { cardWords } from './card.ts';
export { figuresFrame, figureWords } from './figures.ts';
export { fileWords } from './file.ts';
export { effectWords, stockKeeping, stockPage, stockWords } from './frame.ts';
export { manualTroubles, manualWords, pageDoubtWords } from './manual.ts';
export { marksFrame, markWords } from './marks.ts';
export { stockNames } from './names.ts';
export { ownWords } from './own.ts';
export { panelEdit, panelQuestions, panelSettle } from './panel.ts';
export { panelMarkWords } from './panel-marks.ts';
export { panelWords } from './panel-words.ts';
export { REAL_ACTS } from './real-acts.ts';
