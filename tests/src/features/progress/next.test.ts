import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	FIRM,
	minutesText,
	NO_PROGRESS,
	type Progress,
	suggestNext,
	withDone,
	withMiss,
} from '../../../../src/features/progress/result.ts';
import { runs } from '../../../runs.ts';
import { anyProgress } from './arbitrary.ts';

const order = ['address-keys', 'address-dip', 'held-colour'] as const;
const DAY = 86_400_000;
const result = { presses: 2, fewest: 2, hints: 0, milliseconds: 9, seed: 3 };
const firm = (progress: Progress, kind: string, at: number): Progress =>
	Array.from({ length: FIRM }).reduce<Progress>((all) => withDone(all, kind, result, true, at), progress);

describe('what to practise next', () => {
	it('a new hand begins with the easiest', () => {
		expect(suggestNext(NO_PROGRESS, order, 0)).toEqual({ kind: 'address-keys', why: 'new' });
	});

	it('what is begun comes before what is new, until it is firm', () => {
		const begun = withMiss(NO_PROGRESS, 'address-dip', 0);
		expect(suggestNext(begun, order, 0)).toEqual({ kind: 'address-dip', why: 'begun' });
		expect(suggestNext(firm(begun, 'address-dip', 1), order, 1)).toEqual({ kind: 'address-keys', why: 'new' });
	});

	it('what was firm a month ago comes before what is new', () => {
		const old = firm(NO_PROGRESS, 'address-keys', 0);
		expect(suggestNext(old, order, 31 * DAY)).toEqual({ kind: 'address-keys', why: 'rusty' });
	});

	it('with all firm, the one that lay longest', () => {
		const all = order.reduce<Progress>((progress, kind, i) => firm(progress, kind, 10 - i), NO_PROGRESS);
		expect(suggestNext(all, order, 11)).toEqual({ kind: 'held-colour', why: 'oldest' });
	});

	it('is one of the kinds, and never the one left out unless there is no other', () => {
		fc.assert(
			fc.property(anyProgress, fc.constantFrom(...order), fc.nat(), (progress, but, now) => {
				const found = suggestNext(progress, order, now, but);
				expect(order).toContain(found?.kind);
				expect(found?.kind).not.toBe(but);
				expect(suggestNext(progress, [but], now, but)?.kind).toBe(but);
			}),
			{ numRuns: runs(200) },
		);
		expect(suggestNext(NO_PROGRESS, [], 0)).toBeNull();
	});

	it('time is told in minutes and seconds', () => {
		expect([0, 999, 42_000, 59_600, 725_000].map(minutesText)).toEqual(['0:00', '0:01', '0:42', '1:00', '12:05']);
	});
});
