/**
 * The tables of the reference for the crew's own fixtures. The reference itself is pages of words with no script, made when the site is
 * built; these are worked out in the page, by the same code, which is fetched with the first fixture that is picked.
 */
export { OwnReference } from './OwnReference.tsx';
