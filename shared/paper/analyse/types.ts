import type { Interval } from '../../statistics/index.ts';
import type { KindId, Level, MistakeId, TopicId } from '../ids.ts';

/** What a question's figures say of it, by the first of these that holds. Words for each are in `content/en/papers`. */
export type ItemFinding =
	/** Fewer than ten people answered it: too few to judge by. */
	| 'too-few'
	/** Those who did well elsewhere did worse here: look for a wrong key or a trap. */
	| 'upside-down'
	/** Nearly all were right: a warm-up, which tells nobody from anybody. */
	| 'too-easy'
	/** Nearly all were wrong: not taught yet, or not clear. */
	| 'too-hard'
	/** Right or wrong hardly goes with the rest of the paper. */
	| 'tells-little'
	| 'sound';

/** How one answer was given. */
export interface Given {
	/** As `ItemMark.gave`; null for those who left it. */
	readonly gave: string | null;
	readonly count: number;
	readonly right: boolean;
	readonly looksLike: MistakeId | null;
	/** Mean share of the rest of the paper that those who gave it had right, 0 to 1; null where there is no rest. */
	readonly rest: number | null;
}

/** One question over all who sat the paper. */
export interface ItemFigures {
	readonly item: string;
	readonly kind: KindId;
	readonly topic: TopicId;
	readonly level: Level;
	/** How many sat it (answered or not), answered it, had it right. */
	readonly of: number;
	readonly answered: number;
	readonly right: number;
	/** Share right, 0 (hard) to 1 (easy): what testing calls difficulty. Not answered counts as wrong. */
	readonly difficulty: number;
	/** Wilson's 95 % interval of it. */
	readonly interval: Interval;
	/**
	 * Share right of the upper 27 % by total less that of the lower 27 % (Kelley 1939), −1 to 1. People with one total share the
	 * places that are left: it is the mean over every way of ranking them. Null with fewer than four people, or where all totals
	 * are equal.
	 */
	readonly discrimination: number | null;
	/** Correlation of right with the total without this question, −1 to 1; null where either has no spread. */
	readonly pointBiserial: number | null;
	/** The same with the question in its total, as older tables have it: always kinder. */
	readonly itemTotal: number | null;
	/** Every answer given, most given first. */
	readonly given: readonly Given[];
	readonly finding: ItemFinding;
}

/** A topic, or a kind of question, over all. */
export interface GroupFigures<Id extends string> {
	readonly id: Id;
	readonly right: number;
	readonly of: number;
	/** 0 to 1. */
	readonly share: number;
	/** 95 %: of a class, for people and questions like these (`crossedShare`); of one person, for questions like these (exact). */
	readonly interval: Interval;
	/** What there is too little of to tell anything; null where it tells. */
	readonly short: 'people' | 'questions' | null;
}

/** One person's paper, by its place in what was handed in. */
export interface PersonFigures {
	readonly at: number;
	readonly score: number;
	readonly percent: number;
	readonly passed: boolean;
	readonly topics: readonly GroupFigures<TopicId>[];
}

/** A paper as those who sat it show it to be. */
export interface ItemAnalysis {
	/** The paper's mark. */
	readonly paper: string;
	readonly people: number;
	readonly questions: number;
	/** Mean score, and its standard deviation (divided by the number of people). */
	readonly mean: number;
	readonly deviation: number;
	readonly passed: number;
	/** KR-20, with population variances; null where it cannot be worked out (one person, one question, all totals equal). */
	readonly kr20: number | null;
	/** Feldt's 95 % interval of it. */
	readonly kr20Interval: Interval | null;
	/** Standard error of measurement: deviation × √(1 − KR-20), in questions, with a KR-20 below 0 taken as 0: how far a score strays from what the person would have on average. Two scores stray √2 times as far from each other, which is `again`. */
	readonly error: number | null;
	/**
	 * Whole questions, 1 and more: on a second paper just as hard, two people in three at least come within so many of this score.
	 * √2 × error (Harvill 1991; Dudek 1979), × √(people / (people − 1)) since a class is a sample, at the two thirds of a normal
	 * distribution, rounded up since scores are whole. Null where `error` is.
	 */
	readonly again: number | null;
	readonly items: readonly ItemFigures[];
	readonly topics: readonly GroupFigures<TopicId>[];
	readonly kinds: readonly GroupFigures<KindId>[];
	readonly persons: readonly PersonFigures[];
	/** What to set next: topics and kinds of which under 70 % was right, weakest first; empty where nothing was missed. */
	readonly missed: { readonly topics: readonly TopicId[]; readonly kinds: readonly KindId[] };
}
