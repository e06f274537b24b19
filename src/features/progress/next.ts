import type { Progress } from './result.ts';

/** Right so many times in a row, a kind is held to be learnt. Ours, no source. */
export const FIRM = 3;
/** Days after which a learnt kind is worth another go. Ours, no source. */
const RUSTY_DAYS = 30;
const DAY_MS = 86_400_000;

/** What to practise next, and why. */
export interface Suggestion<Kind extends string = string> {
	readonly kind: Kind;
	readonly why: 'begun' | 'rusty' | 'new' | 'oldest';
}

/**
 * What to practise next: what was begun and is not firm yet, the first in the order; else what was firm and has lain for a
 * month; else the first that was never done; and with all of them firm, what was practised longest ago.
 * @param order the kinds in the order to learn in
 * @param now ms since 1970
 * @param but left out, unless it is the only one: what was done just now
 * @returns null where there are no kinds
 */
export function suggestNext<Kind extends string>(
	progress: Progress,
	order: readonly Kind[],
	now: number,
	but?: Kind,
): Suggestion<Kind> | null {
	const others = order.filter((kind) => kind !== but);
	const kinds = others.length > 0 ? others : order;
	const lastOf = (kind: Kind): number => progress.get(kind)?.last ?? 0;
	const isFirm = (kind: Kind): boolean => (progress.get(kind)?.streak ?? 0) >= FIRM;
	const first = (why: Suggestion['why'], fits: (kind: Kind) => boolean): Suggestion<Kind> | null => {
		const kind = kinds.find(fits);
		return kind === undefined ? null : { kind, why };
	};
	const oldest = kinds.toSorted((a, b) => lastOf(a) - lastOf(b))[0];
	return (
		first('begun', (kind) => progress.has(kind) && !isFirm(kind)) ??
		first('rusty', (kind) => isFirm(kind) && now - lastOf(kind) > RUSTY_DAYS * DAY_MS) ??
		first('new', (kind) => !progress.has(kind)) ??
		(oldest === undefined ? null : { kind: oldest, why: 'oldest' })
	);
}
