/**
 * The door for those who made their drill themselves, from a kind and a seed: the site, and the papers. A task is taken as it is, and
 * no schema library is needed. Scripts go through `index.ts`, which holds it to its schema.
 */
export { markDrill } from './mark.ts';
export { type Hint, hintOn, shortestWay } from './way/index.ts';
