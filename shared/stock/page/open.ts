import { linesOf } from '../rows.ts';
import type { PageDoubt, PageText } from './types.ts';

/**
 * The doubts that are still open in a text that a person has gone on with, each at the line where its own stands by now: one whose
 * line was changed is settled, one whose line only moved is not. Where lines say the same and it can't be told which of them was in
 * doubt, each of them is.
 */
export function stillOpen({ text, doubts }: PageText, now: string): readonly PageDoubt[] {
	const at = standsAt(linesIn(text), linesIn(now));
	return doubts
		.flatMap((doubt) =>
			at(doubt.place.line - 1).map((line) => ({ ...doubt, place: { ...doubt.place, line: line + 1 } })),
		)
		.toSorted((a, b) => a.place.line - b.place.line);
}

const linesIn = (text: string): string[] => linesOf(text).map((line) => line.text);

/** Pairs of lines past which lines are told by their words alone. */
const MOST_PAIRS = 1_000_000;

/** Where each line of a text stands in a later one, both counted from 0. */
function standsAt(before: readonly string[], after: readonly string[]): (line: number) => readonly number[] {
	const same = (line: number): number[] => after.flatMap((text, i) => (text === before[line] ? [i] : []));
	if (before.length * after.length > MOST_PAIRS) return same;
	const kept = mostKept(before, after);
	const left = mostKept(before.toReversed(), after.toReversed());
	const all = kept(before.length, after.length);
	// a pair that is in one of the longest lists of lines that kept their order
	const isKept = (line: number, i: number): boolean =>
		before[line] === after[i] && kept(line, i) + 1 + left(before.length - line - 1, after.length - i - 1) === all;
	return (line) => {
		const found = same(line);
		const inOrder = found.filter((i) => isKept(line, i));
		if (inOrder.length > 0) return inOrder;
		// moved past others: it is one of those that are nobody else's
		return found.filter((i) => !before.some((_, other) => isKept(other, i)));
	};
}

/** How many lines of the first so many of one text are in the first so many of another, in the same order, at most. */
function mostKept(before: readonly string[], after: readonly string[]): (ofBefore: number, ofAfter: number) => number {
	const wide = after.length + 1;
	const most = new Uint16Array((before.length + 1) * wide);
	const at = (i: number, j: number): number => most[i * wide + j] ?? 0;
	for (let i = 1; i <= before.length; i++)
		for (let j = 1; j <= after.length; j++)
			most[i * wide + j] = before[i - 1] === after[j - 1] ? at(i - 1, j - 1) + 1 : Math.max(at(i - 1, j), at(i, j - 1));
	return at;
}
