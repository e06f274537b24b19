/**
 * Questions from a page to its worker, for features whose working out is heavy and whose answers are plain data. The worker holds a
 * `Work`, a few functions by name, and answers in the order asked (`serve`), once all is there that it needs (`withAll`); the page asks
 * by the same names (`askWorker`).
 */
export { type Ask, askWorker, NoWorker, Refused } from './ask.ts';
export { fetched, NotFetched, withAll } from './late.ts';
export { serve } from './serve.ts';
export type { Work } from './types.ts';
