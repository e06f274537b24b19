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
