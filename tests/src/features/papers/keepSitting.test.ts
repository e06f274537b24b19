import { expect, test } from 'vitest';
import {
	forgetSitting,
	keepLast,
	keepSitting,
	lastPaper,
	setSittingAside,
	sittingText,
} from '../../../../src/features/papers/learner/keepSitting.ts';
import { begin } from '../../../../src/features/papers/learner/sitting.ts';

const paper = { mark: '0123456789abcdef', minutes: null, questions: [{ id: 'q' }] };
const sitting = begin(paper, 'fedcba9876543210', 5);

/** A device's store, and what lies in it. */
function memory() {
	const held = new Map<string, string>();
	const store = {
		getItem: (key: string) => held.get(key) ?? null,
		setItem: (key: string, text: string) => void held.set(key, text),
		removeItem: (key: string) => void held.delete(key),
	};
	return { held, store: () => store };
}

test('a sitting is kept under its paper, found again, and gone once it is forgotten', () => {
	const { held, store } = memory();
	expect(sittingText(store, paper.mark)).toBeNull();
	expect(keepSitting(store, sitting)).toBe(true);
	expect(JSON.parse(sittingText(store, paper.mark) ?? '')).toEqual(sitting);
	expect(sittingText(store, 'another')).toBeNull();
	forgetSitting(store, paper.mark);
	expect(held.size).toBe(0);
});

test('what is damaged is moved aside and not lost', () => {
	const { held, store } = memory();
	keepSitting(store, sitting);
	setSittingAside(store, paper.mark);
	expect(sittingText(store, paper.mark)).toBeNull();
	expect([...held.values()]).toEqual([JSON.stringify(sitting)]);
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
	const refused = () => {
		throw new DOMException('refused', 'SecurityError');
	};
	expect(keepSitting(refused, sitting)).toBe(false);
	expect(sittingText(refused, paper.mark)).toBeNull();
	expect(lastPaper(refused)).toBeNull();
	expect(() => {
		forgetSitting(refused, paper.mark);
		setSittingAside(refused, paper.mark);
		keepLast(refused, '#paper=1.a');
	}).not.toThrow();
});
