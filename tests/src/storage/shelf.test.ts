import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { asidesIn, KEPT, shelfOf } from '../../../src/storage/index.ts';
import { memory, refuses } from './memory.ts';

const { key } = KEPT.review;
const WELL = { damaged: null, isNewer: false, keeps: true, isFull: false };

/** Whole numbers by name: what is no whole number is damaged, and a text that is no record is damaged whole. */
const numbers = shelfOf<Record<string, number>>('review', {
	none: {},
	reader: async () => (text) => {
		if (!text.startsWith('{')) throw new InputError('review.damaged', '', { trouble: 'damaged' });
		const all = Object.entries(JSON.parse(text) as Record<string, unknown>);
		const isSound = ([, value]: [string, unknown]) => Number.isSafeInteger(value);
		return {
			kept: Object.fromEntries(all.filter(isSound)) as Record<string, number>,
			damaged: Object.fromEntries(all.filter((each) => !isSound(each))),
		};
	},
	write: JSON.stringify,
	merge: (one, other) => ({ ...one, ...other }),
});

describe('a shelf', () => {
	it('holds what was put on it, and reads again before a change', async () => {
		const { store } = memory();
		expect(await numbers.open(store)).toEqual({ ...WELL, kept: {} });
		await numbers.change(store, (kept) => ({ ...kept, a: 1 }));
		await numbers.change(store, (kept) => ({ ...kept, b: 2 }));
		expect((await numbers.open(store)).kept).toEqual({ a: 1, b: 2 });
	});

	it('sets a damaged entry aside once and keeps the rest', async () => {
		const { store } = memory({ [key]: '{"a":1,"b":"two"}' });
		expect(await numbers.open(store)).toEqual({ ...WELL, kept: { a: 1 }, damaged: 1 });
		expect(asidesIn(store, 'review')).toMatchObject([{ text: '{"b":"two"}', why: 'damaged' }]);
		expect((await numbers.open(store)).damaged).toBeNull();
	});

	it('sets what it cannot read aside whole, beside what was there, whatever that is', async () => {
		const { store } = memory({ [key]: 'x', [`${key}.damaged`]: 'not JSON', [`${key}.aside.y`]: 'nor this' });
		expect(await numbers.open(store)).toEqual({ ...WELL, kept: {}, damaged: 'whole' });
		expect(numbers.aside(store)).toBe('x');
		expect(
			asidesIn(store, 'review')
				.map(({ text }) => text)
				.sort(),
		).toEqual(['nor this', 'not JSON', 'x']);
	});

	it('moves what does not fit twice, and gives it back where it fits nowhere else', async () => {
		const text = 'x'.repeat(200);
		const tight = memory({ [key]: text }, 330);
		expect(await numbers.open(tight.store)).toMatchObject({ damaged: 'whole', keeps: true });
		expect(numbers.aside(tight.store)).toBe(text);
		const full = memory({ [key]: text }, 220);
		expect(await numbers.open(full.store)).toMatchObject({ damaged: 'whole', keeps: false, isFull: true });
		expect([...full.held]).toEqual([[key, text]]);
		// it left its place, and a store that takes nothing did not take it back
		const stuck = memory({ [key]: text }, 0);
		expect(await numbers.open(stuck.store)).toMatchObject({ damaged: 'whole', keeps: false, isFull: true });
		expect([...stuck.held]).toEqual([[key, text]]);
	});

	it('writes over nothing that it could not set aside, and holds what came after', async () => {
		const { store, held } = memory({ [key]: '{"b":"two"}' }, 0);
		expect(await numbers.change(store, () => ({ a: 1 }))).toMatchObject({ keeps: false, isFull: true });
		expect(held.get(key)).toBe('{"b":"two"}');
		expect((await numbers.change(store, (kept) => ({ ...kept, c: 3 }))).kept).toEqual({ a: 1, c: 3 });
	});

	it('a browser that keeps nothing is no error, and what is done stays as long as the page', async () => {
		expect(await numbers.open(refuses)).toEqual({ ...WELL, kept: {}, keeps: false });
		expect(await numbers.change(refuses, () => ({ a: 1 }))).toEqual({ ...WELL, kept: { a: 1 }, keeps: false });
		expect((await numbers.change(refuses, (kept) => ({ ...kept, b: 2 }))).kept).toEqual({ a: 1, b: 2 });
		expect(numbers.aside(refuses)).toBeNull();
		expect(numbers.clear(refuses)).toBe(false);
		expect((await numbers.open(refuses)).kept).toEqual({});
	});

	it('what another tab wrote while this one was not kept is put together with it', async () => {
		const { store, held } = memory({ other: 'x'.repeat(100) }, 115);
		await numbers.change(store, () => ({ a: 1 }));
		held.delete('other');
		held.set(key, '{"b":2}');
		expect(await numbers.change(store, (kept) => kept)).toEqual({ ...WELL, kept: { a: 1, b: 2 } });
		expect(held.get(key)).toBe('{"b":2,"a":1}');
	});

	it('cleared is gone, and what stood aside with it', async () => {
		const { store, held } = memory({ [key]: 'x', [`${key}.damaged`]: 'y' });
		await numbers.open(store);
		expect(numbers.clear(store)).toBe(true);
		expect(held.size).toBe(0);
	});

	it('a reader that breaks down is a bug, and no damaged text', async () => {
		const broken = shelfOf('review', {
			none: 0,
			reader: async () => () => {
				throw new TypeError('bug');
			},
			write: String,
			merge: Math.max,
		});
		await expect(broken.open(memory({ [key]: '1' }).store)).rejects.toThrow('bug');
	});
});
