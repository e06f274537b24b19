/**
 * The checks in words, by the finder's kinds: what to look at or do and how to put it back, and each thing it can show as a
 * button says it. Which of them a rig has, and what each shows there, is the finder's to say. A check that tries a mend has its
 * words in `content/en/repairs`; the answers to it are here.
 */
export { type CheckWords, checks, mendTried } from './checks.ts';
export { checkParts, places } from './parts.ts';
export { type CheckSpot, SPOTS } from './spots.ts';
