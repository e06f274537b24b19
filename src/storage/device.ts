/** A store of the browser's, asked for late: a browser may refuse it by throwing. */
export type BrowserStore = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** This device's own store: every tab of the site shares it, and it outlives a crash. */
export const DEVICE: BrowserStore = () => localStorage;
/** This tab's own store: it outlives a reload, and no other tab writes into it. */
export const TAB: BrowserStore = () => sessionStorage;

/** What became of keeping something: `full` where there is no room, `refused` where the browser keeps nothing (private browsing). */
export type KeepOutcome = 'kept' | 'full' | 'refused';

/** The text under a key; null where there is none, or none may be read. */
export function textAt(store: BrowserStore, key: string): string | null {
	try {
		return store().getItem(key);
	} catch {
		return null;
	}
}

/** Whether the browser lets a store be read at all. */
export function isReadable(store: BrowserStore): boolean {
	try {
		store().getItem('');
		return true;
	} catch {
		return false;
	}
}

export function putText(store: BrowserStore, key: string, text: string): KeepOutcome {
	try {
		store().setItem(key, text);
		return 'kept';
	} catch (error) {
		return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'refused';
	}
}

/** @returns false where the store refuses */
export function dropText(store: BrowserStore, key: string): boolean {
	try {
		store().removeItem(key);
		return true;
	} catch {
		return false;
	}
}

/** Every key in a store; none where it may not be read. */
export function keysIn(store: BrowserStore): string[] {
	try {
		const held = store();
		return Array.from({ length: held.length }, (_, i) => held.key(i) ?? '');
	} catch {
		return [];
	}
}

/** Told on this page when something was set aside or deleted here; of other tabs the browser tells. */
const CHANGED = 'prep-bay-kept';

/** Has all that follows on this page look again. */
export const tellKept = (): boolean => dispatchEvent(new Event(CHANGED));

/**
 * Follows what is kept on the device, over every tab.
 * @returns the way to stop
 */
export function followKept(look: () => void): () => void {
	addEventListener('storage', look);
	addEventListener(CHANGED, look);
	return () => {
		removeEventListener('storage', look);
		removeEventListener(CHANGED, look);
	};
}

/** Text as part of a file's name that any file system takes: small letters, digits and dashes, at most 60; empty where it has none. */
export const plainName = (text: string): string =>
	text
		.normalize('NFKD')
		.replace(/\p{M}/gu, '')
		.replace(/[^\p{L}\p{N}]+/gu, '-')
		.replace(/^-|-$/g, '')
		.toLowerCase()
		.slice(0, 60);

/** Hands text or bytes to the person as a file to save. */
export function saveText(name: string, content: string | Uint8Array<ArrayBuffer>, type = 'application/json'): void {
	const address = URL.createObjectURL(new Blob([content], { type }));
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// the browser has taken it by then, or never will
	setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
