/**
 * Staying able: what was learnt in lessons and papers is a deck of small skills, each a kind of question on a fixture at a level,
 * asked again (with other numbers each time) when it is about to fade, by a library of spaced review. The deck is pure data
 * (`deck.ts`), scheduled in `schedule.ts`, chosen from in `session.ts`, and kept on the device.
 */
export { keepLearnt } from './keep.ts';
export { Review } from './Review.tsx';
export type { Skill } from './skill.ts';
