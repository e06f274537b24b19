import type { Deck } from './deck.ts';

/** The version that is written. */
export const VERSION = 1;

/** A deck as text, to be kept or exported. */
export function deckText(deck: Deck): string {
	return JSON.stringify({ version: VERSION, cards: Object.fromEntries(deck) });
}
