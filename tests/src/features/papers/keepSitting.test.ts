import { expect, test } from 'vitest';
import {
	forgetSitting,
	keepLast,
	keepSitting,
	keyOf,
	lastPaper,
	setSittingAside,
	sittingText,
} from '../../../../src/features/papers/learner/keepSitting.ts';
import { begin } from '../../../../src/features/papers/learner/sitting.ts';
import { asidesIn } from '../../../../src/storage/index.ts';
import { memory, refuses } from '../../storage/memory.ts';

const paper = { mark: '0123456789abcdef', minutes: null, questions: [{ id: 'q' }] };
const sitting = begin(paper, 'fedcba9876543210', 5);

test('a sitting is kept under its paper, found again, and gone once it is forgotten', () => {
	const { held, store } = memory();
	expect(sittingText(store, paper.mark)).toBeNull();
	expect(keepSitting(store, sitting)).toBe('kept');
	expect(JSON.parse(sittingText(store, paper.mark)?.text ?? '')).toEqual(sitting);
	expect(sittingText(store, 'another')).toBeNull();
	forgetSitting(store, paper.mark);
	expect(held.size).toBe(0);
});

// the second took the place of the first for good
test('what is damaged is moved aside and not lost, one after another', () => {
	const { store } = memory();
	for (const at of [1, 2]) {
		keepSitting(store, { ...sitting, at });
		setSittingAside(store, paper.mark, sittingText(store, paper.mark)?.text ?? '');
	}
	expect(sittingText(store, paper.mark)).toBeNull();
	expect(
		asidesIn(store, 'sitting')
			.map(({ text }) => JSON.parse(text).at)
			.sort(),
	).toEqual([1, 2]);
});

// it was called damaged
test('what a newer version kept is told as such, and set aside when a sitting is begun anew', () => {
	const newer = JSON.stringify({ ...sitting, version: 2, more: 'than we know' });
	const { held, store } = memory({ [keyOf(paper.mark)]: newer });
	expect(sittingText(store, paper.mark)).toEqual({ text: newer, isNewer: true });
	expect(held.get(keyOf(paper.mark))).toBe(newer);
	expect(keepSitting(store, sitting)).toBe('kept');
	expect(asidesIn(store, 'sitting')).toMatchObject([{ text: newer, why: 'newer' }]);
});

test('the paper begun last is found again; what is no link to a paper is not', () => {
	const { held, store } = memory();
	keepLast(store, '#paper=1.abc');
	expect(lastPaper(store)).toBe('#paper=1.abc');
	keepLast(store, 'javascript:alert(1)');
	expect(lastPaper(store)).toBeNull();
	keepLast(store, null);
	expect(held.size).toBe(0);
});

test('a device that refuses says so, and nothing breaks', () => {
	expect(keepSitting(refuses, sitting)).toBe('refused');
	expect(keepSitting(memory({}, 0).store, sitting)).toBe('full');
	expect(sittingText(refuses, paper.mark)).toBeNull();
	expect(lastPaper(refuses)).toBeNull();
	expect(() => {
		forgetSitting(refuses, paper.mark);
		setSittingAside(refuses, paper.mark, 'x');
		keepLast(refuses, '#paper=1.a');
	}).not.toThrow();
});
