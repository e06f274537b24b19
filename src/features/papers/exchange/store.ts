import { isInputError } from '../../../../shared/error/index.ts';
import {
	LISTS,
	type List,
	memoryRecords,
	openRecords,
	type RecordAside,
	type Records,
} from '../../../storage/index.ts';
import { inKeyOrder, refusedFor } from './bounds.ts';
import { readKeptCount, readKeptName, readKeptPaper, readKeptResult, tidyName } from './schema.ts';
import type { KeptCount, KeptName, KeptPaper, KeptResult, PaperSlip, TakenResult, TrainerRecords } from './types.ts';

/** What a trainer keeps, on the device or, where that is refused, in memory until the page is left. */
export interface PaperStore {
	/** False from when the device refused: what is put now lasts only as long as the page. */
	keeps(): boolean;
	/** All of it, read anew: another tab may have written. What cannot be read is set aside first, and told by `asides`. */
	held(): Promise<TrainerRecords>;
	/** The papers alone, as `held` reads them: a class's results take many times as long. */
	papers(): Promise<readonly KeptPaper[]>;
	/** Records that could not be read, as they were found. */
	asides(): Promise<readonly RecordAside[]>;
	/** @param mark the paper's mark, under which it is kept */
	putPaper(slip: PaperSlip, mark: string): Promise<void>;
	/** Takes results in. One that is there already under its attempt stays as it is. */
	putResults(taken: readonly TakenResult[]): Promise<TakenIn>;
	/** The trainer's own name for an attempt; empty takes it away. */
	putName(attempt: string, name: string): Promise<void>;
	/** Says whether a result counts, whatever would be so by itself. */
	putCount(attempt: string, counts: boolean): Promise<void>;
	/** Adds what a file held; what is there already stays. @returns what became of its results */
	putHeld(held: TrainerRecords): Promise<TakenIn>;
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
	readonly differ: readonly TakenResult[];
}

/**
 * Opens what is kept. Never refused: with no storage it keeps in memory, and `keeps` says so.
 * @param now ms since 1970
 */
export async function openPaperStore(now: () => number = Date.now): Promise<PaperStore> {
	const { on, keeps, close } = await openShelf();
	const papers = (): Promise<KeptPaper[]> => readable(on, 'papers', readKeptPaper);
	const results = (): Promise<KeptResult[]> => readable(on, 'results', readKeptResult);
	const all = async (): Promise<TrainerRecords> => ({
		papers: await papers(),
		results: await results(),
		names: await readable(on, 'names', readKeptName),
		counts: await readable(on, 'counts', readKeptCount),
	});
	const put = <T extends KeptPaper | KeptResult | KeptName | KeptCount>(
		list: List,
		records: readonly T[],
		keyOf: (record: T) => string,
	): Promise<void> => {
		const keyed = records.map((record) => [keyOf(record), record] as const);
		return on((to) => to.put(list, keyed));
	};
	const takeIn = async (come: readonly KeptResult[]): Promise<TakenIn> => {
		const there = new Map((await results()).map(({ result }) => [result.attempt, result]));
		const fresh: KeptResult[] = [];
		const differ: TakenResult[] = [];
		for (const kept of come) {
			const { result, whole } = kept;
			const own = there.get(result.attempt);
			if (!own) fresh.push(kept);
			else if (inKeyOrder(own) !== inKeyOrder(result)) differ.push({ result, whole });
			if (!own) there.set(result.attempt, result);
		}
		await put('results', fresh, attemptOf);
		return { fresh: fresh.length, again: come.length - fresh.length - differ.length, differ };
	};
	const remove = (list: List, key: string): Promise<void> => on((from) => from.remove(list, key));

	const store: PaperStore = {
		keeps,
		held: all,
		papers,
		asides: () => on((from) => from.asides()),
		putPaper: ({ recipe, seed }, mark) =>
			put<KeptPaper>('papers', [{ version: 1, recipe, seed, mark, kept: now() }], markOf),
		putResults: (taken) =>
			takeIn(taken.map(({ result, whole }) => ({ version: 1 as const, result, whole, kept: now() }))),
		async putName(attempt, typed) {
			const name = tidyName(typed);
			await (name === ''
				? remove('names', attempt)
				: put<KeptName>('names', [{ version: 1, attempt, name }], ownAttempt));
		},
		putCount: (attempt, counts) => put<KeptCount>('counts', [{ version: 1, attempt, counts }], ownAttempt),
		async putHeld(held) {
			const there = await all();
			const missing = <T>(own: readonly T[], come: readonly T[], keyOf: (record: T) => string): T[] => {
				const keys = new Set(own.map(keyOf));
				return come.filter((record) => !keys.has(keyOf(record)));
			};
			await put('papers', missing(there.papers, held.papers, markOf), markOf);
			await put('names', missing(there.names, held.names, ownAttempt), ownAttempt);
			await put('counts', missing(there.counts, held.counts, ownAttempt), ownAttempt);
			return takeIn(held.results);
		},
		async removePaper(mark) {
			for (const { result } of await results()) if (result.paper === mark) await store.removeResult(result.attempt);
			await remove('papers', mark);
		},
		async removeResult(attempt) {
			await remove('names', attempt);
			await remove('counts', attempt);
			await remove('results', attempt);
		},
		removeAll: () => on((from) => from.clear()),
		close,
	};
	return store;
}

/** The device's own shelf, or one in memory from when the device refuses. */
interface OpenShelf {
	/** Does something on the shelf; where the device refuses, in memory from here on, with all that could still be read. */
	on<T>(act: (shelf: Records) => Promise<T>): Promise<T>;
	keeps(): boolean;
	close(): void;
}

async function openShelf(): Promise<OpenShelf> {
	const memory = memoryRecords();
	let shelf: Records = memory;
	try {
		shelf = await openRecords(() => {
			shelf = memory;
		});
	} catch {
		// kept in memory then
	}
	const on = async <T>(act: (shelf: Records) => Promise<T>): Promise<T> => {
		const tried = shelf;
		if (tried !== memory) {
			try {
				return await act(tried);
			} catch (error) {
				// so a browser refuses: full, closed, taken away
				if (!(error instanceof DOMException)) throw error;
				if (shelf === tried) await moveTo(memory, tried);
				shelf = memory;
				tried.close();
			}
		}
		return act(memory);
	};
	return { on, keeps: () => shelf !== memory, close: () => shelf.close() };
}

const markOf = ({ mark }: KeptPaper): string => mark;
const attemptOf = ({ result }: KeptResult): string => result.attempt;
const ownAttempt = ({ attempt }: KeptName | KeptCount): string => attempt;

/** The records of a list that can be read; what cannot is set aside, so that it neither stops the rest nor is lost. */
async function readable<T>(on: OpenShelf['on'], list: List, read: (record: unknown) => T): Promise<T[]> {
	const records: T[] = [];
	for (const [key, found] of await on((from) => from.all(list))) {
		try {
			records.push(read(found));
		} catch (error) {
			if (!isInputError(error)) throw error;
			// a newer version wrote it, and will want it where it is
			if (error.code === 'handed.version') continue;
			const aside: RecordAside = { list, key, found, ...refusedFor(`${list} ${key}`, error) };
			await on((from) => from.setAside(aside));
		}
	}
	return records;
}

async function moveTo(memory: Records, from: Records): Promise<void> {
	for (const list of LISTS) {
		try {
			await memory.put(list, await from.all(list));
		} catch {
			// what may not be read any more stays on the device
		}
	}
}
