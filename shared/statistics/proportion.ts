import jstat from 'jstat';
import { requireWhole } from '../error/index.ts';

/** From where to where, both 0 to 1. */
export interface Interval {
	readonly from: number;
	readonly to: number;
}

/** The standard normal's 97.5 % point. */
const Z = 1.959963984540054;

/**
 * Wilson's 95 % interval for a share: (p + z²/2n ± z √(p(1 − p)/n + z²/4n²)) / (1 + z²/n). Good for few people and for
 * shares near 0 or 1, where the textbook's p ± z √(p(1 − p)/n) runs past the ends. Null of nobody.
 * Source: Wilson 1927; Newcombe 1998, method 3.
 * @param hits whole, 0 to `of` @param of whole, 0 and more
 * @throws InputError `statistics.share`
 */
export function wilsonInterval(hits: number, of: number): Interval | null {
	requireShare(hits, of);
	if (of === 0) return null;
	const p = hits / of;
	const middle = p + Z ** 2 / (2 * of);
	const half = Z * Math.sqrt((p * (1 - p)) / of + Z ** 2 / (4 * of ** 2));
	const whole = 1 + Z ** 2 / of;
	return { from: hits === 0 ? 0 : (middle - half) / whole, to: hits === of ? 1 : (middle + half) / whole };
}

/**
 * The exact 95 % interval of Clopper and Pearson (1934), by the beta distribution: never too narrow, often too wide.
 * Null of nobody. @throws InputError `statistics.share`
 */
export function exactInterval(hits: number, of: number): Interval | null {
	requireShare(hits, of);
	if (of === 0) return null;
	return {
		from: hits === 0 ? 0 : jstat.beta.inv(0.025, hits, of - hits + 1),
		to: hits === of ? 1 : jstat.beta.inv(0.975, hits + 1, of - hits),
	};
}

function requireShare(hits: number, of: number): void {
	const code = 'statistics.share';
	requireWhole(of, { lo: 0, hi: Number.MAX_SAFE_INTEGER, code, path: 'of', of: 'share-of' });
	requireWhole(hits, { lo: 0, hi: of, code, path: 'hits', of: 'share-hits' });
}
