import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInputError } from '../../../../shared/error/index.ts';
import { importProgress } from '../../../../src/features/progress/keep.ts';
import { readProgress } from '../../../../src/features/progress/reading.ts';
import { merged, progressText } from '../../../../src/features/progress/result.ts';
import type { Migrate } from '../../../../src/storage/index.ts';
import { runs } from '../../../runs.ts';
import { anyProgress, plain } from './arbitrary.ts';

const codeOf = (act: () => unknown): string => {
	try {
		act();
	} catch (error) {
		if (isInputError(error)) return error.code;
		throw error;
	}
	return 'none';
};

describe('progress as text', () => {
	it('comes back as it was', () => {
		fc.assert(
			fc.property(anyProgress, (progress) => {
				const { progress: back, damaged } = readProgress(progressText(progress));
				expect(plain(back)).toEqual(plain(progress));
				expect(damaged).toEqual({});
			}),
			{ numRuns: runs(300) },
		);
	});

	it('damaged entries are set aside one by one, each as it was found, and the rest is there', () => {
		const none = { done: 0, best: null, streak: 0, longest: 0, last: 0, tried: [], open: null };
		const junk = fc.oneof(
			fc.constant(null),
			fc.string(),
			fc.integer(),
			fc.constant({ ...none, done: -1 }),
			fc.constant({ ...none, streak: 3, longest: 1 }),
			fc.constant({ ...none, done: 2 }),
			fc.constant({ done: 1, streak: 0, longest: 0, last: 0, tried: [], open: null }),
			fc.constant({ done: 0, best: null, streak: 0, longest: 0, last: 0 }),
			fc.constant({ ...none, tried: [-1] }),
			fc.constant({ ...none, tried: Array.from({ length: 301 }, (_, seed) => seed) }),
			fc.constant({ ...none, open: { seed: 1, hints: 'many', misses: 0 } }),
		);
		const names = fc.constantFrom('bad-1', 'bad-2', '__proto__', 'constructor', 'UPPER', 'x'.repeat(80));
		fc.assert(
			fc.property(anyProgress, fc.array(fc.tuple(names, junk), { minLength: 1, maxLength: 4 }), (progress, bad) => {
				const entries = [...progress, ...bad].map(([kind, it]) => `${JSON.stringify(kind)}:${JSON.stringify(it)}`);
				const found = readProgress(`{"version":2,"kinds":{${entries.join()}}}`);
				expect(plain(found.progress)).toEqual(plain(progress));
				expect(new Map(Object.entries(found.damaged))).toEqual(new Map(bad));
			}),
			{ numRuns: runs(300) },
		);
	});

	it.each([
		['', 'progress.damaged'],
		['{', 'progress.damaged'],
		['null', 'progress.damaged'],
		['[]', 'progress.damaged'],
		['{}', 'progress.damaged'],
		['{"version":1}', 'progress.damaged'],
		['{"version":1,"kinds":[]}', 'progress.damaged'],
		['{"version":0,"kinds":{}}', 'progress.damaged'],
		['{"version":"1","kinds":{}}', 'progress.damaged'],
		['{"version":3,"kinds":{}}', 'progress.newer'],
	])('%j is refused as %s', (text, code) => {
		expect(codeOf(() => readProgress(text))).toBe(code);
	});

	it('anything at all is read or refused, never a crash', () => {
		fc.assert(
			fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
				expect(['progress.damaged', 'progress.newer', 'none']).toContain(codeOf(() => readProgress(text)));
			}),
			{ numRuns: runs(500) },
		);
	});

	it('older versions are led up one by one, from whichever they are', () => {
		const record = { done: 1, best: null, streak: 0, longest: 0, last: 5, tried: [], open: null };
		const best = { presses: 9, fewest: 9, hints: 0, milliseconds: 10, seed: 4 };
		const steps: Migrate[] = [
			(old) => ({ version: 2, kinds: old['drills'] }),
			({ kinds }) => ({
				version: 3,
				kinds: Object.fromEntries(Object.entries(kinds as object).map(([kind, it]) => [kind, { ...it, best }])),
			}),
		];
		const read = (whole: object) => plain(readProgress(JSON.stringify(whole), steps, 3).progress);
		const wanted = { 'address-keys': { ...record, best } };
		expect(read({ version: 1, drills: { 'address-keys': record } })).toEqual(wanted);
		expect(read({ version: 2, kinds: { 'address-keys': record } })).toEqual(wanted);
		expect(read({ version: 3, kinds: { 'address-keys': { ...record, best } } })).toEqual(wanted);
	});
});

describe('what version 1 kept', () => {
	const best = { presses: 9, fewest: 7, hints: 0, milliseconds: 9000, seed: 4 };
	const read = (record: object) =>
		readProgress(JSON.stringify({ version: 1, kinds: { 'address-keys': record } })).progress.get('address-keys');

	it('opens with all it had, and its best seed is one that was met', () => {
		expect(read({ done: 2, best, streak: 1, longest: 2, last: 5 })).toEqual({
			done: 2,
			best,
			streak: 1,
			longest: 2,
			last: 5,
			tried: [4],
			open: null,
		});
		expect(read({ done: 0, best: null, streak: 0, longest: 0, last: 5 })).toMatchObject({ tried: [], open: null });
	});

	// Symptom: one seed done three times, with a hint and a reload between, read 'Firm'. What was kept so cannot be told apart.
	it('is not firm until one more drill is done, since it may have been one seed over and over', () => {
		expect(read({ done: 5, best, streak: 5, longest: 5, last: 5 })).toMatchObject({ streak: 2, longest: 5, done: 5 });
	});

	it('is set aside where it is damaged', () => {
		const { damaged, progress } = readProgress('{"version":1,"kinds":{"address-keys":{"done":"lots"},"defaults":7}}');
		expect(progress.size).toBe(0);
		expect(damaged).toEqual({ 'address-keys': { done: 'lots' }, defaults: 7 });
	});
});

describe('import', () => {
	it('of an export gives both together, and of the same again changes nothing', async () => {
		await fc.assert(
			fc.asyncProperty(anyProgress, anyProgress, async (own, other) => {
				const got = await importProgress(own, progressText(other));
				if (got.is !== 'taken') throw new Error(got.is);
				expect(plain(got.progress)).toEqual(plain(merged(own, other)));
				expect(got.kinds).toBe(other.size);
				const again = await importProgress(got.progress, progressText(other));
				expect(again.is === 'taken' && plain(again.progress)).toEqual(plain(got.progress));
			}),
			{ numRuns: runs(100) },
		);
	});

	it('of what is none says so', async () => {
		expect(await importProgress(new Map(), 'a shopping list')).toEqual({ is: 'bad' });
		expect(await importProgress(new Map(), '{"version":9,"kinds":{}}')).toEqual({ is: 'newer' });
		expect(await importProgress(new Map(), ' '.repeat(2_000_001))).toEqual({ is: 'bad' });
	});
});
