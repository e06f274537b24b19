import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	asideText,
	changeProgress,
	openProgress,
	PROGRESS_ASIDE_KEY,
	PROGRESS_KEY,
} from '../../../../src/features/progress/keep.ts';
import { withMiss } from '../../../../src/features/progress/result.ts';
import { progressText } from '../../../../src/features/progress/version.ts';
import { runs } from '../../../runs.ts';
import { anyProgress, plain } from './arbitrary.ts';

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

const good = {
	done: 1,
	best: { presses: 2, fewest: 2, hints: 0, milliseconds: 9, seed: 3 },
	streak: 1,
	longest: 1,
	last: 7,
	tried: [3],
	open: null,
};

describe('keeping', () => {
	it('what is changed is there the next time', async () => {
		await fc.assert(
			fc.asyncProperty(anyProgress, async (progress) => {
				const { store } = memory();
				expect(await openProgress(store)).toMatchObject({ damaged: null, keeps: true });
				await changeProgress(store, () => progress);
				expect(plain((await openProgress(store)).progress)).toEqual(plain(progress));
			}),
			{ numRuns: runs(100) },
		);
	});

	it('another tab’s changes since are not written over', async () => {
		const { store } = memory();
		await openProgress(store);
		await changeProgress(store, (own) => withMiss(own, 'address-keys', 1));
		await changeProgress(store, (own) => withMiss(own, 'held-colour', 2));
		expect([...(await openProgress(store)).progress.keys()]).toEqual(['address-keys', 'held-colour']);
	});

	it('a damaged entry is set aside, said once, and the rest is kept', async () => {
		const text = JSON.stringify({ version: 2, kinds: { 'address-keys': good, 'held-colour': { done: 'many' } } });
		const { store, kept } = memory({ [PROGRESS_KEY]: text });
		const first = await openProgress(store);
		expect(first).toMatchObject({ damaged: 1, keeps: true });
		expect(plain(first.progress)).toEqual({ 'address-keys': good });
		expect(JSON.parse(kept.get(PROGRESS_ASIDE_KEY) ?? '')).toEqual([{ 'held-colour': { done: 'many' } }]);
		expect((await openProgress(store)).damaged).toBeNull();
	});

	it('what cannot be read at all is set aside whole, after what was there before', async () => {
		const { store } = memory({ [PROGRESS_KEY]: '{"version":1,"ki', [PROGRESS_ASIDE_KEY]: '["before"]' });
		expect(await openProgress(store)).toMatchObject({ damaged: 'whole', keeps: true });
		expect(JSON.parse(asideText(store) ?? '')).toEqual(['before', '{"version":1,"ki']);
		expect((await openProgress(store)).damaged).toBeNull();
	});

	it('what stands aside and is damaged itself stays too', async () => {
		const { store } = memory({ [PROGRESS_KEY]: 'x', [PROGRESS_ASIDE_KEY]: 'not JSON' });
		await openProgress(store);
		expect(JSON.parse(asideText(store) ?? '')).toEqual(['not JSON', 'x']);
	});

	it('where nothing can be set aside nothing is written over it', async () => {
		const text = JSON.stringify({ version: 1, kinds: { 'held-colour': 3 } });
		const { store, kept } = memory({ [PROGRESS_KEY]: text }, true);
		const { keeps, progress } = await changeProgress(store, (own) => withMiss(own, 'address-keys', 1));
		expect(keeps).toBe(false);
		expect(progress.has('address-keys')).toBe(true);
		expect(kept.get(PROGRESS_KEY)).toBe(text);
	});

	it('a browser that keeps nothing is no error', async () => {
		const refuses = () => {
			throw new DOMException('no', 'SecurityError');
		};
		expect(await openProgress(refuses)).toMatchObject({ damaged: null, keeps: false });
		expect((await changeProgress(refuses, (own) => withMiss(own, 'address-keys', 1))).keeps).toBe(false);
		expect(asideText(refuses)).toBeNull();
	});

	it('text is what was kept, for the one who exports', () => {
		expect(JSON.parse(progressText(new Map([['address-keys', good]])))).toEqual({
			version: 2,
			kinds: { 'address-keys': good },
		});
	});
});
