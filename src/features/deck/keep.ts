import { DEVICE, type Read, shelfOf } from '../../storage/index.ts';
import { type Deck, merged, NO_DECK, withLearnt } from './deck.ts';
import { type Skill, skillText } from './skill.ts';
import { deckText } from './version.ts';

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
export const importDeck = async (text: string): Promise<Read<Deck>> => (await import('./reading.ts')).readDeck(text);
