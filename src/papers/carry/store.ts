import { isInputError } from '../../../shared/error/index.ts';
import { inKeyOrder } from './check.ts';
import { refusedFor } from './refuse.ts';
import { readKeptName, readKeptPaper, readKeptResult, tidyName } from './schema.ts';
import { type Aside, LISTS, type List, memoryShelf, openShelf, type Shelf } from './shelf.ts';
import type { Held, KeptName, KeptPaper, KeptResult, PaperSlip, Taken } from './types.ts';

/** What a trainer keeps, on the device or, where that is refused, in memory until the page is left. */
export interface PaperStore {
	/** False from when the device refused: what is put now lasts only as long as the page. */
	keeps(): boolean;
	/** All of it, read anew: another tab may have written. What cannot be read is set aside first, and told by `asides`. */
	held(): Promise<Held>;
	/** Records that could not be read, as they were found. */
	asides(): Promise<readonly Aside[]>;
	/** @param mark the paper's mark, under which it is kept */
	putPaper(slip: PaperSlip, mark: string): Promise<void>;
	/** Takes results in. One that is there already under its attempt stays as it is. */
	putResults(taken: readonly Taken[]): Promise<TakenIn>;
	/** The trainer's own name for an attempt; empty takes it away. */
	putName(attempt: string, name: string): Promise<void>;
	/** Adds what a file held; what is there already stays. */
	putHeld(held: Held): Promise<void>;
	/** Takes a paper away for good, its results and their names with it. */
	removePaper(mark: string): Promise<void>;
	/** Takes a result and its name away for good. */
	removeResult(attempt: string): Promise<void>;
	/** Takes everything away for good, what was set aside as well. */
	removeAll(): Promise<void>;
	close(): void;
}

/** What became of results that were taken in. */
export interface TakenIn {
	readonly fresh: number;
	/** There already, just as they came. */
	readonly again: number;
	/** Of an attempt that is there, and not as it came before: the earlier one was kept. */
	readonly differ: readonly Taken[];
}

/**
 * Opens what is kept. Never refused: with no storage it keeps in memory, and `keeps` says so.
 * @param now ms since 1970
 */
export async function openPaperStore(now: () => number = Date.now): Promise<PaperStore> {
	const memory = memoryShelf();
	let shelf: Shelf = memory;
	try {
		shelf = await openShelf(() => {
			shelf = memory;
		});
	} catch {
		// kept in memory then
	}
	/** Does something on the shelf; where the device refuses, in memory from here on, with all that could still be read. */
	const on = async <T>(act: (shelf: Shelf) => Promise<T>): Promise<T> => {
		const tried = shelf;
		if (tried !== memory) {
			try {
				return await act(tried);
			} catch {
				if (shelf === tried) await moveTo(memory, tried);
				shelf = memory;
				tried.close();
			}
		}
		return act(memory);
	};
	const all = async (): Promise<Held> => ({
		papers: await readable(on, 'papers', readKeptPaper),
		results: await readable(on, 'results', readKeptResult),
		names: await readable(on, 'names', readKeptName),
	});
	const put = (list: List, key: string, record: KeptPaper | KeptResult | KeptName): Promise<void> =>
		on((to) => to.put(list, key, record));
	const remove = (list: List, key: string): Promise<void> => on((from) => from.remove(list, key));

	const store: PaperStore = {
		keeps: () => shelf !== memory,
		held: all,
		asides: () => on((from) => from.asides()),
		putPaper: ({ recipe, seed }, mark) => put('papers', mark, { version: 1, recipe, seed, mark, kept: now() }),
		async putResults(taken) {
			const there = new Map((await all()).results.map(({ result }) => [result.attempt, result]));
			let fresh = 0;
			const differ: Taken[] = [];
			for (const { result, whole } of taken) {
				const own = there.get(result.attempt);
				if (own && inKeyOrder(own) !== inKeyOrder(result)) differ.push({ result, whole });
				if (own) continue;
				there.set(result.attempt, result);
				await put('results', result.attempt, { version: 1, result, whole, kept: now() });
				fresh++;
			}
			return { fresh, again: taken.length - fresh - differ.length, differ };
		},
		async putName(attempt, typed) {
			const name = tidyName(typed);
			await (name === '' ? remove('names', attempt) : put('names', attempt, { version: 1, attempt, name }));
		},
		async putHeld(held) {
			const there = await all();
			const missing = <T>(own: readonly T[], come: readonly T[], key: (record: T) => string): T[] => {
				const keys = new Set(own.map(key));
				return come.filter((record) => !keys.has(key(record)));
			};
			for (const paper of missing(there.papers, held.papers, ({ mark }) => mark))
				await put('papers', paper.mark, paper);
			for (const kept of missing(there.results, held.results, ({ result }) => result.attempt))
				await put('results', kept.result.attempt, kept);
			for (const name of missing(there.names, held.names, ({ attempt }) => attempt))
				await put('names', name.attempt, name);
		},
		async removePaper(mark) {
			for (const { result } of (await all()).results)
				if (result.paper === mark) await store.removeResult(result.attempt);
			await remove('papers', mark);
		},
		async removeResult(attempt) {
			await remove('names', attempt);
			await remove('results', attempt);
		},
		removeAll: () => on((from) => from.clear()),
		close: () => shelf.close(),
	};
	return store;
}

/** The records of a list that can be read; what cannot is set aside, so that it neither stops the rest nor is lost. */
async function readable<T>(
	on: <R>(act: (shelf: Shelf) => Promise<R>) => Promise<R>,
	list: List,
	read: (record: unknown) => T,
): Promise<T[]> {
	const records: T[] = [];
	for (const [key, found] of await on((from) => from.all(list))) {
		try {
			records.push(read(found));
		} catch (error) {
			if (!isInputError(error)) throw error;
			// a newer version wrote it, and will want it where it is
			if (error.code === 'handed.version') continue;
			const aside: Aside = { list, key, found, ...refusedFor(`${list} ${key}`, error) };
			await on((from) => from.setAside(aside));
		}
	}
	return records;
}

async function moveTo(memory: Shelf, from: Shelf): Promise<void> {
	for (const list of LISTS) {
		try {
			for (const [key, record] of await from.all(list)) await memory.put(list, key, record);
		} catch {
			// what may not be read any more stays on the device
		}
	}
}
