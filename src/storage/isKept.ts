import { type BrowserStore, textAt } from './device.ts';
import { KEPT, type KeptId } from './kept.ts';

/** Whether anything stands under a thing's one key: only then does a page fetch what reads it. */
export const isKept = (store: BrowserStore, id: KeptId): boolean => textAt(store, KEPT[id].key) !== null;
