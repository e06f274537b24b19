import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	backToBack,
	highestStart,
	howManyFit,
	lastSlot,
	nthAddress,
	runsPast,
	slotOf,
	slotsPast,
} from '../../../shared/dmx/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { saidBy, thrownBy } from '../thrown.ts';

const slot = fc.integer({ min: 1, max: 512 });

/** The slots a fixture takes, one by one, with no arithmetic to share a mistake with. */
function counted(start: number, footprint: number): number[] {
	const slots: number[] = [];
	for (let n = 0, at = start; n < footprint; n++, at++) slots.push(at);
	return slots;
}

describe('one fixture', () => {
	test('its last channel, and what runs past 512, as counted one by one', () => {
		fc.assert(
			fc.property(slot, slot, (start, footprint) => {
				const slots = counted(start, footprint);
				expect(lastSlot(start, footprint)).toBe(slots.at(-1));
				expect(slotsPast(start, footprint)).toBe(slots.filter((at) => at > 512).length);
				expect(runsPast(start, footprint)).toBe(slots.some((at) => at > 512));
			}),
			{ numRuns: runs(300) },
		);
	});

	test('its nth channel, counted on the desk', () => {
		fc.assert(
			fc.property(slot, slot, (start, n) => {
				fc.pre(start + n <= 513);
				expect(slotOf(start, n)).toBe(counted(start, n).at(-1));
			}),
		);
	});

	test('fits at its highest start and not one further', () => {
		for (let footprint = 1; footprint <= 512; footprint++) {
			expect(runsPast(highestStart(footprint), footprint)).toBe(false);
			if (footprint > 1) expect(runsPast(highestStart(footprint) + 1, footprint)).toBe(true);
		}
	});

	test.each([
		[() => lastSlot(0, 1), 'address.range', 'start', 'A start address is a whole number from 1 to 512; found 0.'],
		[() => lastSlot(513, 1), 'address.range', 'start', 'A start address is a whole number from 1 to 512; found 513.'],
		[() => lastSlot(1, 0), 'footprint.range', 'footprint', 'A footprint is a whole number from 1 to 512; found 0.'],
		[() => slotOf(1, 0), 'slot.range', 'n', "A fixture's channel number is a whole number from 1 to 512; found 0."],
		[
			() => slotOf(510, 5),
			'address.past-end',
			'n',
			'Channel 5 of a fixture at 510 would be 514, past 512: start at 508 or lower.',
		],
	])('refuses nonsense in words (%#)', (act, code, path, sentence) => {
		const error = thrownBy(act);
		expect([error.code, error.path, errorText(error)]).toEqual([code, path, sentence]);
	});

	test('the way out that a refusal names is the right one', () => {
		expect(slotOf(508, 5)).toBe(512);
	});
});

describe('a row', () => {
	test('how many fit, as found by placing one after another', () => {
		fc.assert(
			fc.property(slot, slot, (footprint, from) => {
				let placed = 0;
				for (let at = from; at + footprint - 1 <= 512; at += footprint) placed++;
				expect(howManyFit(footprint, from)).toBe(placed);
			}),
			{ numRuns: runs(300) },
		);
	});

	test('the nth fixture starts right behind the one before, and the last that fits does fit', () => {
		fc.assert(
			fc.property(slot, fc.integer({ min: 1, max: 60 }), (first, footprint) => {
				const fit = howManyFit(footprint, first);
				const starts = Array.from({ length: fit }, (_, i) => nthAddress(first, footprint, i + 1));
				starts.forEach((start, i) => {
					expect(start).toBe(i === 0 ? first : lastSlot(starts[i - 1] ?? 0, footprint) + 1);
					expect(runsPast(start, footprint)).toBe(false);
				});
				if (fit < 512) expect(thrownBy(() => nthAddress(first, footprint, fit + 1)).code).toBe('address.past-end');
			}),
			{ numRuns: runs(200) },
		);
	});

	test('a fixture that wouldn’t fit whole is refused with what does fit', () => {
		expect(saidBy(() => nthAddress(1, 100, 6))).toBe(
			'Fixture 6 would run past 512: from 1 on, 5 of footprint 100 fit.',
		);
		expect(saidBy(() => nthAddress(1, 300, 2))).toBe(
			'Fixture 2 would run past 512: from 1 on, 1 of footprint 300 fits.',
		);
	});

	test('back to back: no channel left free, none shared, and it stops at the first that doesn’t fit', () => {
		fc.assert(
			fc.property(slot, fc.array(fc.integer({ min: 1, max: 200 }), { maxLength: 12 }), (first, footprints) => {
				const { starts, stopsAt } = backToBack(first, footprints);
				const slots = starts.flatMap((start, i) => counted(start, footprints[i] ?? 0));
				expect(slots).toEqual(counted(first, slots.length));
				expect(slots.every((at) => at <= 512)).toBe(true);
				expect(starts).toHaveLength(stopsAt ?? footprints.length);
				if (stopsAt !== null) expect(first + slots.length + (footprints[stopsAt] ?? 0) - 1).toBeGreaterThan(512);
			}),
			{ numRuns: runs(300) },
		);
	});

	test('a row of nothing is a row, and a footprint of nothing is refused by its place', () => {
		expect(backToBack(1, [])).toEqual({ starts: [], stopsAt: null });
		expect(thrownBy(() => backToBack(1, [500, 500, 0])).path).toBe('footprints[2]');
		expect(thrownBy(() => backToBack(0, [])).path).toBe('first');
	});
});
