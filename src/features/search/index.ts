/**
 * Search over lessons, glossary, reference, faults and cautions. What can be found is gathered by `src/site/indexing` when the site
 * is built, and stands in one file that the service worker keeps; so it searches with no network. The page's one island fetches
 * that file and filters as you type.
 */
export { ALSO, indexText, type SearchDoc } from './find.ts';
export { Search } from './Search.tsx';
