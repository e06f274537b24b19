/**
 * The crew's own fixtures: a list kept on the device, an editor where a chart is pasted and checked, and ways onto the bench. What
 * reads charts and makes fixtures of them is fetched when it is asked for (`maker.ts`, `Editor.tsx`); the list needs none of it.
 */
export { openStock } from './keep.ts';
export { nameOf } from './PutOn.tsx';
export { Stock } from './Stock.tsx';
export { inOrder, type StockList } from './stock.ts';

/** What makes fixtures of entries, fetched. */
export const loadMaker = () => import('./maker.ts');
