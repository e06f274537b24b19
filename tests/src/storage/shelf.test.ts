import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { shelfOf } from '../../../src/storage/index.ts';

/** A store in memory; `full` refuses to write. */
function memory(start: Record<string, string> = {}, full = false) {
	const kept = new Map(Object.entries(start));
	const store = {
		getItem: (key: string) => kept.get(key) ?? null,
		setItem(key: string, text: string) {
			if (full) throw new DOMException('full', 'QuotaExceededError');
			kept.set(key, text);
		},
		removeItem: (key: string) => void kept.delete(key),
	};
	return { kept, store: () => store };
}

/** Whole numbers by name: what is no whole number is damaged, and a text that is no record is damaged whole. */
const numbers = shelfOf<Record<string, number>>(
	'numbers',
	{},
	async () => (text) => {
		if (!text.startsWith('{')) throw new InputError('test.damaged', '', 'no');
		const all = Object.entries(JSON.parse(text) as Record<string, unknown>);
		const isSound = ([, value]: [string, unknown]) => Number.isSafeInteger(value);
		return {
			kept: Object.fromEntries(all.filter(isSound)) as Record<string, number>,
			damaged: Object.fromEntries(all.filter((each) => !isSound(each))),
		};
	},
	JSON.stringify,
);

describe('a shelf', () => {
	it('holds what was put on it, and reads again before a change', async () => {
		const { store } = memory();
		expect(await numbers.open(store)).toEqual({ kept: {}, damaged: null, keeps: true });
		await numbers.change(store, (kept) => ({ ...kept, a: 1 }));
		await numbers.change(store, (kept) => ({ ...kept, b: 2 }));
		expect((await numbers.open(store)).kept).toEqual({ a: 1, b: 2 });
	});

	it('sets a damaged entry aside once and keeps the rest', async () => {
		const { store, kept } = memory({ numbers: '{"a":1,"b":"two"}' });
		expect(await numbers.open(store)).toEqual({ kept: { a: 1 }, damaged: 1, keeps: true });
		expect(kept.get('numbers.damaged')).toBe('[{"b":"two"}]');
		expect((await numbers.open(store)).damaged).toBeNull();
	});

	it('sets what it cannot read aside whole, after what was there, whatever that is', async () => {
		const { store } = memory({ numbers: 'x', 'numbers.damaged': 'not JSON' });
		expect(await numbers.open(store)).toEqual({ kept: {}, damaged: 'whole', keeps: true });
		expect(JSON.parse(numbers.aside(store) ?? '')).toEqual(['not JSON', 'x']);
	});

	it('writes over nothing that it could not set aside', async () => {
		const { store, kept } = memory({ numbers: '{"b":"two"}' }, true);
		expect((await numbers.change(store, () => ({ a: 1 }))).keeps).toBe(false);
		expect(kept.get('numbers')).toBe('{"b":"two"}');
	});

	it('a browser that keeps nothing is no error', async () => {
		const refuses = () => {
			throw new DOMException('no', 'SecurityError');
		};
		expect(await numbers.open(refuses)).toEqual({ kept: {}, damaged: null, keeps: false });
		expect(await numbers.change(refuses, () => ({ a: 1 }))).toEqual({ kept: { a: 1 }, damaged: null, keeps: false });
		expect(numbers.aside(refuses)).toBeNull();
		expect(numbers.clear(refuses)).toBe(false);
	});

	it('cleared is gone, and what stood aside with it', async () => {
		const { store, kept } = memory({ numbers: 'x' });
		await numbers.open(store);
		expect(numbers.clear(store)).toBe(true);
		expect(kept.size).toBe(0);
	});

	it('a reader that breaks down is a bug, and no damaged text', async () => {
		const broken = shelfOf(
			'k',
			0,
			async () => () => {
				throw new TypeError('bug');
			},
			String,
		);
		await expect(broken.open(memory({ k: '1' }).store)).rejects.toThrow('bug');
	});
});
