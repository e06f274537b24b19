import { correlation, crossedShare, exactInterval, type Interval, wilsonInterval } from '../statistics/index.ts';
import type { KindId, MistakeId, PaperLevel, TopicId } from './ids.ts';
import type { ItemMark } from './types.ts';

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
export interface AnswerCount {
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
	readonly level: PaperLevel;
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
	readonly given: readonly AnswerCount[];
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

/** A question as each person answered it, beside each person's score on the whole paper. */
export interface Column {
	readonly marks: readonly ItemMark[];
	readonly totals: readonly number[];
	readonly questions: number;
}

/** The figures of one question. At least one person. */
export function itemFigures({ marks, totals, questions }: Column): ItemFigures {
	const [first] = marks as [ItemMark];
	const scores: number[] = marks.map(({ score }) => score);
	const right = marks.filter((mark) => mark.score === 1).length;
	const figures = {
		item: first.item,
		kind: first.kind,
		topic: first.topic,
		level: first.level,
		of: marks.length,
		answered: marks.filter(({ answered }) => answered).length,
		right,
		difficulty: right / marks.length,
		interval: intervalOf(right, marks.length),
		discrimination: discriminationOf(scores, totals),
		pointBiserial: correlation(
			scores,
			totals.map((total, person) => total - (scores[person] ?? 0)),
		),
		itemTotal: correlation(scores, totals),
		given: givenTo(marks, totals, questions),
	};
	return { ...figures, finding: findingOf(figures) };
}

/** Kelley's share at each end: the groups differ most surely at 27 %. */
const END = 0.27;

function discriminationOf(scores: readonly number[], totals: readonly number[]): number | null {
	const steps = [...new Set(totals)].sort((a, b) => a - b);
	if (totals.length < 4 || steps.length < 2) return null;
	const size = Math.max(1, Math.round(totals.length * END));
	const alike = steps.map((step) => scores.filter((_, person) => totals[person] === step));
	return (hitsOf(alike.toReversed(), size) - hitsOf(alike, size)) / size;
}

/**
 * How many of the first so many were right. Of people with one total, who share fewer places than they are, each has a part of a
 * place: it comes to the mean over every way of ranking them, as mid-ranks do (Kendall 1945 on ties, from memory), and hangs on no
 * name or order.
 */
function hitsOf(alike: readonly (readonly number[])[], size: number): number {
	let [hits, left] = [0, size];
	for (const scores of alike) {
		const right = scores.reduce((sum, score) => sum + score, 0);
		hits += scores.length <= left ? right : (right * left) / scores.length;
		left -= Math.min(left, scores.length);
	}
	return hits;
}

function givenTo(marks: readonly ItemMark[], totals: readonly number[], questions: number): AnswerCount[] {
	const groups = new Map<string | null, { mark: ItemMark; count: number; rest: number }>();
	for (const [person, mark] of marks.entries()) {
		const group = groups.get(mark.gave) ?? { mark, count: 0, rest: 0 };
		group.count += 1;
		group.rest += (totals[person] ?? 0) - mark.score;
		groups.set(mark.gave, group);
	}
	return [...groups]
		.map(([gave, { mark, count, rest }]) => ({
			gave,
			count,
			right: mark.right,
			looksLike: mark.looksLike,
			rest: questions > 1 ? rest / count / (questions - 1) : null,
		}))
		.toSorted((a, b) => b.count - a.count || Number(b.right) - Number(a.right) || compare(a.gave, b.gave));
}

const compare = (a: string | null, b: string | null): number => ((a ?? '') < (b ?? '') ? -1 : 1);

/**
 * Limits by which a question is judged: common practice, no one source. Under 0.2 a correlation is called poor and under 0 a
 * fault (Ebel and Frisbie 1991, from memory); ten people, 95 % and 20 % are this house's own.
 */
const LIMITS = Object.freeze({ people: 10, easy: 0.95, hard: 0.2, upsideDown: -0.1, little: 0.1 });

function findingOf({
	of,
	difficulty,
	pointBiserial,
}: Pick<ItemFigures, 'of' | 'difficulty' | 'pointBiserial'>): ItemFinding {
	// sums taken in another order differ in the last digits, and must not find otherwise
	const telling = pointBiserial === null ? null : Math.round(pointBiserial * 1e9) / 1e9;
	if (of < LIMITS.people) return 'too-few';
	if (telling !== null && telling < LIMITS.upsideDown) return 'upside-down';
	if (difficulty >= LIMITS.easy) return 'too-easy';
	if (difficulty <= LIMITS.hard) return 'too-hard';
	return telling !== null && telling < LIMITS.little ? 'tells-little' : 'sound';
}

/** An interval wider than this tells nothing to act on: this house's own. */
const WIDEST = 0.5;

/**
 * Share right by whatever a question is grouped by, weakest first, over a class.
 * @param rows a person's marks each, all in one order of questions
 */
export function groupBy<Id extends string>(
	rows: readonly (readonly ItemMark[])[],
	idOf: (mark: ItemMark) => Id,
): GroupFigures<Id>[] {
	return placesBy(rows[0] ?? [], idOf)
		.map(([id, places]): GroupFigures<Id> => {
			const scores = rows.map((row) => places.map((at): number => row[at]?.score ?? 0));
			const right = scores.flat().reduce((sum, score) => sum + score, 0);
			const of = rows.length * places.length;
			const { interval, from } = crossedShare(scores) ?? { interval: { from: 0, to: 1 }, from: 'people' };
			return { id, right, of, share: right / of, interval, short: interval.to - interval.from > WIDEST ? from : null };
		})
		.toSorted(weakestFirst);
}

/**
 * The same of one person. The questions of a group are some of many such, and each is right or wrong by itself as far as this
 * person goes, so the exact interval holds.
 */
export function groupOne<Id extends string>(
	marks: readonly ItemMark[],
	idOf: (mark: ItemMark) => Id,
): GroupFigures<Id>[] {
	return placesBy(marks, idOf)
		.map(([id, places]): GroupFigures<Id> => {
			const of = places.length;
			const right = places.reduce((sum, at) => sum + (marks[at]?.score ?? 0), 0);
			const interval = exactInterval(right, of) ?? { from: 0, to: 1 };
			const short = interval.to - interval.from > WIDEST ? 'questions' : null;
			return { id, right, of, share: right / of, interval, short };
		})
		.toSorted(weakestFirst);
}

/** Where in the paper the questions of each group stand. */
function placesBy<Id extends string>(marks: readonly ItemMark[], idOf: (mark: ItemMark) => Id): [Id, number[]][] {
	const places = new Map<Id, number[]>();
	for (const [at, mark] of marks.entries()) places.set(idOf(mark), [...(places.get(idOf(mark)) ?? []), at]);
	return [...places];
}

const weakestFirst = (a: GroupFigures<string>, b: GroupFigures<string>): number =>
	a.share - b.share || b.of - a.of || (a.id < b.id ? -1 : 1);

/** Wilson's interval of somebody's share, where there is somebody. */
const intervalOf = (right: number, of: number): Interval => wilsonInterval(right, of) ?? { from: 0, to: 1 };
