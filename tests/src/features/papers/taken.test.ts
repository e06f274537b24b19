import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leftInBox, summaryOf, type TakenView, takenText } from '../../../../src/features/papers/trainer/views.ts';
import { runs } from '../../../runs.ts';

const taken = fc.record<TakenView>({
	fresh: fc.nat(9),
	again: fc.nat(9),
	papers: fc.constant([]),
	refused: fc
		.array(fc.constant({ from: 'What was pasted, piece 10', sentence: 'Half of it is missing.' }), { maxLength: 2 })
		.map(summaryOf),
	paper: fc.constant(null),
});

test('the paste box empties only when all that it held was taken in', () => {
	fc.assert(
		fc.property(fc.string({ minLength: 1 }), taken, fc.string({ minLength: 1 }), (text, found, more) => {
			expect(leftInBox(text, text, found)).toBe(found.refused.count > 0 ? text : '');
			expect(leftInBox(text, text, null)).toBe(text);
			// what was typed while it was read has not been read
			expect(leftInBox(text + more, text, found)).toBe(text + more);
			expect(takenText(found).includes('couldn’t be read')).toBe(found.refused.count > 0);
		}),
	);
});

test('however much could not be read, it is told in a few lines, and none of it is left uncounted', () => {
	const unread = fc.record({ from: fc.string(), sentence: fc.nat(60).map((n) => `Wrong in way ${n}.`) });
	fc.assert(
		fc.property(fc.array(unread, { maxLength: 300 }), (all) => {
			const { count, lines, left } = summaryOf(all);
			expect(count).toBe(all.length);
			expect(lines.length).toBeLessThanOrEqual(20);
			expect(lines.reduce((sum, { more }) => sum + 1 + more, left)).toBe(all.length);
			for (const { from, sentence, more } of lines) {
				const alike = all.filter((each) => each.sentence === sentence);
				expect([alike[0]?.from, alike.length]).toEqual([from, more + 1]);
			}
		}),
		{ numRuns: runs(100) },
	);
});
