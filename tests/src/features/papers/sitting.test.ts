import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Answer } from '../../../../shared/paper/index.ts';
import {
	answered,
	begin,
	flagged,
	handedIn,
	isOpen,
	movedTo,
	type Sitting,
	secondsLeft,
	standing,
	timeToSay,
	toldOf,
} from '../../../../src/features/papers/learner/sitting.ts';
import { runs } from '../../../runs.ts';

const questions = Array.from({ length: 6 }, (_, i) => ({ id: `q${i}` }));
const paper = { mark: '0123456789abcdef', minutes: null, questions };
const timed = { ...paper, minutes: 10 };
const fresh = begin(paper, 'fedcba9876543210', 1000);

const answer = fc.oneof(
	fc.constant(null),
	fc.record({ form: fc.constant('number' as const), value: fc.nat(255) }),
	fc.record({ form: fc.constant('one' as const), chose: fc.constantFrom('a', 'b') }),
);
const id = fc.constantFrom(...questions.map((each) => each.id));
const step: fc.Arbitrary<(sitting: Sitting) => Sitting> = fc.oneof(
	fc.tuple(id, answer).map(
		([item, given]) =>
			(s: Sitting) =>
				answered(s, item, given as Answer | null),
	),
	fc.tuple(id, fc.boolean()).map(
		([item, flag]) =>
			(s: Sitting) =>
				flagged(s, item, flag),
	),
	fc.integer({ min: -5, max: 20 }).map((at) => (s: Sitting) => movedTo(s, at, paper)),
	id.map((item) => (s: Sitting) => toldOf(s, item)),
	fc.tuple(fc.string(), fc.nat()).map(
		([name, now]) =>
			(s: Sitting) =>
				handedIn(s, paper, name, now),
	),
);

test('whatever is done, it stays a sitting: what was told or handed in keeps its answer, and it never leaves the paper', () => {
	fc.assert(
		fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
			let sitting = fresh;
			for (const next of steps) {
				const before = sitting;
				sitting = next(sitting);
				expect(sitting.at).toBeGreaterThanOrEqual(0);
				expect(sitting.at).toBeLessThan(questions.length);
				for (const each of questions) {
					if (!isOpen(before, each.id)) expect(sitting.answers[each.id]).toEqual(before.answers[each.id]);
				}
				for (const told of sitting.told) expect(sitting.answers).toHaveProperty(told);
				if (before.ended !== null) expect(sitting.ended).toBe(before.ended);
				const { answered: done, open } = standing(sitting, paper);
				expect(done + open).toBe(questions.length);
				// as it is kept and found again
				expect(JSON.parse(JSON.stringify(sitting))).toEqual(sitting);
			}
		}),
		{ numRuns: runs(300) },
	);
});

test('a limit runs from the beginning, whatever the page does, and ends what comes late when it was over', () => {
	const sitting = begin(timed, 'fedcba9876543210', 0);
	expect(secondsLeft(sitting, paper, 5000)).toBeNull();
	expect(secondsLeft(sitting, timed, 1)).toBe(600);
	expect(secondsLeft(sitting, timed, 599_001)).toBe(1);
	expect(secondsLeft(sitting, timed, 600_000)).toBe(0);
	expect(secondsLeft(sitting, timed, 10_000_000)).toBe(0);
	expect(handedIn(sitting, timed, ' Ash ', 300_000)).toMatchObject({ ended: 300_000, name: 'Ash' });
	expect(handedIn(sitting, timed, '', 10_000_000).ended).toBe(600_000);
	// a clock that was set back does not end it before it began
	expect(handedIn(begin(timed, '00', 5000), timed, '', 10).ended).toBe(5000);
});

test('time is said at five minutes, at one and at none, once each', () => {
	fc.assert(
		fc.property(fc.integer({ min: 302, max: 2000 }), fc.integer({ min: 1, max: 40 }), (from, pace) => {
			const said: string[] = [];
			for (let left = from; left > 0; left -= pace) {
				const which = timeToSay(left, Math.max(0, left - pace));
				if (which) said.push(which);
			}
			expect(said).toEqual(['five', 'one', 'none']);
		}),
		{ numRuns: runs(100) },
	);
	expect(timeToSay(null, 5)).toBeNull();
	expect(timeToSay(5, null)).toBeNull();
	// opened with little left: nothing is said until it changes
	expect(timeToSay(30, 29)).toBeNull();
});
