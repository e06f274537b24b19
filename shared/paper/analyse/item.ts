import { correlation } from '../../statistics/index.ts';
import type { ItemMark } from '../types.ts';
import { intervalOf } from './groups.ts';
import type { Given, ItemFigures, ItemFinding } from './types.ts';

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

function givenTo(marks: readonly ItemMark[], totals: readonly number[], questions: number): Given[] {
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
