import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import { hash01 } from '../../../shared/random/murmur3.ts';
import { runs } from '../../runs.ts';
import { saidBy, thrownBy } from '../thrown.ts';

const seed = fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER });

/** Pearson's chi-square of counts against equal shares. */
function chiSquare(counts: readonly number[]): number {
	const share = counts.reduce((sum, n) => sum + n, 0) / counts.length;
	return counts.reduce((sum, n) => sum + (n - share) ** 2 / share, 0);
}

describe('a stream', () => {
	test('is the same for the same seed, draw for draw', () => {
		fc.assert(
			fc.property(seed, (s) => {
				const [a, b] = [makeRandom(s), makeRandom(s)];
				for (let i = 0; i < 20; i++) expect(a.next()).toBe(b.next());
				expect(a.shuffle([1, 2, 3, 4, 5, 6])).toEqual(b.shuffle([1, 2, 3, 4, 5, 6]));
				expect(a.int(-9, 9)).toBe(b.int(-9, 9));
			}),
		);
	});

	test('differs between neighbouring seeds, also far beyond 32 bits', () => {
		const firsts = [0, 1, 2, 2 ** 32, 2 ** 32 + 1, 2 ** 52].map((s) => makeRandom(s).next());
		expect(new Set(firsts).size).toBe(firsts.length);
	});

	test('stays in [0, 1)', () => {
		fc.assert(
			fc.property(seed, (s) => {
				const random = makeRandom(s);
				for (let i = 0; i < 50; i++) {
					const x = random.next();
					expect(x).toBeGreaterThanOrEqual(0);
					expect(x).toBeLessThan(1);
				}
			}),
		);
	});

	test('is even: 100,000 draws in 100 boxes stay under the 99.9 % point of chi-square with 99 degrees', () => {
		const random = makeRandom(20);
		const counts = new Array<number>(100).fill(0);
		for (let i = 0; i < 100_000; i++) {
			const box = Math.floor(random.next() * 100);
			counts[box] = (counts[box] ?? 0) + 1;
		}
		expect(chiSquare(counts)).toBeLessThan(148.2);
	});
});

describe('int', () => {
	test('stays within its ends and reaches both', () => {
		fc.assert(
			fc.property(seed, fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 0, max: 5 }), (s, lo, width) => {
				const random = makeRandom(s);
				const seen = new Set(Array.from({ length: 200 }, () => random.int(lo, lo + width)));
				expect([...seen].sort((a, b) => a - b)).toEqual(Array.from({ length: width + 1 }, (_, i) => lo + i));
			}),
			{ numRuns: runs(50) },
		);
	});

	test('has no modulo bias: of 3 × 2^30 numbers the lowest third is not favoured', () => {
		// A bare remainder would put half of the draws into the lowest third.
		const random = makeRandom(7);
		const counts = [0, 0, 0];
		for (let i = 0; i < 30_000; i++) {
			const third = Math.floor(random.int(0, 3 * 2 ** 30 - 1) / 2 ** 30);
			counts[third] = (counts[third] ?? 0) + 1;
		}
		expect(chiSquare(counts)).toBeLessThan(13.8); // 99.9 % point with 2 degrees
	});

	test('spans the whole of 32 bits', () => {
		const random = makeRandom(3);
		for (let i = 0; i < 100; i++) {
			const n = random.int(0, 2 ** 32 - 1);
			expect(Number.isInteger(n) && n >= 0 && n < 2 ** 32).toBe(true);
		}
	});

	test.each([
		[5, 4],
		[0.5, 2],
		[0, Number.NaN],
		[0, 2 ** 32],
	])('refuses %s to %s', (lo, hi) => {
		expect(thrownBy(() => makeRandom(1).int(lo, hi)).code).toBe('random.int');
	});
});

describe('pick and shuffle', () => {
	test('pick takes each item equally often', () => {
		const random = makeRandom(11);
		const counts = [0, 0, 0, 0, 0];
		for (let i = 0; i < 50_000; i++) {
			const item = random.pick([0, 1, 2, 3, 4]);
			counts[item] = (counts[item] ?? 0) + 1;
		}
		expect(chiSquare(counts)).toBeLessThan(18.5); // 99.9 % point with 4 degrees
	});

	test('pick of nothing is refused in words', () => {
		expect(saidBy(() => makeRandom(1).pick([]))).toContain('pick needs at least one item; the list is empty.');
	});

	test('shuffle keeps the items and leaves the list it was given alone', () => {
		fc.assert(
			fc.property(seed, fc.array(fc.integer()), (s, items) => {
				const before = items.slice();
				const mixed = makeRandom(s).shuffle(items);
				expect(items).toEqual(before);
				expect(mixed).not.toBe(items);
				expect(mixed.slice().sort((a, b) => a - b)).toEqual(before.sort((a, b) => a - b));
			}),
		);
	});

	test('shuffle draws once for each place but the first, from the last down, and changes it with what was drawn', () => {
		fc.assert(
			fc.property(seed, fc.array(fc.integer(), { maxLength: 12 }), (s, items) => {
				const [random, draws] = [makeRandom(s), makeRandom(s)];
				const mixed = random.shuffle(items);
				const byHand = [...items];
				for (let last = items.length; last > 1; last--) {
					const [taken = 0] = byHand.splice(draws.int(0, last - 1), 1, byHand[last - 1] ?? 0);
					byHand[last - 1] = taken;
				}
				expect(mixed).toEqual(byHand);
				expect(random.next()).toBe(draws.next());
			}),
			{ numRuns: runs(50) },
		);
	});

	test('shuffle gives each of the 24 orders of four equally often', () => {
		const random = makeRandom(5);
		const counts = new Map<string, number>();
		for (let i = 0; i < 48_000; i++) {
			const order = random.shuffle(['a', 'b', 'c', 'd']).join('');
			counts.set(order, (counts.get(order) ?? 0) + 1);
		}
		expect(counts.size).toBe(24);
		expect(chiSquare([...counts.values()])).toBeLessThan(49.7); // 99.9 % point with 23 degrees
	});
});

describe('chance', () => {
	test('never at 0, always at 1, about half at a half', () => {
		const random = makeRandom(9);
		const hits = (p: number) => Array.from({ length: 10_000 }, () => random.chance(p)).filter(Boolean).length;
		expect(hits(0)).toBe(0);
		expect(hits(1)).toBe(10_000);
		expect(Math.abs(hits(0.5) - 5000)).toBeLessThan(165); // 3.3 standard deviations
	});

	test.each([-0.1, 1.1, Number.NaN])('refuses %s', (p) => {
		expect(thrownBy(() => makeRandom(1).chance(p)).code).toBe('random.chance');
	});
});

describe('fork', () => {
	test('hangs on the seed and the label, not on what was drawn', () => {
		fc.assert(
			fc.property(seed, fc.string(), fc.nat({ max: 30 }), (s, label, drawn) => {
				const [fresh, used] = [makeRandom(s), makeRandom(s)];
				for (let i = 0; i < drawn; i++) used.next();
				expect(used.fork(label).next()).toBe(fresh.fork(label).next());
			}),
		);
	});

	test('does not move its parent on', () => {
		const [a, b] = [makeRandom(4), makeRandom(4)];
		a.fork('x').next();
		expect(a.next()).toBe(b.next());
	});

	test('gives streams that differ by label, by parent and by depth', () => {
		const root = makeRandom(4);
		const streams = [
			root,
			root.fork(''),
			root.fork('a'),
			root.fork('b'),
			root.fork('ab'),
			root.fork('ba'),
			root.fork('a').fork('b'),
			root.fork('b').fork('a'),
			makeRandom(5).fork('a'),
			makeRandom(4 + 2 ** 32).fork('a'),
		];
		expect(new Set(streams.map((stream) => stream.next())).size).toBe(streams.length);
	});

	test('streams of neighbouring labels do not go together', () => {
		const [a, b] = [makeRandom(1).fork('fixture-1'), makeRandom(1).fork('fixture-2')];
		const n = 20_000;
		let sum = 0;
		for (let i = 0; i < n; i++) sum += (a.next() - 0.5) * (b.next() - 0.5);
		expect(Math.abs((sum / n) * 12)).toBeLessThan(0.0234); // correlation, 3.3 standard deviations
	});
});

describe('hash01', () => {
	test('hangs on its numbers and their order alone', () => {
		fc.assert(
			fc.property(fc.array(fc.maxSafeInteger(), { minLength: 1, maxLength: 5 }), (numbers) => {
				const [first = 0, ...rest] = numbers;
				const x = hash01(first, ...rest);
				expect(x).toBe(hash01(first, ...rest));
				expect(x >= 0 && x < 1).toBe(true);
			}),
		);
		expect(hash01(1, 2)).not.toBe(hash01(2, 1));
		expect(hash01(1)).not.toBe(hash01(1, 0));
	});

	test('does not repeat after 2^32: a rig that has run for 72 minutes of microseconds goes on', () => {
		expect(hash01(3, 2 ** 32 + 5)).not.toBe(hash01(3, 5));
		expect(hash01(3, 2 ** 33 + 5)).not.toBe(hash01(3, 2 ** 32 + 5));
	});

	test('is even over frame numbers in a row', () => {
		const counts = new Array<number>(50).fill(0);
		for (let frame = 0; frame < 50_000; frame++) {
			const box = Math.floor(hash01(1, 17, frame) * 50);
			counts[box] = (counts[box] ?? 0) + 1;
		}
		expect(chiSquare(counts)).toBeLessThan(85.4); // 99.9 % point with 49 degrees
	});

	test('refuses what is not a whole number and says which', () => {
		expect(saidBy(() => hash01(1, 2.5))).toContain('hash01 takes whole numbers only; found 2.5.');
		expect(thrownBy(() => hash01(1, Number.POSITIVE_INFINITY)).code).toBe('random.whole');
	});
});

test.each([-1, 0.5, 2 ** 53, Number.NaN])('makeRandom refuses the seed %s', (s) => {
	expect(thrownBy(() => makeRandom(s)).code).toBe('random.seed');
});

test('pinned: saved papers and drills are rebuilt from their seed, so these must never change', () => {
	const random = makeRandom(2026).fork('pin');
	expect(Array.from({ length: 6 }, () => random.int(1, 512))).toEqual([43, 16, 281, 461, 22, 118]);
	expect(random.shuffle(['a', 'b', 'c', 'd', 'e', 'f']).join('')).toBe('facdeb');
	expect(hash01(2026, 1, 2) * 2 ** 32).toBe(1749329057);
});
