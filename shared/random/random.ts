import { InputError, requireNumber, requireWhole, shown } from '../error/index.ts';
import { murmur3Text } from './murmur3.ts';
import { seedState, xoshiro128 } from './xoshiro.ts';

/** A repeatable stream of chance. Every draw moves it on; `fork` does not. */
export type Random = {
	/** A number in [0, 1), in steps of 2^−32. */
	next(): number;
	/**
	 * A whole number from `lo` to `hi`, both included, each equally likely (no modulo bias).
	 * @throws InputError `random.int` when either is not whole, `hi` is below `lo`, or they are more than 2^32 − 1 apart.
	 */
	int(lo: number, hi: number): number;
	/**
	 * One item, each equally likely.
	 * @throws InputError `random.empty` when there is none.
	 */
	pick<T>(items: readonly T[]): T;
	/** A new list with the same items in a new order, each order equally likely (Fisher and Yates). */
	shuffle<T>(items: readonly T[]): T[];
	/**
	 * True with probability `p`: never at 0, always at 1. Always uses one draw.
	 * @throws InputError `random.chance` when `p` is not from 0 to 1.
	 */
	chance(p: number): boolean;
	/**
	 * A stream of its own for one use, named by a label. It hangs on this stream's seed and the label alone, not on
	 * what has been drawn: a new draw in one place never changes what another place gets. Same label, same stream.
	 */
	fork(label: string): Random;
};

const WORDS = 0x100000000; // 2^32

/**
 * Opens the stream of a seed.
 * @param seed a whole number from 0 to 2^53 − 1.
 * @throws InputError `random.seed` on any other.
 */
export function makeRandom(seed: number): Random {
	requireWhole(seed, { lo: 0, hi: Number.MAX_SAFE_INTEGER, code: 'random.seed', path: 'seed', of: 'seed' });
	return openStream(BigInt(seed));
}

function openStream(seed: bigint): Random {
	const draw = xoshiro128(seedState(seed));

	function below(count: number): number {
		const fair = WORDS - (WORDS % count); // draws past the last whole multiple would favour low numbers
		let word = draw();
		while (word >= fair) word = draw();
		return word % count;
	}

	return {
		next: () => draw() / WORDS,
		int(lo, hi) {
			if (!(Number.isSafeInteger(lo) && Number.isSafeInteger(hi) && hi >= lo && hi - lo < WORDS)) {
				throw new InputError('random.int', '', {
					expected: 'two-whole-numbers',
					apart: WORDS - 1,
					lo: shown(lo),
					hi: shown(hi),
				});
			}
			return lo + below(hi - lo + 1);
		},
		pick<T>(items: readonly T[]): T {
			if (items.length === 0) {
				throw new InputError('random.empty', 'items', { trouble: 'empty-list' });
			}
			return items[below(items.length)] as T;
		},
		shuffle<T>(items: readonly T[]): T[] {
			const mixed = items.slice();
			for (let i = mixed.length - 1; i > 0; i--) {
				const j = below(i + 1);
				const kept = mixed[i] as T;
				mixed[i] = mixed[j] as T;
				mixed[j] = kept;
			}
			return mixed;
		},
		chance(p) {
			requireNumber(p, { lo: 0, hi: 1, code: 'random.chance', path: 'p', of: 'chance' });
			return draw() / WORDS < p;
		},
		fork(label) {
			const low = murmur3Text(label, Number(seed & 0xffffffffn));
			const high = murmur3Text(label, Number(seed >> 32n) ^ 0x5bd1e995);
			return openStream((BigInt(high) << 32n) | BigInt(low));
		},
	};
}
