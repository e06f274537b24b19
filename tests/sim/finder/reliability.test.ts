import { expect, test } from 'vitest';
import { reliability, rightAtNinety, saidOfKnown, saidOfUnknown } from './reliable.ts';
import { FAMILIES } from './unknown-rules.ts';

/** One in so many of those made by rule; all are walked by `reliability.soak.ts`, which prints the figures that count, and holds them from above as well. */
const ONE_IN = 40;

test('of what is said at 90 % in a sample, 85 % or more is right, and no false cause stands', () => {
	const known = (['four-in-line', 'one-wash'] as const).flatMap((id) => saidOfKnown(id, 1, 8));
	const unknown = FAMILIES.flatMap(([family, faults]) =>
		faults.filter((_, n) => n % ONE_IN === 0).flatMap((fault) => saidOfUnknown(family, fault, true)),
	);
	const all = [...known, ...unknown];
	console.table(reliability(all, 0.1));
	expect(all.filter(({ isEnded }) => !isEnded)).toEqual([]);
	expect(rightAtNinety(all, 0.1)).toBeGreaterThanOrEqual(0.85);
	for (const list of [known, unknown])
		expect(list.filter(({ standsFalse }) => standsFalse).length / list.length).toBeLessThanOrEqual(0.02);
});
