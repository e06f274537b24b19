import { InputError, shown } from '../error/index.ts';
import { alphaInterval, kr20, variance } from '../statistics/index.ts';
import { groupBy, groupOne, type ItemAnalysis, itemFigures } from './figures.ts';
import type { ItemMark, PaperMark } from './types.ts';

/**
 * Analyses one paper from everybody's marks of it: difficulty, discrimination and point-biserial of each question, KR-20 with
 * its 95 % interval, topics, kinds and persons, and what was missed.
 * @param marks of one paper, one for each person whose paper counts
 * @throws InputError `analyse.marks` for what are no marks, `analyse.none` for no marks, `analyse.papers` where they are of different papers
 */
export function analyse(marks: readonly PaperMark[]): ItemAnalysis {
	requireMarks(marks);
	const [first] = marks;
	if (!first) throw new InputError('analyse.none', 'marks', { trouble: 'no-marks' });
	const columns = first.items.map(({ item }) => item);
	for (const [at, mark] of marks.entries())
		if (mark.paper !== first.paper || mark.items.length !== columns.length)
			throw new InputError('analyse.papers', `marks[${at}]`, { trouble: 'different-papers' });
	const rows = marks.map(({ items }) => inOrder(items, columns));
	const totals = marks.map(({ score }) => score);
	const spread = Math.sqrt(variance(totals) ?? 0);
	const reliability = kr20(rows.map((row) => row.map(({ score }) => score)));
	// below 0 the figure tells nothing, and no score is less certain than the spread of all
	const error = reliability === null ? null : spread * Math.sqrt(1 - Math.max(0, reliability));
	const kinds = groupBy(rows, ({ kind }) => kind);
	const topics = groupBy(rows, ({ topic }) => topic);
	return {
		paper: first.paper,
		people: marks.length,
		questions: columns.length,
		mean: totals.reduce((sum, total) => sum + total, 0) / totals.length,
		deviation: spread,
		passed: marks.filter(({ passed }) => passed).length,
		kr20: reliability,
		kr20Interval: alphaInterval(reliability, marks.length, columns.length),
		error,
		again: error === null ? null : withinOf(error, marks.length),
		items: columns.map((_, at) =>
			itemFigures({
				marks: rows.map((row) => row[at] as ItemMark),
				totals,
				questions: columns.length,
			}),
		),
		topics,
		kinds,
		persons: marks.map(({ score, percent, passed, items }, at) => ({
			at,
			score,
			percent,
			passed,
			topics: groupOne(items, ({ topic }) => topic),
		})),
		missed: {
			topics: topics.filter(({ share }) => share < MISSED).map(({ id }) => id),
			kinds: kinds.filter(({ share }) => share < MISSED).map(({ id }) => id),
		},
	};
}

/** Two thirds of a normal distribution lie within so many of its deviations. */
const TWO_THIRDS = 0.9674215661017014;

/** Within how many whole questions two people in three come again, on a second paper as hard: see `ItemAnalysis.again`. */
function withinOf(error: number, people: number): number {
	const between = Math.SQRT2 * error * Math.sqrt(people / (people - 1));
	// whole scores: within k is within k and a half
	return Math.max(1, Math.ceil(TWO_THIRDS * between - 0.5));
}

const isMark = (mark: unknown): mark is PaperMark => {
	const { items, score } = (mark ?? {}) as Partial<PaperMark>;
	return (
		Number.isFinite(score) &&
		Array.isArray(items) &&
		items.every((each) => typeof each?.item === 'string' && Number.isFinite(each.score))
	);
};

/** What came is a list of marks, each with a list of items. */
function requireMarks(marks: readonly unknown[]): void {
	if (!Array.isArray(marks)) throw new InputError('analyse.marks', 'marks', { expected: 'list', found: shown(marks) });
	for (const [at, mark] of marks.entries())
		if (!isMark(mark)) throw new InputError('analyse.marks', `marks[${at}]`, { expected: 'mark', found: shown(mark) });
}

/** Below this share right, something is to be taught again: common practice, no source. */
const MISSED = 0.7;

/** Each person's marks in the first one's order: a result may come with its questions shuffled. */
function inOrder(items: readonly ItemMark[], order: readonly string[]): readonly ItemMark[] {
	if (items.every(({ item }, at) => item === order[at])) return items;
	const byId = new Map(items.map((mark) => [mark.item, mark]));
	return order.map((id, at) => {
		const mark = byId.get(id);
		if (!mark) throw new InputError('analyse.papers', `items[${at}]`, { trouble: 'different-papers' });
		return mark;
	});
}
