/**
 * What was learnt, as a deck of small skills: each a kind of question on a fixture at a level. Pure data (`deck.ts`), scheduled by a
 * library of spaced review (`schedule.ts`), chosen from for a sitting (`session.ts`), and kept on the device. Lessons and papers
 * put skills in (`keepLearnt`); `src/features/review` asks them again.
 */

import { DEVICE, type ReadResult, shelfOf } from '../../storage/index.ts';
import { type Deck, deckText, merged, NO_DECK, type Skill, skillText, withLearnt } from './deck.ts';

export { type Card, type Deck, deckText, merged, NO_DECK, type Skill, skillOf } from './deck.ts';
export {
	type DeckStanding,
	dueNow,
	nextDue,
	type RecallOutcome,
	recallOf,
	SITTING,
	standingOf,
	withAsked,
} from './schedule.ts';

/** The deck on this device. */
export const deckShelf = shelfOf('review', {
	none: NO_DECK,
	reader: async () => (await import('./reading.ts')).readDeck,
	write: deckText,
	merge: merged,
});

/** Puts skills into the deck on this device, where it can be kept at all. Those that are there stay as they stand. */
export async function keepLearnt(skills: readonly Skill[]): Promise<void> {
	await deckShelf.change(DEVICE, (deck) => withLearnt(deck, skills.map(skillText), Date.now()));
}

/** A deck from a file. @throws InputError as `readDeck` does */
export const importDeck = async (text: string): Promise<ReadResult<Deck>> =>
	(await import('./reading.ts')).readDeck(text);
