/**
 * What was learnt, as a deck of small skills: each a kind of question on a fixture at a level. Pure data (`deck.ts`), scheduled by a
 * library of spaced review (`schedule.ts`), chosen from for a sitting (`session.ts`), and kept on the device. Lessons and papers
 * put skills in (`keepLearnt`); `src/features/review` asks them again.
 */
export { type Deck, merged, NO_DECK } from './deck.ts';
export { deckShelf, importDeck, keepLearnt } from './keep.ts';
export { type Outcome, recallOf, type Standing, standingOf, withAsked } from './schedule.ts';
export { dueNow, nextDue, SITTING } from './session.ts';
export { type Skill, skillOf } from './skill.ts';
export { deckText } from './version.ts';
