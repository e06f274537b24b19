import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	betterOf,
	type DrillResult,
	merged,
	NO_PROGRESS,
	withAgain,
	withBegun,
	withDone,
	withHint,
	withMiss,
} from '../../../../src/features/progress/result.ts';
import { runs } from '../../../runs.ts';
import { anyKind, anyProgress, plain } from './arbitrary.ts';

const result = (over: Partial<DrillResult> = {}): DrillResult => ({
	presses: 12,
	fewest: 10,
	hints: 0,
	milliseconds: 5000,
	seed: 1,
	...over,
});

describe('results', () => {
	it('are better with fewer hints, then with fewer presses too many, then quicker', () => {
		const hinted = result({ hints: 1, presses: 10, milliseconds: 1 });
		expect(betterOf(result(), hinted)).toEqual(result());
		expect(betterOf(result(), result({ presses: 20, fewest: 19 }))).toEqual(result({ presses: 20, fewest: 19 }));
		expect(betterOf(result(), result({ milliseconds: 4000 }))?.milliseconds).toBe(4000);
		expect(betterOf(null, result())).toEqual(result());
	});

	it('a clean one lengthens the row, another ends it, and the longest stays', () => {
		let progress = NO_PROGRESS;
		for (let n = 1; n <= 4; n++) progress = withDone(progress, 'address-keys', result(), true, n);
		expect(progress.get('address-keys')).toMatchObject({ done: 4, streak: 4, longest: 4, last: 4 });
		progress = withDone(progress, 'address-keys', result({ hints: 2 }), false, 5);
		expect(progress.get('address-keys')).toMatchObject({ done: 5, streak: 0, longest: 4, last: 5 });
		expect(withMiss(progress, 'held-colour', 6).get('held-colour')).toEqual({
			done: 0,
			best: null,
			streak: 0,
			longest: 0,
			last: 6,
			tried: [],
			open: null,
		});
	});

	it('the same drill once more keeps the better result and lengthens nothing', () => {
		const once = withDone(NO_PROGRESS, 'address-keys', result(), true, 1);
		const again = withAgain(once, 'address-keys', result({ presses: 10 }));
		expect(again.get('address-keys')).toMatchObject({ done: 1, streak: 1, best: { presses: 10 } });
	});
});

describe('a try', () => {
	it('is logged before its first press, goes on with its hints and misses, and is another with another seed', () => {
		const begun = withHint(withBegun(NO_PROGRESS, 'address-keys', 7), 'address-keys', 7);
		expect(begun.get('address-keys')).toMatchObject({ done: 0, tried: [7], open: { seed: 7, hints: 1, misses: 0 } });
		expect(withBegun(begun, 'address-keys', 7)).toBe(begun);
		const missed = withMiss(begun, 'address-keys', 1);
		expect(missed.get('address-keys')?.open).toEqual({ seed: 7, hints: 1, misses: 1 });
		const other = withBegun(missed, 'address-keys', 3);
		expect(other.get('address-keys')).toMatchObject({ tried: [3, 7], open: { seed: 3, hints: 0, misses: 0 } });
		expect(withHint(other, 'address-keys', 7)).toBe(other);
		expect(withDone(other, 'address-keys', result(), true, 2).get('address-keys')).toMatchObject({
			open: null,
			tried: [3, 7],
		});
	});

	it('of a seed met before leaves the row as it was', () => {
		const once = withDone(NO_PROGRESS, 'address-keys', result(), true, 1);
		expect(withDone(once, 'address-keys', result(), 'again', 2).get('address-keys')).toMatchObject({
			done: 2,
			streak: 1,
			last: 2,
		});
	});

	it('is remembered even where as many were tried as are kept', () => {
		let progress = NO_PROGRESS;
		for (let seed = 1000; seed > 600; seed--) progress = withBegun(progress, 'address-keys', seed);
		const { tried } = progress.get('address-keys') ?? { tried: [] };
		expect([tried.length, tried[0]]).toEqual([300, 601]);
	});
});

describe('merging', () => {
	it('the same twice changes nothing, order does not matter, nor how three are grouped', () => {
		fc.assert(
			fc.property(anyProgress, anyProgress, anyProgress, (a, b, c) => {
				expect(plain(merged(a, a))).toEqual(plain(a));
				expect(plain(merged(a, b))).toEqual(plain(merged(b, a)));
				expect(plain(merged(merged(a, b), c))).toEqual(plain(merged(a, merged(b, c))));
			}),
			{ numRuns: runs(300) },
		);
	});

	it('loses no kind, no count, no better result', () => {
		fc.assert(
			fc.property(anyProgress, anyProgress, (a, b) => {
				const all = merged(a, b);
				for (const [kind, { done, longest, best }] of [...a, ...b]) {
					const record = all.get(kind);
					expect(record?.done).toBeGreaterThanOrEqual(done);
					expect(record?.longest).toBeGreaterThanOrEqual(longest);
					if (best) expect(betterOf(record?.best ?? null, best)).toEqual(record?.best);
				}
				expect(all.size).toBe(new Set([...a.keys(), ...b.keys()]).size);
			}),
			{ numRuns: runs(300) },
		);
	});

	it('the row is that of the device on which the kind was marked later', () => {
		const early = withDone(NO_PROGRESS, 'address-keys', result(), true, 10);
		const later = withMiss(early, 'address-keys', 20);
		expect(merged(early, later).get('address-keys')).toMatchObject({ streak: 0, longest: 1, last: 20 });
	});

	it('never makes of two something that doing drills could not', () => {
		fc.assert(
			fc.property(anyProgress, anyProgress, anyKind, (a, b, kind) => {
				const record = merged(a, b).get(kind);
				if (!record) return;
				expect(record.streak).toBeLessThanOrEqual(record.longest);
				expect(record.longest).toBeLessThanOrEqual(record.done);
				expect(record.done > 0).toBe(record.best !== null);
			}),
			{ numRuns: runs(300) },
		);
	});
});
