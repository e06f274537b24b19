/**
 * The faults in words, by the catalogue's ids: what a tech would call it, what has happened and what that does, what to
 * write on the cloth tape afterwards, and why it is taken for as common as it is. Templates by the grammar of `content/en/rig`; the facts are filled in by `src/wording`, and are
 * read off the fault's own events, so no value stands here.
 */
export { type FaultWords, faults, unknown } from './faults.ts';
export { weightReasons } from './weights.ts';
