import { type CardInput, forgetting_curve, fsrs, type Grade, Rating, type State } from 'ts-fsrs';
import type { Card, Deck } from './deck.ts';

/** How it went: wrong, right by guess, right. */
export type Outcome = 'wrong' | 'guessed' | 'right';

const GRADES: Readonly<Record<Outcome, Grade>> = Object.freeze({
	wrong: Rating.Again,
	guessed: Rating.Hard,
	right: Rating.Good,
});

/**
 * FSRS 6 with its published weights, aimed at nine in ten known when asked (the library's own default). No chance in it, so that two
 * devices and a test agree; a year at most, for a gig needs it fresh.
 */
const scheduler = fsrs({ enable_fuzz: false, request_retention: 0.9, maximum_interval: 365 });

const inLibrary = (card: Card): CardInput => ({
	due: card.due,
	stability: card.stability,
	difficulty: card.difficulty,
	elapsed_days: 0,
	scheduled_days: card.days,
	learning_steps: card.step,
	reps: card.reps,
	lapses: card.lapses,
	state: card.state as State,
	last_review: card.last,
});

/** The deck after a skill was asked. A skill that is not in it changes nothing. @param now ms since 1970 */
export function withAsked(deck: Deck, skill: string, outcome: Outcome, now: number): Deck {
	const card = deck.get(skill);
	if (!card) return deck;
	// a clock set back must not send a card into the past
	const at = Math.max(now, card.last ?? 0);
	const { card: next } = scheduler.next(inLibrary(card), at, GRADES[outcome]);
	return new Map(deck).set(skill, {
		due: next.due.getTime(),
		stability: next.stability,
		difficulty: next.difficulty,
		state: next.state,
		step: next.learning_steps,
		days: next.scheduled_days,
		reps: next.reps,
		lapses: next.lapses,
		last: at,
		added: card.added,
	});
}

const DAY_MS = 86_400_000;

/** The chance that it would be known now, 0 to 1; null for what was never asked. */
export function recallOf(card: Card, now: number): number | null {
	if (card.state === 0 || card.last === null) return null;
	// by the hour: the library's own counts whole days, and a sitting orders what fell due the same day
	return forgetting_curve(scheduler.parameters.w, Math.max(0, now - card.last) / DAY_MS, card.stability);
}

/** How it stands, in a word. `fading`: due, or nearly forgotten; `learning`: not held for a day yet. */
export type Standing = 'new' | 'learning' | 'known' | 'fading';

/** @param now ms since 1970 */
export function standingOf(card: Card, now: number): Standing {
	if (card.state === 0) return 'new';
	if (card.state !== 2) return 'learning';
	return card.due <= now ? 'fading' : 'known';
}
