import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { DATABASE, LISTS, type List } from './kept.ts';

/** A record that could not be read, moved out of the way as it was. */
export interface RecordAside {
	readonly list: List;
	readonly key: string;
	readonly found: unknown;
	/** Which record it is, in words. */
	readonly from: string;
	/** An error's code, and its sentence. */
	readonly code: string;
	readonly sentence: string;
}

/** Where a trainer's records lie by key: a database, or memory. Every call may be refused by the device, and then throws. */
export interface Records {
	all(list: List): Promise<readonly (readonly [key: string, record: unknown])[]>;
	/** Puts all of them, or none where the device refuses. */
	put(list: List, records: readonly (readonly [key: string, record: unknown])[]): Promise<void>;
	remove(list: List, key: string): Promise<void>;
	setAside(aside: RecordAside): Promise<void>;
	asides(): Promise<readonly RecordAside[]>;
	/** Takes away for good what was set aside, and nothing that came under its key since. */
	dropAside(aside: RecordAside): Promise<void>;
	/** Everything; what was set aside as well, unless that is to stay. */
	clear(but?: 'asides'): Promise<void>;
	close(): void;
}

interface Tables extends DBSchema {
	papers: { key: string; value: unknown };
	results: { key: string; value: unknown };
	names: { key: string; value: unknown };
	counts: { key: string; value: unknown };
	aside: { key: string; value: RecordAside };
}

/**
 * The database of this device.
 * @param lost called when the browser closes it, or another tab needs a newer one: nothing more is kept then
 * @throws whatever the browser refuses with
 */
export async function openRecords(lost: () => void): Promise<Records> {
	const base: IDBPDatabase<Tables> = await openDB<Tables>(DATABASE.name, DATABASE.version, {
		upgrade(opened, from) {
			// one step a version, each from the last: what is there stays there
			if (from < 1)
				for (const table of ['papers', 'results', 'names', 'aside'] as const) opened.createObjectStore(table);
			if (from < 2) opened.createObjectStore('counts');
		},
		blocking() {
			base.close();
			lost();
		},
		terminated: lost,
	});
	return {
		async all(list) {
			const reading = base.transaction(list).store;
			const [keys, records] = await Promise.all([reading.getAllKeys(), reading.getAll()]);
			return keys.map((key, i) => [String(key), records[i]] as const);
		},
		async put(list, records) {
			const writing = base.transaction(list, 'readwrite');
			await Promise.all([...records.map(([key, record]) => writing.store.put(record, key)), writing.done]);
		},
		async remove(list, key) {
			const both = base.transaction([list, 'aside'], 'readwrite');
			await Promise.all([
				both.objectStore(list).delete(key),
				both.objectStore('aside').delete(asideKey(list, key)),
				both.done,
			]);
		},
		async setAside(aside) {
			const both = base.transaction([aside.list, 'aside'], 'readwrite');
			await Promise.all([
				both.objectStore('aside').put(aside, asideKey(aside.list, aside.key)),
				both.objectStore(aside.list).delete(aside.key),
				both.done,
			]);
		},
		asides: () => base.getAll('aside'),
		dropAside: ({ list, key }) => base.delete('aside', asideKey(list, key)),
		async clear(but) {
			const tables = but ? LISTS : ([...LISTS, 'aside'] as const);
			const all = base.transaction(tables, 'readwrite');
			await Promise.all([...tables.map((table) => all.objectStore(table).clear()), all.done]);
		},
		close: () => base.close(),
	};
}

const asideKey = (list: List, key: string): string => `${list} ${key}`;

/** The same in memory, for a device that keeps nothing. */
export function memoryRecords(): Records {
	const lists: Record<List, Map<string, unknown>> = {
		papers: new Map(),
		results: new Map(),
		names: new Map(),
		counts: new Map(),
	};
	const asides = new Map<string, RecordAside>();
	return {
		all: async (list) => [...lists[list]],
		async put(list, records) {
			for (const [key, record] of records) lists[list].set(key, record);
		},
		async remove(list, key) {
			lists[list].delete(key);
			asides.delete(asideKey(list, key));
		},
		async setAside(aside) {
			asides.set(asideKey(aside.list, aside.key), aside);
			lists[aside.list].delete(aside.key);
		},
		asides: async () => [...asides.values()],
		async dropAside({ list, key }) {
			asides.delete(asideKey(list, key));
		},
		async clear(but) {
			for (const list of LISTS) lists[list].clear();
			if (!but) asides.clear();
		},
		close() {},
	};
}
