import type { Summary } from './views.ts';

/** Lines that are shown of what could not be read: a person reads no more, and a page of thousands stands still. */
const MOST_LINES = 20;

interface Unread {
	/** What it is: a file's name, a person's. */
	readonly from: string;
	readonly sentence: string;
}

/** What could not be read, one line for all that is wrong in the same way, and how many lines more there would be. */
export function summaryOf(unread: Iterable<Unread>): Summary {
	const alike = new Map<string, { from: string; sentence: string; more: number }>();
	let count = 0;
	for (const { from, sentence } of unread) {
		count++;
		const line = alike.get(sentence);
		if (line) line.more++;
		else alike.set(sentence, { from, sentence, more: 0 });
	}
	const lines = [...alike.values()].slice(0, MOST_LINES);
	return { count, lines, left: count - lines.reduce((sum, { more }) => sum + more + 1, 0) };
}
