import { shelfOf } from '../shelf/index.ts';
import { NO_DECK } from './deck.ts';
import { deckText } from './version.ts';

/** The deck on this device. */
export const deckShelf = shelfOf(
	'prep-bay.review',
	NO_DECK,
	async () => (await import('./reading.ts')).readDeck,
	deckText,
);
