import { type BrowserStore, KEPT, textAt } from '../../storage/index.ts';

/** Whether anything may be kept there: only then does a page fetch what reads it. */
export const mayHoldStock = (store: BrowserStore): boolean => textAt(store, KEPT.stock.key) !== null;
