import fc from 'fast-check';
import type { DrillResult, KindRecord, Progress } from '../../../../src/features/progress/result.ts';

const count = fc.nat({ max: 5000 });

const anyResult: fc.Arbitrary<DrillResult> = fc
	.record({ fewest: count, more: count, hints: fc.nat({ max: 20 }), milliseconds: count, seed: fc.nat() })
	.map(({ more, ...rest }) => ({ ...rest, presses: rest.fewest + more }));

/** A record that doing drills could lead to. */
const anyRecord: fc.Arbitrary<KindRecord> = fc
	.record({
		done: fc.nat({ max: 50 }),
		longest: fc.nat(),
		streak: fc.nat(),
		last: fc.nat({ max: 3 }),
		best: anyResult,
		tried: fc.uniqueArray(fc.nat({ max: 20 }), { maxLength: 6 }),
		open: fc.option(fc.record({ seed: fc.nat({ max: 20 }), hints: fc.nat(), misses: fc.nat() }), { nil: null }),
	})
	.map(({ done, longest, streak, last, best, tried, open }) => {
		const most = done === 0 ? 0 : longest % (done + 1);
		return {
			done,
			longest: most,
			streak: streak % (most + 1),
			last,
			best: done === 0 ? null : best,
			tried: tried.toSorted((a, b) => a - b),
			open,
		};
	});

export const anyKind = fc.constantFrom('address-keys', 'address-dip', 'held-colour', 'of-a-newer-version');

export const anyProgress: fc.Arbitrary<Progress> = fc
	.dictionary(anyKind, anyRecord, { noNullPrototype: true })
	.map((records) => new Map(Object.entries(records)));

/** Progress as plain data, to be compared. */
export const plain = (progress: Progress) => Object.fromEntries([...progress].sort(([a], [b]) => (a < b ? -1 : 1)));
