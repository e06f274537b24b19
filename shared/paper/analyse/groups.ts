import { type Interval, wilsonInterval } from '../../statistics/index.ts';
import type { ItemMark } from '../types.ts';
import type { GroupFigures } from './types.ts';

/** Share right by whatever a question is grouped by, weakest first. */
export function groupBy<Id extends string>(
	marks: readonly ItemMark[],
	idOf: (mark: ItemMark) => Id,
): GroupFigures<Id>[] {
	const counts = new Map<Id, { right: number; of: number }>();
	for (const mark of marks) {
		const count = counts.get(idOf(mark)) ?? { right: 0, of: 0 };
		count.right += mark.score;
		count.of += 1;
		counts.set(idOf(mark), count);
	}
	return [...counts]
		.map(([id, { right, of }]) => ({ id, right, of, share: right / of, interval: intervalOf(right, of) }))
		.toSorted((a, b) => a.share - b.share || b.of - a.of || (a.id < b.id ? -1 : 1));
}

/** Wilson's interval of somebody's share, where there is somebody. */
export const intervalOf = (right: number, of: number): Interval => wilsonInterval(right, of) ?? { from: 0, to: 1 };
