import 'fake-indexeddb/auto';
import { deleteDB, openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { setPaper } from '../../../../../shared/paper/index.ts';
import {
	openPaperStore,
	readHandedIn,
	resultFragment,
	storeFile,
} from '../../../../../src/features/papers/exchange/index.ts';
import { DATABASE } from '../../../../../src/storage/index.ts';
import { plainPaper, sat } from './class.ts';

const paper = plainPaper(1, 8);
const other = plainPaper(2, 8);
const slip = { recipe: paper.recipe, seed: paper.seed };
const taken = (seed: number, of = paper) => ({ result: sat(of, seed), whole: true });

/** Everything that lies in the database, as text. */
async function inside(): Promise<string> {
	const base = await openDB(DATABASE.name);
	const tables = await Promise.all(
		[...base.objectStoreNames].map(async (table) => [await base.getAllKeys(table), await base.getAll(table)]),
	);
	base.close();
	return JSON.stringify(tables);
}

/** Puts something into the database behind the store's back. */
async function slipIn(table: string, key: string, record: unknown): Promise<void> {
	const base = await openDB(DATABASE.name);
	await base.put(table, record, key);
	base.close();
}

beforeEach(() => deleteDB(DATABASE.name));
afterEach(() => vi.unstubAllGlobals());

describe('what a trainer keeps', () => {
	it('is there again when the page is opened anew', async () => {
		const first = await openPaperStore(() => 1000);
		expect(first.keeps()).toBe(true);
		await first.putPaper(slip, paper.mark);
		const came = [taken(1), taken(2), taken(1)];
		expect(await first.putResults(came)).toEqual({ fresh: 2, again: 1, differ: [] });
		await first.putName(came[0]?.result.attempt ?? '', '  Oda of\u202e the yard ');
		first.close();
		const held = await (await openPaperStore()).held();
		expect(held.papers).toEqual([{ version: 1, ...slip, mark: paper.mark, kept: 1000 }]);
		expect(held.results.map(({ result }) => result)).toEqual(
			expect.arrayContaining([came[0]?.result, came[1]?.result]),
		);
		expect(held.names).toEqual([{ version: 1, attempt: came[0]?.result.attempt, name: 'Oda of  the yard' }]);
	});

	it('keeps the earlier of two that say they are the same attempt, and hands back the later', async () => {
		const store = await openPaperStore();
		const mine = taken(3);
		const changed = { ...mine, result: { ...mine.result, answers: {} } };
		await store.putResults([mine]);
		expect(await store.putResults([changed])).toEqual({ fresh: 0, again: 0, differ: [changed] });
		expect((await store.held()).results[0]?.result).toEqual(mine.result);
		store.close();
	});

	it('is gone when it is taken away: nothing of it is left in the database', async () => {
		const store = await openPaperStore();
		await store.putPaper(slip, paper.mark);
		const [a, b, c] = [taken(4), taken(5), taken(6, other)];
		await store.putResults([a, b, c]);
		for (const { result } of [a, b, c]) await store.putName(result.attempt, `Named ${result.attempt}`);
		await store.removeResult(a.result.attempt);
		expect(await inside()).not.toContain(a.result.attempt);
		expect(await inside()).not.toContain(`${a.result.name}"`);
		expect(await inside()).toContain(b.result.attempt);
		await store.removePaper(paper.mark);
		expect(await inside()).not.toContain(paper.mark);
		expect(await inside()).not.toContain(b.result.attempt);
		expect(await inside()).toContain(c.result.attempt);
		await slipIn('results', 'feed', { broken: 'Named in a broken record' });
		await store.held();
		expect(await inside()).toContain('Named in a broken record');
		await store.removeAll();
		expect(await inside()).toBe('[[[],[]],[[],[]],[[],[]],[[],[]],[[],[]]]');
		store.close();
	});

	it('sets a damaged record aside, says so, and loses none of the rest', async () => {
		const store = await openPaperStore();
		await store.putPaper(slip, paper.mark);
		await store.putResults([taken(7), taken(8)]);
		await slipIn('results', 'dead', { version: 1, result: { name: 'Torn' }, whole: true, kept: 1 });
		await slipIn('papers', 'beef', 'not a paper at all');
		await slipIn('results', 'newer', { version: 2, more: 'than we know' });
		const held = await store.held();
		expect([held.papers.length, held.results.length]).toEqual([1, 2]);
		const asides = await store.asides();
		expect(asides.map(({ list, key, found }) => [list, key, found])).toEqual([
			['papers', 'beef', 'not a paper at all'],
			['results', 'dead', { version: 1, result: { name: 'Torn' }, whole: true, kept: 1 }],
		]);
		for (const { sentence } of asides) expect(sentence).toMatch(/isn’t as Prep Bay writes it/);
		// what a newer version wrote stays where that version will look for it
		expect(await inside()).toContain('than we know');
		expect((await store.held()).results).toHaveLength(2);
		store.close();
	});

	it('moves to another device in one file, and is merged there', async () => {
		const store = await openPaperStore(() => 5);
		await store.putPaper(slip, paper.mark);
		await store.putResults([taken(9), taken(10)]);
		await store.putName(taken(9).result.attempt, 'Nine');
		const held = await store.held();
		const text = storeFile(held);
		await store.removeAll();
		await store.putResults([taken(10), taken(11)]);
		const [read] = await readHandedIn(text, setPaper, 'all.json');
		expect(read).toEqual({ is: 'store', from: 'all.json', held, refused: [] });
		if (read?.is === 'store') expect(await store.putHeld(read.held)).toEqual({ fresh: 1, again: 1, differ: [] });
		const after = await store.held();
		expect([after.papers.length, after.results.length, after.names.length]).toEqual([1, 3, 1]);
		store.close();
	});

	it('one damaged record of a file does not take the others along', async () => {
		const file = JSON.parse(
			storeFile({
				papers: [],
				results: [1, 2, 3].map((n) => ({ version: 1 as const, ...taken(n), kept: 1 })),
				names: [],
				counts: [],
			}),
		);
		file.results[1].result.answers = { '<script>': 1 };
		file.papers = 'none';
		const [read] = await readHandedIn(JSON.stringify(file), setPaper, 'all.json');
		if (read?.is !== 'store') throw new Error('not read');
		expect(read.held.results).toHaveLength(2);
		expect(read.refused.map(({ from }) => from)).toEqual(['all.json, papers', 'all.json, result 2']);
	});
});

describe('where the device keeps nothing', () => {
	it('says so, and keeps in memory', async () => {
		vi.stubGlobal('indexedDB', {
			open: () => {
				throw new DOMException('no', 'SecurityError');
			},
		});
		const store = await openPaperStore();
		expect(store.keeps()).toBe(false);
		await store.putResults([taken(1)]);
		expect((await store.held()).results).toHaveLength(1);
		await store.removeResult(taken(1).result.attempt);
		expect((await store.held()).results).toHaveLength(0);
	});

	it('goes on in memory when storage is refused half-way, with what was there', async () => {
		const store = await openPaperStore();
		await store.putResults([taken(1)]);
		const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
			throw new DOMException('full', 'QuotaExceededError');
		});
		await store.putResults([taken(2)]);
		put.mockRestore();
		expect(store.keeps()).toBe(false);
		expect((await store.held()).results).toHaveLength(2);
		store.close();
	});

	it('goes on in memory where a newer version has the database', async () => {
		(await openDB(DATABASE.name, DATABASE.version + 1)).close();
		const store = await openPaperStore();
		expect(store.keeps()).toBe(false);
		await store.putPaper(slip, paper.mark);
		expect((await store.held()).papers).toHaveLength(1);
	});

	it('lets a newer version in another tab have the database, and goes on in memory', async () => {
		const store = await openPaperStore();
		await store.putResults([taken(1)]);
		(await openDB(DATABASE.name, DATABASE.version + 1)).close();
		expect(store.keeps()).toBe(false);
		await store.putResults([taken(2)]);
		expect((await store.held()).results.length).toBeGreaterThan(0);
		store.close();
	});
});

it('a result by link is kept as one by file would be', async () => {
	const store = await openPaperStore();
	const mine = taken(21);
	const [read] = await readHandedIn(await resultFragment(mine.result, paper), setPaper);
	if (read?.is !== 'result') throw new Error('not read');
	await store.putResults([read]);
	expect((await store.held()).results[0]).toMatchObject({ result: mine.result, whole: true });
	store.close();
});
