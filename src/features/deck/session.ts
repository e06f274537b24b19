import type { Deck } from './deck.ts';
import { recallOf } from './schedule.ts';

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
