import { type Read, shelfOf } from '../../shelf/index.ts';
import { type Deck, NO_DECK, withLearnt } from './deck.ts';
import { type Skill, skillText } from './skill.ts';
import { deckText } from './version.ts';

/** The deck on this device. */
export const deckShelf = shelfOf(
	'prep-bay.review',
	NO_DECK,
	async () => (await import('./reading.ts')).readDeck,
	deckText,
);

/** Puts skills into the deck on this device, where it can be kept at all. Those that are there stay as they stand. */
export async function keepLearnt(skills: readonly Skill[]): Promise<void> {
	await deckShelf.change(
		() => localStorage,
		(deck) => withLearnt(deck, skills.map(skillText), Date.now()),
	);
}

/** A deck from a file. @throws InputError as `readDeck` does */
export const importDeck = async (text: string): Promise<Read<Deck>> => (await import('./reading.ts')).readDeck(text);
