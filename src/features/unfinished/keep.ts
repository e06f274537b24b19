import { murmur3Text } from '../../../shared/random/index.ts';
import { LINK_BOUNDS, readJson } from '../../pack/index.ts';

type Store = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** Where tasks half done stand, each under its own name. */
const UNFINISHED = 'prep-bay.unfinished.';
const VERSION = 1;
/** Tasks kept at most on a device: the oldest goes. */
const MOST = 12;

/** Which task: the name its results are kept under, and its seed. */
export interface Under {
	readonly kind: string;
	readonly seed: number;
}

/** A task half done: what was done on its rig, and what help was used. Neither has been read yet. */
export interface Unfinished {
	readonly log: unknown;
	readonly attempt: unknown;
}

/**
 * This tab's own store, and the device's: the first survives loading the page again and being put to sleep, and no other tab
 * writes into it; the second survives a crash and a closed tab.
 */
export interface Stores {
	readonly tab: Store;
	readonly device: Store;
}

const keyOf = ({ kind, seed }: Under): string => `${UNFINISHED}${kind}.${seed}`;

/** Eight hex digits over the rig that a task begins with: another version may make another rig of the same seed. */
const markOf = (sheet: unknown): string => murmur3Text(JSON.stringify(sheet), 0x756e6669).toString(16).padStart(8, '0');

/** Keeps a task half done. Where a store refuses, the task goes on unkept. @param now ms since 1970 */
export function keepUnfinished(
	{ tab, device }: Stores,
	under: Under,
	sheet: unknown,
	{ log, attempt }: Unfinished,
	now: number,
): void {
	const text = JSON.stringify({ version: VERSION, at: now, sheet: markOf(sheet), log, attempt });
	for (const store of [tab, device]) {
		try {
			store().setItem(keyOf(under), text);
		} catch {
			// private browsing, or full
		}
	}
	dropOldest(device);
}

/** The task as it was left: in this tab, or else on this device; null where it was not, or its rig is another by now. */
export function unfinished({ tab, device }: Stores, under: Under, sheet: unknown): Unfinished | null {
	for (const store of [tab, device]) {
		const found = entryIn(store, keyOf(under));
		if (found?.sheet === markOf(sheet)) return { log: found.log, attempt: found.attempt };
	}
	return null;
}

/** Forgets a task: it is done, or begun anew. */
export function dropUnfinished({ tab, device }: Stores, under: Under): void {
	for (const store of [tab, device]) drop(store, keyOf(under));
}

function drop(store: Store, key: string): void {
	try {
		store().removeItem(key);
	} catch {
		// nothing to forget where nothing may be read
	}
}

function entryIn(store: Store, key: string): { at: number; sheet: unknown; log: unknown; attempt: unknown } | null {
	let text: string | null;
	try {
		text = store().getItem(key);
	} catch {
		return null;
	}
	const found = text === null ? 'damaged' : readJson(text, LINK_BOUNDS);
	if (typeof found === 'string') return null;
	const { version, at, sheet, log, attempt } = found.value as Record<string, unknown>;
	return version === VERSION ? { at: typeof at === 'number' ? at : 0, sheet, log, attempt } : null;
}

function dropOldest(store: Store): void {
	let keys: string[];
	try {
		const held = store();
		keys = Array.from({ length: held.length }, (_, i) => held.key(i) ?? '').filter((key) => key.startsWith(UNFINISHED));
	} catch {
		return;
	}
	if (keys.length <= MOST) return;
	const old = keys.map((key) => ({ key, at: entryIn(store, key)?.at ?? 0 })).sort((a, b) => b.at - a.at);
	for (const { key } of old.slice(MOST)) drop(store, key);
}
