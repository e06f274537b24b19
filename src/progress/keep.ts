import { isInputError } from '../../shared/error/index.ts';
import { NO_PROGRESS, type Progress } from './result.ts';
import { progressText } from './version.ts';

type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Where progress is kept on the device; what is damaged goes to the second, a list to which more may be added. */
export const PROGRESS_KEY = 'prep-bay.progress';
export const PROGRESS_ASIDE_KEY = 'prep-bay.progress.damaged';

/** What was found on the device. */
export interface Opened {
	readonly progress: Progress;
	/** Entries set aside just now; `whole` where nothing of it could be read. */
	readonly damaged: number | 'whole' | null;
	/** False where the device refuses to keep anything. */
	readonly keeps: boolean;
}

/**
 * Progress kept on the device. What cannot be read is set aside before anything is written over it, and the rest is there.
 * @param store asked for late: a browser may refuse it by throwing
 */
export async function openProgress(store: () => Store): Promise<Opened> {
	let text: string | null;
	try {
		text = store().getItem(PROGRESS_KEY);
	} catch {
		return { progress: NO_PROGRESS, damaged: null, keeps: false };
	}
	if (text === null) return { progress: NO_PROGRESS, damaged: null, keeps: true };
	const { readProgress } = await import('./reading.ts');
	try {
		const { progress, damaged } = readProgress(text);
		const count = Object.keys(damaged).length;
		if (count === 0) return { progress, damaged: null, keeps: true };
		const keeps = setAside(store, damaged) && saveProgress(store, progress);
		return { progress, damaged: count, keeps };
	} catch (error) {
		if (!isInputError(error)) throw error;
		const keeps = setAside(store, text) && saveProgress(store, NO_PROGRESS);
		return { progress: NO_PROGRESS, damaged: 'whole', keeps };
	}
}

/**
 * Changes what is kept: read again first, since another tab may have written meanwhile.
 * @returns what is there then
 */
export async function changeProgress(store: () => Store, change: (progress: Progress) => Progress): Promise<Opened> {
	const opened = await openProgress(store);
	const progress = change(opened.progress);
	return { ...opened, progress, keeps: opened.keeps && saveProgress(store, progress) };
}

/** What was set aside so far, as text; null where there is none. */
export function asideText(store: () => Store): string | null {
	try {
		return store().getItem(PROGRESS_ASIDE_KEY);
	} catch {
		return null;
	}
}

/** Returns false where the store refuses (private browsing, full). */
function saveProgress(store: () => Store, progress: Progress): boolean {
	try {
		store().setItem(PROGRESS_KEY, progressText(progress));
		return true;
	} catch {
		return false;
	}
}

/** Adds to what was set aside before. Returns false where the store refuses. */
function setAside(store: () => Store, found: unknown): boolean {
	try {
		const before = store().getItem(PROGRESS_ASIDE_KEY);
		store().setItem(PROGRESS_ASIDE_KEY, JSON.stringify([...listed(before), found]));
		return true;
	} catch {
		return false;
	}
}

function listed(text: string | null): unknown[] {
	if (text === null) return [];
	try {
		const list: unknown = JSON.parse(text);
		if (Array.isArray(list)) return list;
	} catch {
		// whatever it is, it stays
	}
	return [text];
}
