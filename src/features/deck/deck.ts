import { KIND_IDS, type KindId, LEVELS, type PaperLevel } from '../../../shared/paper/index.ts';
import { KEPT } from '../../storage/index.ts';

/** How well one skill is held, as the spaced-review library counts it. Plain JSON; times in ms since 1970. */
export interface Card {
	readonly due: number;
	/** Days after which nine in ten would still know it. */
	readonly stability: number;
	/** 1 (easy) to 10. */
	readonly difficulty: number;
	/** 0 new, 1 being learnt, 2 learnt, 3 being learnt again. */
	readonly state: 0 | 1 | 2 | 3;
	readonly step: number;
	/** Days the last interval was meant to last. */
	readonly days: number;
	/** Times asked, and times forgotten once learnt. */
	readonly reps: number;
	readonly lapses: number;
	/** When it was asked last; null where never. */
	readonly last: number | null;
	/** When it was learnt first, and so came in. */
	readonly added: number;
}

/** Cards by the text of their skill. What this version does not know is kept as it is. */
export type Deck = ReadonlyMap<string, Card>;

export const NO_DECK: Deck = new Map();

/** Skills learnt just now, put in; one that is there already stays as it stands. @param now ms since 1970 */
export function withLearnt(deck: Deck, skills: readonly string[], now: number): Deck {
	const fresh = skills.filter((skill) => !deck.has(skill));
	if (fresh.length === 0) return deck;
	const card: Card = {
		due: now,
		stability: 0,
		difficulty: 0,
		state: 0,
		step: 0,
		days: 0,
		reps: 0,
		lapses: 0,
		last: null,
		added: now,
	};
	return new Map([...deck, ...fresh.map((skill) => [skill, card] as const)]);
}

/**
 * Two decks as one, as from two devices: of each skill the card that was asked later, then the one asked more often, then a fixed
 * choice; so that nothing is lost, and the order of merging is all one.
 */
export function merged(own: Deck, other: Deck): Deck {
	const all = new Map(own);
	for (const [skill, card] of other) {
		const mine = all.get(skill);
		if (!mine || isLater(card, mine)) all.set(skill, card);
	}
	return all;
}

function isLater(a: Card, b: Card): boolean {
	const [left, right] = [rankOf(a), rankOf(b)];
	const at = left.findIndex((value, i) => value !== right[i]);
	return at >= 0 && (left[at] ?? 0) > (right[at] ?? 0);
}

const rankOf = ({ last, reps, due, stability, difficulty, lapses, state, step, days, added }: Card): number[] => [
	last ?? -1,
	reps,
	due,
	stability,
	difficulty,
	lapses,
	state,
	step,
	days,
	-added,
];

/** One small thing that can be asked about again and again, each time with other numbers: a kind of question on a fixture, at a level. */
export interface Skill {
	readonly kind: KindId;
	/** A profile's id; null where the kind takes what it likes. */
	readonly about: string | null;
	readonly level: PaperLevel;
}

/** A skill as a text, permanent: decks are keyed by it. */
export const skillText = ({ kind, about, level }: Skill): string => `${kind}@${about ?? 'any'}.${level}`;

const TEXT = /^([a-z0-9-]{1,40})@([a-z][a-z0-9-]{0,39})\.([a-z]+)$/;

/** The skill of such a text; null where it is none that there is. */
export function skillOf(text: string): Skill | null {
	const [, id, about = '', hard] = TEXT.exec(text) ?? [];
	const kind = KIND_IDS.find((each) => each === id);
	const level = LEVELS.find((each) => each === hard);
	return kind && level ? { kind, about: about === 'any' ? null : about, level } : null;
}

/** A deck as text, to be kept or exported. */
export function deckText(deck: Deck): string {
	return JSON.stringify({ version: KEPT.review.version, cards: Object.fromEntries(deck) });
}
