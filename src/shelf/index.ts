/**
 * Things kept on the device, one text under one key. What cannot be read is set aside before anything is written over it, entry by
 * entry where the reader can tell them apart; a change reads again first, since another tab may have written meanwhile; and a
 * browser that keeps nothing is no error. What reads text is fetched when there is some.
 */
export { Keeping } from './Keeping.tsx';
export { type Found, type Read, type Shelf, type Store, shelfOf } from './shelf.ts';
export { Trouble } from './Trouble.tsx';
export type { KeepingWords } from './words.ts';
