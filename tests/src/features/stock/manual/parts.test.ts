import fc from 'fast-check';
import { expect, test } from 'vitest';
import { manualWords as words } from '#words/stock/index.ts';
import { backNames } from '../../../../../src/features/stock/manual/parts.ts';
import { runs } from '../../../../runs.ts';

test('ways back to texts of one page are told apart by their first line', () => {
	const parts = [
		{ number: 1, text: '\n  1\tDimmer\n2\tRed' },
		{ number: 2, text: '1\tStrobe' },
		{ number: 1, text: '6\tWhite' },
	];
	expect(backNames(parts)).toEqual([
		words.goBackPart(1, 1, '1 Dimmer'),
		words.goBack(2),
		words.goBackPart(1, 2, '6 White'),
	]);
});

test('no two ways back have one name', () => {
	const part = fc.record({
		number: fc.integer({ min: 1, max: 3 }),
		text: fc.constantFrom('', ' \n', '1\tRed', '1\tRed\n2'),
	});
	fc.assert(
		fc.property(fc.array(part, { maxLength: 8 }), (parts) => {
			expect(new Set(backNames(parts)).size).toBe(parts.length);
		}),
		{ numRuns: runs(200) },
	);
});
