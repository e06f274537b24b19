import { isInputError } from '../../../shared/error/index.ts';
import {
	dropText,
	KEPT,
	makeRoom,
	moveAside,
	putText,
	readRecord,
	type Store,
	textAt,
	type Why,
} from '../../storage/index.ts';
import { asideIdOf, asideNameOf, dropOldest } from './aside.ts';
import type { Kept } from './kept.ts';
import { fitForKeeping } from './waits.ts';

const { bench } = KEPT;

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

/** A bench as text, as it is kept and as it is saved to a file. */
export function benchText({ sheet, log }: Kept, { id }: Pick<Place, 'id'>, isTheirs = false): string {
	const theirs = isTheirs ? { theirs: true } : {};
	return JSON.stringify({ version: bench.version, kept: [sheet, fitForKeeping(log)], id, ...theirs });
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
 * @returns `kept`; `aside` where another was set aside for it; `full` where there is no room for it, or for both; `refused` where
 * the browser keeps nothing (private browsing)
 */
export function keep(
	store: Store,
	{ sheet, log }: Kept,
	place: Place,
	{ isTheirs = false, why = 'tab', now }: KeepOptions,
): 'kept' | 'aside' | 'full' | 'refused' {
	const there = textAt(store, bench.key);
	const foreign = there !== null && there !== place.from;
	if (foreign) {
		const name = asideNameOf(there);
		if (!makeRoom(store, bench.key, there, why, now, name)) return 'full';
		dropOldest(store, name);
	}
	const text = benchText({ sheet, log }, place, isTheirs);
	const came = putText(store, bench.key, text);
	if (came !== 'kept') return came;
	place.from = text;
	place.wrote = true;
	// an earlier state of this very bench that another tab set aside
	dropText(store, asideIdOf(place.id));
	return foreign ? 'aside' : 'kept';
}

/** Whether the place still holds what this bench wrote there. */
export const holdsPlace = (store: Store, place: Place): boolean => place.wrote && textKept(store) === place.from;

/** Whether anything is kept; it may still be damaged. */
export const isKept = (store: Store): boolean => textKept(store) !== null;

/** The text that is kept; null where there is none, or none may be read. */
export const textKept = (store: Store): string | null => textAt(store, bench.key);

/** What a kept text was found to be. */
export type Found =
	| { readonly is: 'bench'; readonly kept: Kept }
	/** Made by a newer version of the site: it is sound, and not for this one to touch. */
	| { readonly is: 'newer' }
	| { readonly is: 'damaged' };

/** Reads a bench as it was kept. */
export async function readText(text: string): Promise<Found> {
	const found = readRecord(text, bench);
	if (found.is !== 'record') return found;
	const { readKept } = await import('./reading.ts');
	try {
		return { is: 'bench', kept: await readKept(found.record['kept']) };
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { is: 'damaged' };
	}
}

/** Moves what is kept out of its place: it cannot be read, or not be played. Where the store refuses it stays, and is met again. */
export function setKeptAside(store: Store, text: string, now: number): void {
	moveAside(store, bench.key, text, 'damaged', now, asideNameOf(text));
}
