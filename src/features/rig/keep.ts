import { isInputError } from '../../../shared/error/index.ts';
import { readJson } from '../../pack/index.ts';
import { dropAside, putAside, type Why } from './aside.ts';
import type { Store } from './device.ts';
import type { Kept } from './kept.ts';
import { fitForKeeping } from './waits.ts';

/** Where the bench of the tab that wrote last is kept on the device. */
export const KEEP_KEY = 'prep-bay.bench';
const VERSION = 1;

/** A bench's own are read up to this: as much as a browser keeps for a whole site. */
const OWN_BOUNDS = { characters: 8_000_000, deep: 32, things: 1_000_000 } as const;

/**
 * One opening's hold on the one place where a bench is kept. Another tab has one of its own: neither writes over what it has not
 * seen.
 */
export interface Place {
	readonly id: string;
	/** The text in the place that this bench goes on from; null where it goes on from none. */
	from: string | null;
	/** Whether this bench has been written there. */
	wrote: boolean;
}

/** @param from the text that was found in the place, where the bench is a going on of that one */
export function takePlace(from: string | null = null): Place {
	const bytes = crypto.getRandomValues(new Uint8Array(8));
	return { id: Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join(''), from, wrote: false };
}

export interface KeepOptions {
	/** Somebody else's, from a link, and nothing done to it yet. */
	readonly isTheirs?: boolean;
	/** Why another one that stands there has to make room. */
	readonly why?: Why;
	/** ms since 1970. */
	readonly now: number;
}

/**
 * Keeps a bench. One that stands there and is not what this bench goes on from (another tab's, one from before a link, one that a
 * newer version made) is set aside first; where there is no room for both it stays, and this one is not kept.
 * @returns `kept`; `aside` where another was set aside for it; `refused` where the store refuses (private browsing, full)
 */
export function keep(
	store: Store,
	{ sheet, log }: Kept,
	place: Place,
	{ isTheirs = false, why = 'tab', now }: KeepOptions,
): 'kept' | 'aside' | 'refused' {
	try {
		const there = store().getItem(KEEP_KEY);
		const foreign = there !== null && there !== place.from;
		if (foreign && !moveAside(store, there, why, now)) return 'refused';
		const theirs = isTheirs ? { theirs: true } : {};
		const text = JSON.stringify({ version: VERSION, kept: [sheet, fitForKeeping(log)], id: place.id, ...theirs });
		store().setItem(KEEP_KEY, text);
		place.from = text;
		place.wrote = true;
		// an earlier state of this very bench that another tab set aside
		dropAside(store, place.id);
		return foreign ? 'aside' : 'kept';
	} catch {
		return 'refused';
	}
}

/** Sets a text aside; where it does not fit twice, out of its place first, and back where it fits nowhere else. */
function moveAside(store: Store, text: string, why: Why, now: number): boolean {
	if (putAside(store, text, why, now) !== null) return true;
	store().removeItem(KEEP_KEY);
	if (putAside(store, text, why, now) !== null) return true;
	store().setItem(KEEP_KEY, text);
	return false;
}

/** Whether the place still holds what this bench wrote there. */
export function holdsPlace(store: Store, place: Place): boolean {
	return place.wrote && textKept(store) === place.from;
}

/** Whether anything is kept; it may still be damaged. */
export const isKept = (store: Store): boolean => textKept(store) !== null;

/** The text that is kept; null where there is none, or none may be read. */
export function textKept(store: Store): string | null {
	try {
		return store().getItem(KEEP_KEY);
	} catch {
		return null;
	}
}

/** What a kept text was found to be. */
export type Found =
	| { readonly is: 'bench'; readonly kept: Kept }
	/** Made by a newer version of the site: it is sound, and not for this one to touch. */
	| { readonly is: 'newer' }
	| { readonly is: 'damaged' };

/** Reads a bench as it was kept. */
export async function readText(text: string): Promise<Found> {
	const found = readJson(text, OWN_BOUNDS);
	const { version, kept } = (typeof found === 'string' ? {} : found.value) as { version?: unknown; kept?: unknown };
	if (typeof version === 'number' && version > VERSION) return { is: 'newer' };
	if (version !== VERSION) return { is: 'damaged' };
	const { readKept } = await import('./reading.ts');
	try {
		return { is: 'bench', kept: await readKept(kept) };
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { is: 'damaged' };
	}
}

/** Moves what is kept out of its place: it cannot be read, or not be played. Where the store refuses it stays, and is met again. */
export function setKeptAside(store: Store, text: string, now: number): void {
	try {
		if (putAside(store, text, 'damaged', now) !== null && store().getItem(KEEP_KEY) === text)
			store().removeItem(KEEP_KEY);
	} catch {
		// it stays where it is
	}
}
