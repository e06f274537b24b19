import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leftInBox, takenText } from '../../../../src/features/papers/trainer/takenText.ts';
import type { TakenView } from '../../../../src/features/papers/trainer/views.ts';

const taken = fc.record<TakenView>({
	fresh: fc.nat(9),
	again: fc.nat(9),
	papers: fc.constant([]),
	refused: fc.array(fc.constant({ from: 'What was pasted, piece 10', sentence: 'Half of it is missing.' }), {
		maxLength: 2,
	}),
	paper: fc.constant(null),
});

test('the paste box empties only when all that it held was taken in', () => {
	fc.assert(
		fc.property(fc.string({ minLength: 1 }), taken, fc.string({ minLength: 1 }), (text, found, more) => {
			expect(leftInBox(text, text, found)).toBe(found.refused.length > 0 ? text : '');
			expect(leftInBox(text, text, null)).toBe(text);
			// what was typed while it was read has not been read
			expect(leftInBox(text + more, text, found)).toBe(text + more);
			expect(takenText(found).includes('could not be read')).toBe(found.refused.length > 0);
		}),
	);
});
