/** Words of the printed fault tree: how one is chosen, and what stands on its page. What is checked and mended has its words elsewhere. */
export { casefileWords, cautionShort, treePage } from './words.ts';
