import { InputError, requireNumber, requireWhole, shown } from '../error/index.ts';
import { murmur3Text } from './murmur3.ts';

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

/*
 * xoshiro128++ 1.0 and SplitMix64, by D. Blackman and S. Vigna (public domain): https://prng.di.unimi.it/
 * Seeding is theirs too: two SplitMix64 outputs, low half first. The tests hold both to published vectors.
 */

/** Four unsigned 32-bit words, not all zero. */
export type Xoshiro128State = readonly [number, number, number, number];

const MASK_64 = (1n << 64n) - 1n;

function splitMix64(state: bigint): bigint {
	let z = state;
	z = ((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK_64;
	z = ((z ^ (z >> 27n)) * 0x94d049bb133111ebn) & MASK_64;
	return z ^ (z >> 31n);
}

/** The start state for a 64-bit seed (0 to 2^64 − 1). No seed gives the forbidden all-zero state. */
export function seedState(seed: bigint): Xoshiro128State {
	const step = 0x9e3779b97f4a7c15n;
	const first = splitMix64((seed + step) & MASK_64);
	const second = splitMix64((seed + 2n * step) & MASK_64);
	const low = (word: bigint) => Number(word & 0xffffffffn);
	return [low(first), low(first >> 32n), low(second), low(second >> 32n)];
}

function rotateLeft(word: number, bits: number): number {
	return (word << bits) | (word >>> (32 - bits));
}

/** A drawer of unsigned 32-bit words (0 to 4294967295); it keeps its own copy of the state. Period 2^128 − 1. */
export function xoshiro128(state: Xoshiro128State): () => number {
	let [s0, s1, s2, s3] = state;
	return () => {
		const drawn = (rotateLeft((s0 + s3) | 0, 7) + s0) >>> 0;
		const t = s1 << 9;
		s2 ^= s0;
		s3 ^= s1;
		s1 ^= s2;
		s0 ^= s3;
		s2 ^= t;
		s3 = rotateLeft(s3, 11);
		return drawn;
	};
}
