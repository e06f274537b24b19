import type { Learnt } from '../../../sim/finder/index.ts';
import { COUNTS_KEY, COUNTS_VERSION, KEPT_KEY, KEPT_VERSION } from './keys.ts';
import type { Kept } from './walk.ts';

/** The device's store; getting at it may be refused. */
export type Storage = () => Pick<globalThis.Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** The text under a key; null where there is none, or none may be read. */
export function found(storage: Storage, key: string): string | null {
	try {
		return storage().getItem(key);
	} catch {
		return null;
	}
}

/** Keeps the walk and what the gig allows. Returns false where the store refuses (private browsing, full). */
export function keepWalk(storage: Storage, { allows, walk }: Kept): boolean {
	return put(storage, KEPT_KEY, { version: KEPT_VERSION, allows, walk });
}

/** Keeps the count of verdicts, apart from any walk. */
export function keepCounts(storage: Storage, counts: Learnt): boolean {
	return put(storage, COUNTS_KEY, { version: COUNTS_VERSION, counts });
}

/** Moves what could not be read out of the way, so that it neither stops the page nor is lost. */
export function setAside(storage: Storage, key: string): void {
	try {
		const text = storage().getItem(key);
		if (text === null) return;
		storage().setItem(`${key}.damaged`, text);
		storage().removeItem(key);
	} catch {
		// a store that refuses keeps it where it is, and it is met again next time
	}
}

function put(storage: Storage, key: string, what: unknown): boolean {
	try {
		storage().setItem(key, JSON.stringify(what));
		return true;
	} catch {
		return false;
	}
}
