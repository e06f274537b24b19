import { InputError, shown } from '../error/index.ts';

/*
 * MurmurHash3 (x86, 32 bit), by A. Appleby (public domain): https://github.com/aappleby/smhasher
 * Only whole 32-bit blocks are ever hashed here, so the tail of one to three bytes is left out.
 */

function mixBlock(hash: number, block: number): number {
	let k = Math.imul(block, 0xcc9e2d51);
	k = (k << 15) | (k >>> 17);
	k = Math.imul(k, 0x1b873593);
	const mixed = hash ^ k;
	return (Math.imul((mixed << 13) | (mixed >>> 19), 5) + 0xe6546b64) | 0;
}

function finish(hash: number, blocks: number): number {
	let h = hash ^ (blocks * 4);
	h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
	h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
	return (h ^ (h >>> 16)) >>> 0;
}

/** The hash (0 to 4294967295) of 32-bit blocks under a 32-bit seed; each block counts as four bytes, low byte first. */
export function murmur3(blocks: readonly number[], seed: number): number {
	let hash = seed | 0;
	for (const block of blocks) hash = mixBlock(hash, block);
	return finish(hash, blocks.length);
}

/** The hash (0 to 4294967295) of a text under a 32-bit seed, each UTF-16 code unit one block. */
export function murmur3Text(text: string, seed: number): number {
	let hash = seed | 0;
	for (let i = 0; i < text.length; i++) hash = mixBlock(hash, text.charCodeAt(i));
	return finish(hash, text.length);
}

/**
 * A number in [0, 1), in steps of 2^−32, that hangs on nothing but the whole numbers given and their order:
 * `hash01(seed, fixture, frame) < rate` says whether that frame is spoilt, whenever and in whatever order it is asked.
 *
 * A number that fits 32 bits (−2147483648 to 4294967295) is one block, a larger one two, so ids, frame counts and
 * microseconds all do. −1 and 4294967295 count as the same.
 * @throws InputError `random.whole` when a number is not a whole number within ±(2^53 − 1).
 */
export function hash01(first: number, ...rest: readonly number[]): number {
	let hash = 0;
	let blocks = 0;
	for (let i = -1; i < rest.length; i++) {
		const value = i < 0 ? first : (rest[i] as number);
		if (!Number.isSafeInteger(value)) {
			throw new InputError('random.whole', `[${i + 1}]`, { expected: 'whole-number', found: shown(value) });
		}
		hash = mixBlock(hash, value | 0);
		blocks++;
		if (value > 0xffffffff || value < -0x80000000) {
			hash = mixBlock(hash, Math.floor(value / 0x100000000) | 0);
			blocks++;
		}
	}
	return finish(hash, blocks) / 0x100000000;
}
