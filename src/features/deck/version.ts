import { KEPT } from '../../storage/index.ts';
import type { Deck } from './deck.ts';

/** A deck as text, to be kept or exported. */
export function deckText(deck: Deck): string {
	return JSON.stringify({ version: KEPT.review.version, cards: Object.fromEntries(deck) });
}
