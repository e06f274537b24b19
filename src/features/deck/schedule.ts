import { type CardInput, forgetting_curve, fsrs, type Grade, Rating, type State } from 'ts-fsrs';
import type { Card, Deck } from './deck.ts';

/** How it went: wrong, right by guess, right. */
export type RecallOutcome = 'wrong' | 'guessed' | 'right';

const GRADES: Readonly<Record<RecallOutcome, Grade>> = Object.freeze({
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
export function withAsked(deck: Deck, skill: string, outcome: RecallOutcome, now: number): Deck {
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
export type DeckStanding = 'new' | 'learning' | 'known' | 'fading';

/** @param now ms since 1970 */
export function standingOf(card: Card, now: number): DeckStanding {
	if (card.state === 0) return 'new';
	if (card.state !== 2) return 'learning';
	return card.due <= now ? 'fading' : 'known';
}

/** Most in one sitting, about five minutes, and most of them new: ours, no source. */
export const SITTING = Object.freeze({ most: 12, fresh: 5, minutes: 5 });

/**
 * What to ask now: what is due, least likely to be known first; then new ones, in the order they were learnt. Skills of one
 * kind are kept apart where they can be, since two alike in a row are no test.
 * @param now ms since 1970
 */
export function dueNow(deck: Deck, now: number, most: number = SITTING.most): string[] {
	const due = [...deck].filter(([, card]) => card.due <= now);
	const asked = due
		.filter(([, { state }]) => state !== 0)
		.toSorted(([a, one], [b, two]) => (recallOf(one, now) ?? 0) - (recallOf(two, now) ?? 0) || order(a, b));
	const fresh = due
		.filter(([, { state }]) => state === 0)
		.toSorted(([a, one], [b, two]) => one.added - two.added || order(a, b))
		.slice(0, SITTING.fresh);
	return apart([...asked, ...fresh].slice(0, most).map(([skill]) => skill));
}

/** When the next one is due, ms since 1970; null for an empty deck. */
export function nextDue(deck: Deck): number | null {
	let next: number | null = null;
	for (const { due } of deck.values()) if (next === null || due < next) next = due;
	return next;
}

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const kindOf = (skill: string): string => skill.split('@')[0] ?? skill;

/** The same skills, each time the first that is of another kind than the one before. */
function apart(skills: readonly string[]): string[] {
	const left = [...skills];
	const out: string[] = [];
	while (left.length > 0) {
		const last = out.at(-1);
		const at = left.findIndex((skill) => last === undefined || kindOf(skill) !== kindOf(last));
		out.push(...left.splice(Math.max(0, at), 1));
	}
	return out;
}
