import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	howManyMore,
	type NamedPlacement,
	nextFreeAddress,
	overlaps,
	slotsLeft,
	slotsTaken,
} from '../../../shared/dmx/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';

const placement = fc.record({
	universe: fc.integer({ min: 1, max: 2 }),
	start: fc.integer({ min: 1, max: 512 }),
	footprint: fc.integer({ min: 0, max: 40 }),
});
const placements = fc
	.array(placement, { maxLength: 30 })
	.map((list): NamedPlacement[] => list.map((one, i) => ({ ...one, id: `f${i}` })));

/** The slots that are really sent to a fixture, listed. */
function sent(one: NamedPlacement): Set<number> {
	const slots = new Set<number>();
	for (let n = 0; n < one.footprint; n++) if (one.start + n <= 512) slots.add(one.start + n);
	return slots;
}

describe('overlaps', () => {
	test('are the pairs whose slots, listed one by one, meet', () => {
		fc.assert(
			fc.property(placements, (list) => {
				const expected = new Map<string, number[]>();
				list.forEach((a, i) => {
					for (const b of list.slice(i + 1)) {
						const shared = [...sent(a)].filter((slot) => a.universe === b.universe && sent(b).has(slot));
						if (shared.length > 0) expected.set([a.id, b.id].sort().join(), shared);
					}
				});
				const found = overlaps(list);
				expect(found.map(({ first, second }) => [first, second].sort().join()).sort()).toEqual(
					[...expected.keys()].sort(),
				);
				for (const { first, second, from, to } of found) {
					const shared = expected.get([first, second].sort().join()) ?? [];
					expect([from, to, to - from + 1]).toEqual([Math.min(...shared), Math.max(...shared), shared.length]);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	test('name the one that starts lower first, and mark those that lie on each other exactly', () => {
		const list = [
			{ id: 'c', universe: 1, start: 10, footprint: 5 },
			{ id: 'a', universe: 1, start: 8, footprint: 3 },
			{ id: 'b', universe: 1, start: 10, footprint: 5 },
			{ id: 'd', universe: 2, start: 10, footprint: 5 },
		];
		expect(overlaps(list)).toEqual([
			{ first: 'a', second: 'c', universe: 1, from: 10, to: 10, identical: false },
			{ first: 'a', second: 'b', universe: 1, from: 10, to: 10, identical: false },
			{ first: 'c', second: 'b', universe: 1, from: 10, to: 14, identical: true },
		]);
	});

	test('the same start with another footprint is not lying on each other exactly', () => {
		const found = overlaps([
			{ id: 'a', universe: 1, start: 10, footprint: 5 },
			{ id: 'b', universe: 1, start: 10, footprint: 6 },
		]);
		expect(found.map(({ to, identical }) => [to, identical])).toEqual([[14, false]]);
	});

	test('neighbours do not overlap, and what runs past 512 meets nobody', () => {
		expect(
			overlaps([
				{ id: 'a', universe: 1, start: 1, footprint: 6 },
				{ id: 'b', universe: 1, start: 7, footprint: 6 },
				{ id: 'c', universe: 1, start: 510, footprint: 20 },
				{ id: 'd', universe: 2, start: 1, footprint: 20 },
			]),
		).toEqual([]);
	});

	test('refuse an id that stands twice, and nonsense by its place', () => {
		const one = { id: 'a', universe: 1, start: 1, footprint: 6 };
		const twice = thrownBy(() => overlaps([one, one]));
		expect([twice.code, twice.path, errorText(twice)]).toEqual([
			'id.twice',
			'[1].id',
			'The id "a" stands twice; give each its own.',
		]);
		expect(thrownBy(() => overlaps([one, { ...one, id: 'b', start: 0 }])).path).toBe('[1].start');
		expect(thrownBy(() => overlaps([{ ...one, universe: 0 }])).path).toBe('[0].universe');
		expect(thrownBy(() => overlaps([{ ...one, footprint: 513 }])).path).toBe('[0].footprint');
	});
});

describe('the next free address', () => {
	test('is the lowest of all 512 at which no slot is taken, by trying every one', () => {
		fc.assert(
			fc.property(
				placements,
				fc.integer({ min: 1, max: 120 }),
				fc.integer({ min: 1, max: 2 }),
				fc.integer({ min: 1, max: 512 }),
				(taken, footprint, universe, from) => {
					const used = new Set(taken.filter((one) => one.universe === universe).flatMap((one) => [...sent(one)]));
					let lowest: number | null = null;
					for (let start = from; start + footprint - 1 <= 512 && lowest === null; start++) {
						let free = true;
						for (let n = 0; n < footprint; n++) if (used.has(start + n)) free = false;
						if (free) lowest = start;
					}
					expect(nextFreeAddress(taken, footprint, { universe, from })).toBe(lowest);
				},
			),
			{ numRuns: runs(300) },
		);
	});

	test('is 1 in an empty universe, and null where nothing is left', () => {
		expect(nextFreeAddress([], 512)).toBe(1);
		expect(nextFreeAddress([{ universe: 1, start: 256, footprint: 1 }], 257)).toBe(null);
		expect(nextFreeAddress([], 7, { from: 507 })).toBe(null);
	});

	test('leaves a gap that is too small alone', () => {
		const taken = [
			{ universe: 1, start: 1, footprint: 4 },
			{ universe: 1, start: 9, footprint: 4 },
		];
		expect(nextFreeAddress(taken, 4)).toBe(5);
		expect(nextFreeAddress(taken, 5)).toBe(13);
	});

	test('refuses nonsense by its place', () => {
		expect(thrownBy(() => nextFreeAddress([], 0)).code).toBe('footprint.range');
		expect(thrownBy(() => nextFreeAddress([], 1, { from: 0 })).path).toBe('from');
		expect(thrownBy(() => nextFreeAddress([{ universe: 1, start: 0, footprint: 1 }], 1)).path).toBe('taken[0].start');
	});
});

test('slots taken are counted once each', () => {
	fc.assert(
		fc.property(placements, (taken) => {
			const used = new Set(taken.filter((one) => one.universe === 1).flatMap((one) => [...sent(one)]));
			expect(slotsTaken(taken)).toBe(used.size);
		}),
	);
});

test('slots left are those not taken, and as many more fit as can be placed one by one', () => {
	fc.assert(
		fc.property(placements, fc.integer({ min: 1, max: 120 }), (taken, footprint) => {
			expect(slotsLeft(taken) + slotsTaken(taken)).toBe(512);
			const row = [...taken];
			let more = 0;
			for (let at = nextFreeAddress(row, footprint); at !== null; at = nextFreeAddress(row, footprint)) {
				row.push({ id: `more-${more}`, universe: 1, start: at, footprint });
				more++;
			}
			expect(howManyMore(taken, footprint)).toBe(more);
			expect(more * footprint).toBeLessThanOrEqual(slotsLeft(taken));
		}),
		{ numRuns: runs(60) },
	);
	expect(howManyMore([], 512)).toBe(1);
	expect(howManyMore([{ universe: 1, start: 256, footprint: 1 }], 256)).toBe(1);
	expect(howManyMore([], 9, 2)).toBe(56);
	expect(thrownBy(() => howManyMore([], 0)).code).toBe('footprint.range');
});
