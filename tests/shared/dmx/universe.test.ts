import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromAbsolute, spread, toAbsolute } from '../../../shared/dmx/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';

const universe = fc.integer({ min: 1, max: 63999 });
const slot = fc.integer({ min: 1, max: 512 });

describe('addresses counted through all universes', () => {
	test('come back as themselves, both ways', () => {
		fc.assert(
			fc.property(universe, slot, (u, s) => {
				expect(fromAbsolute(toAbsolute(u, s))).toEqual({ universe: u, slot: s });
			}),
			{ numRuns: runs(500) },
		);
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 63999 * 512 }), (n) => {
				const spot = fromAbsolute(n);
				expect(toAbsolute(spot.universe, spot.slot)).toBe(n);
			}),
			{ numRuns: runs(500) },
		);
	});

	test('go on from the last slot of one universe to the first of the next', () => {
		expect([1, 512, 513, 1024, 1025, 63999 * 512].map(fromAbsolute)).toEqual([
			{ universe: 1, slot: 1 },
			{ universe: 1, slot: 512 },
			{ universe: 2, slot: 1 },
			{ universe: 2, slot: 512 },
			{ universe: 3, slot: 1 },
			{ universe: 63999, slot: 512 },
		]);
	});

	test.each([
		[() => toAbsolute(0, 1), 'universe.range', 'A universe is a whole number from 1 to 63999; found 0.'],
		[() => toAbsolute(64000, 1), 'universe.range', 'A universe is a whole number from 1 to 63999; found 64000.'],
		[() => toAbsolute(1, 513), 'address.range', 'A channel is a whole number from 1 to 512; found 513.'],
		[
			() => fromAbsolute(0),
			'absolute.range',
			'An address counted through all universes is a whole number from 1 to 32767488; found 0.',
		],
	])('refuse nonsense in words (%#)', (act, code, sentence) => {
		const error = thrownBy(act);
		expect([error.code, errorText(error)]).toEqual([code, sentence]);
	});
});

describe('fixtures spread over universes', () => {
	test('never lie across two, never share a slot, and leave a tail free only when the next one did not fit', () => {
		fc.assert(
			fc.property(slot, fc.array(fc.integer({ min: 1, max: 512 }), { maxLength: 30 }), (from, footprints) => {
				let free = { universe: 1, slot: from };
				spread(free, footprints).forEach((spot, i) => {
					const footprint = footprints[i] ?? 0;
					const fits = free.slot + footprint - 1 <= 512;
					expect(spot).toEqual(fits ? free : { universe: free.universe + 1, slot: 1 });
					expect(spot.slot + footprint - 1).toBeLessThanOrEqual(512);
					free = { universe: spot.universe, slot: spot.slot + footprint };
				});
			}),
			{ numRuns: runs(300) },
		);
	});

	test('a footprint that fills a universe exactly, then one more', () => {
		expect(spread({ universe: 4, slot: 1 }, [512, 1])).toEqual([
			{ universe: 4, slot: 1 },
			{ universe: 5, slot: 1 },
		]);
	});

	test('refuse to go past the last universe, at the fixture that would', () => {
		const error = thrownBy(() => spread({ universe: 63999, slot: 500 }, [10, 10]));
		expect([error.code, error.path]).toEqual(['universe.range', 'footprints[1]']);
	});
});
