import type { StockEntry } from '../../../shared/stock/index.ts';
import { KEPT } from '../../storage/index.ts';

/** The crew's own fixtures, by their ids. */
export type StockList = ReadonlyMap<string, StockEntry>;

export const NO_STOCK: StockList = new Map();

/** Most that are kept: more than a crew has kinds. */
export const MOST_STOCK = 60;

/** The list as text, as it is kept and as it is saved to a file. */
export const stockText = (stock: StockList): string =>
	JSON.stringify({ version: KEPT.stock.version, kept: Object.fromEntries(stock) });

/** Two lists as one: of an entry that is in both, the one that was changed last. */
export function merged(one: StockList, other: StockList): StockList {
	const all = new Map(one);
	for (const [id, entry] of other) {
		const own = all.get(id);
		if (!own || own.changed < entry.changed) all.set(id, entry);
	}
	return all;
}

/** What is in an entry, its time left out. */
export const contentOf = ({ changed: _, ...rest }: StockEntry): string => JSON.stringify(Object.entries(rest).sort());

/** By when they were changed, the latest first. */
export const inOrder = (stock: StockList): StockEntry[] => [...stock.values()].sort((a, b) => b.changed - a.changed);

/** An id that nothing else has. */
export const newId = (): string =>
	`own-${Array.from(crypto.getRandomValues(new Uint8Array(5)), (byte) => byte.toString(16).padStart(2, '0')).join('')}`;

/**
 * A list with what came from a file or a link: nothing of one's own is written over. What is there already is passed over, and what
 * has the id of another gets one of its own.
 * @returns the list, and how many were added
 */
export function added(
	own: StockList,
	came: StockList,
	makeId: () => string = newId,
): { stock: StockList; count: number } {
	const stock = new Map(own);
	let count = 0;
	for (const entry of came.values()) {
		const same = stock.get(entry.id);
		if ((same && contentOf(same) === contentOf(entry)) || stock.size >= MOST_STOCK) continue;
		const id = same ? makeId() : entry.id;
		stock.set(id, { ...entry, id });
		count++;
	}
	return { stock, count };
}
