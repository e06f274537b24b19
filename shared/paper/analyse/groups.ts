import { crossedShare, exactInterval, type Interval, wilsonInterval } from '../../statistics/index.ts';
import type { ItemMark } from '../types.ts';
import type { GroupFigures } from './types.ts';

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
export const intervalOf = (right: number, of: number): Interval => wilsonInterval(right, of) ?? { from: 0, to: 1 };
