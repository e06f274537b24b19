import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asideText, changeProgress, openProgress } from '../../../../src/features/progress/keep.ts';
import { progressText, withMiss } from '../../../../src/features/progress/result.ts';
import { asidesIn, KEPT } from '../../../../src/storage/index.ts';
import { runs } from '../../../runs.ts';
import { memory, refuses } from '../../storage/memory.ts';
import { anyProgress, plain } from './arbitrary.ts';

const { key: KEY } = KEPT.progress;

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
		const { store } = memory({ [KEY]: text });
		const first = await openProgress(store);
		expect(first).toMatchObject({ damaged: 1, keeps: true });
		expect(plain(first.progress)).toEqual({ 'address-keys': good });
		expect(JSON.parse(asideText(store) ?? '')).toEqual({ 'held-colour': { done: 'many' } });
		expect((await openProgress(store)).damaged).toBeNull();
	});

	it('what cannot be read at all is set aside whole, beside what was there before, as an earlier version left it too', async () => {
		const { held, store } = memory({ [KEY]: '{"version":1,"ki', [`${KEY}.damaged`]: 'not JSON' });
		expect(await openProgress(store)).toMatchObject({ damaged: 'whole', keeps: true });
		held.set(KEY, 'x');
		await openProgress(store);
		expect(
			asidesIn(store, 'progress')
				.map(({ text }) => text)
				.sort(),
		).toEqual(['not JSON', 'x', '{"version":1,"ki']);
		expect((await openProgress(store)).damaged).toBeNull();
	});

	// they were called damaged, and begun afresh for good
	it('results of a newer version are left as they are, set aside for new ones, and come back with that version', async () => {
		const newer = JSON.stringify({ version: 9, kinds: { 'held-colour': good } });
		const { held, store } = memory({ [KEY]: newer });
		expect(await openProgress(store)).toMatchObject({ damaged: null, isNewer: true, keeps: true });
		expect(held.get(KEY)).toBe(newer);
		const { progress } = await changeProgress(store, (own) => withMiss(own, 'address-keys', 1));
		expect([...progress.keys()]).toEqual(['address-keys']);
		const [aside] = asidesIn(store, 'progress');
		expect(aside).toMatchObject({ text: newer, why: 'newer' });
		// the day that this version is the newer one
		held.set(aside?.key ?? '', JSON.stringify({ version: 1, at: 1, why: 'newer', text: newer.replace('9', '2') }));
		expect([...(await openProgress(store)).progress.keys()].sort()).toEqual(['address-keys', 'held-colour']);
		expect(asidesIn(store, 'progress')).toEqual([]);
		expect([...(await openProgress(store)).progress.keys()].sort()).toEqual(['address-keys', 'held-colour']);
	});

	// each change began from the device again, which had nothing
	it('what a full device does not take is held on the page, and kept once there is room', async () => {
		const { held, store } = memory({ other: 'x'.repeat(1000) }, 1100);
		expect(await changeProgress(store, (own) => withMiss(own, 'address-keys', 1))).toMatchObject({
			keeps: false,
			isFull: true,
		});
		const { progress } = await changeProgress(store, (own) => withMiss(own, 'held-colour', 1));
		expect([...progress.keys()]).toEqual(['address-keys', 'held-colour']);
		expect([...(await openProgress(store)).progress.keys()]).toEqual(['address-keys', 'held-colour']);
		held.delete('other');
		expect((await changeProgress(store, (own) => own)).keeps).toBe(true);
		expect(JSON.parse(held.get(KEY) ?? '')).toMatchObject({ kinds: { 'address-keys': {}, 'held-colour': {} } });
	});

	it('where nothing can be set aside nothing is written over it', async () => {
		const text = JSON.stringify({ version: 1, kinds: { 'held-colour': 3 } });
		const { store, held } = memory({ [KEY]: text }, 0);
		const { keeps, progress } = await changeProgress(store, (own) => withMiss(own, 'address-keys', 1));
		expect(keeps).toBe(false);
		expect(progress.has('address-keys')).toBe(true);
		expect(held.get(KEY)).toBe(text);
	});

	it('a browser that keeps nothing is no error', async () => {
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
