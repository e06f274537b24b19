/** Words of the reference pages: headings, leads, columns. Every figure in them is filled in from the model, by `src/features/reference`. */

export { type Elsewhere, elsewhere, elsewhereWords } from './elsewhere.ts';
export { fixtureWords } from './fixtures.ts';
export { ownReference } from './own.ts';
export { pageWords, referenceFrame } from './pages.ts';
export { addressWords, cautionWords, faultWords, levelWords, lineWords } from './tables.ts';
