import { isInputError } from '../../shared/error/index.ts';
import type { Kept } from './kept.ts';

type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Where a bench is kept on the device; damaged ones go to the second, a bench that a link took the place of to the third. */
export const KEEP_KEY = 'prep-bay.bench';
export const ASIDE_KEY = 'prep-bay.bench.damaged';
export const BEFORE_KEY = 'prep-bay.bench.before-link';
const VERSION = 1;

export interface Found {
	readonly kept: Kept | null;
	/** Something was there and could not be read; it has been set aside under `ASIDE_KEY`. */
	readonly damaged: boolean;
}

/** Keeps a bench. Returns false where the store refuses (private browsing, full). */
export function keep(store: () => Store, { sheet, log }: Kept, key = KEEP_KEY): boolean {
	try {
		store().setItem(key, JSON.stringify({ version: VERSION, kept: [sheet, log] }));
		return true;
	} catch {
		return false;
	}
}

/** Whether anything is kept; it may still be damaged. */
export function isKept(store: () => Store): boolean {
	try {
		return store().getItem(KEEP_KEY) !== null;
	} catch {
		return false;
	}
}

/** The bench that is kept, if any. What cannot be read is set aside, so that it neither stops the page nor is lost. */
export async function findKept(store: () => Store, key = KEEP_KEY): Promise<Found> {
	let text: string | null;
	try {
		text = store().getItem(key);
	} catch {
		return { kept: null, damaged: false };
	}
	if (text === null) return { kept: null, damaged: false };
	const { readKept } = await import('./reading.ts');
	try {
		const { version, kept } = JSON.parse(text) as { version?: unknown; kept?: unknown };
		if (version === VERSION) return { kept: readKept(kept), damaged: false };
	} catch (error) {
		if (!isInputError(error) && !(error instanceof SyntaxError) && !(error instanceof TypeError)) throw error;
	}
	setAside(store, key, text);
	return { kept: null, damaged: true };
}

/** Moves what is kept out of the way: it could be read, and still not be played. */
export function setAside(store: () => Store, key = KEEP_KEY, text?: string): void {
	try {
		const found = text ?? store().getItem(key);
		if (found === null) return;
		store().setItem(ASIDE_KEY, found);
		store().removeItem(key);
	} catch {
		// a store that refuses keeps it where it is, and it is met again next time
	}
}

/** Forgets what is kept under a key. */
export function forget(store: () => Store, key: string): void {
	try {
		store().removeItem(key);
	} catch {
		// nothing to forget where nothing may be read
	}
}
