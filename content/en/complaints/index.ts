/**
 * The complaints in words, by the finder's ids: how the crew says it, as a question on a button, and what tells it from its
 * neighbours. When a rig shows one is the finder's to say.
 */
export { type ComplaintWords, complaints } from './complaints.ts';
