import { describe, expect, test } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import { hash01, murmur3 } from '../../../shared/random/murmur3.ts';
import { seedState, xoshiro128 } from '../../../shared/random/random.ts';

// The two algorithms sit behind the door; their published vectors can only be checked at the files themselves.

const draws = (draw: () => number, count: number) => Array.from({ length: count }, draw);

describe('xoshiro128++ against the vectors of the Rust crate rand_xoshiro, made with the C reference (read)', () => {
	test('state 1 2 3 4', () => {
		expect(draws(xoshiro128([1, 2, 3, 4]), 10)).toEqual([
			641, 1573767, 3222811527, 3517856514, 836907274, 4247214768, 3867114732, 1355841295, 495546011, 621204420,
		]);
	});

	test('seed 0 through SplitMix64', () => {
		expect(draws(xoshiro128(seedState(0n)), 10)).toEqual([
			1179900579, 1938959192, 3089844957, 3657088315, 1015453891, 479942911, 3433842246, 669252886, 3985671746,
			2737205563,
		]);
	});

	test('makeRandom(0) draws those same words', () => {
		const random = makeRandom(0);
		expect(draws(random.next, 3).map((x) => x * 2 ** 32)).toEqual([1179900579, 1938959192, 3089844957]);
	});

	test('the 102401st word of state 1 2 3 4, from the test suite of PHP (read): bytes fa 3c 87 2c, low first', () => {
		const draw = xoshiro128([1, 2, 3, 4]);
		for (let i = 0; i < 102400; i++) draw();
		expect(draw()).toBe(0x2c873cfa);
	});
});

describe('MurmurHash3 x86 32 against the vectors that circulate with it (read in five independent ports)', () => {
	test.each([
		{ blocks: [], seed: 0, hash: 0 },
		{ blocks: [], seed: 1, hash: 0x514e28b7 },
		{ blocks: [], seed: 0xffffffff, hash: 0x81f16f39 },
		{ blocks: [0xffffffff], seed: 0, hash: 0x76293b50 },
		{ blocks: [0x87654321], seed: 0, hash: 0xf55b516b },
		{ blocks: [0x87654321], seed: 0x5082edee, hash: 0x2362f9de },
		{ blocks: [0], seed: 0, hash: 0x2362f9de },
	])('$blocks under seed $seed', ({ blocks, seed, hash }) => {
		expect(murmur3(blocks, seed)).toBe(hash);
	});

	test('hash01 is that hash over 2^32', () => {
		expect(hash01(0x87654321) * 2 ** 32).toBe(0xf55b516b);
		expect(hash01(0) * 2 ** 32).toBe(0x2362f9de);
		expect(hash01(-1) * 2 ** 32).toBe(0x76293b50);
	});

	// a number is written in two's complement: its low 32 bits, and where it does not fit them its high ones
	test.each([
		[2 ** 32 - 1, [-1]],
		[2 ** 32 - 2, [-2]],
		[2 ** 32, [0, 1]],
		[2 ** 32 + 1, [1, 1]],
		[2 ** 33 + 5, [5, 2]],
		[-(2 ** 31), [-(2 ** 31)]],
		[-(2 ** 31) - 1, [2 ** 31 - 1, -1]],
		[-(2 ** 32), [0, -1]],
		[-(2 ** 33) - 5, [-5, -3]],
		[Number.MAX_SAFE_INTEGER, [-1, 2 ** 21 - 1]],
	])('%d is hashed as the blocks %j', (number, blocks) => {
		expect(hash01(number) * 2 ** 32).toBe(murmur3(blocks, 0));
		expect(hash01(7, number, 9) * 2 ** 32).toBe(murmur3([7, ...blocks, 9], 0));
	});
});
