import { isInputError } from '../../../shared/error/index.ts';
import {
	asideAt,
	asideKey,
	asideKeys,
	asidesIn,
	type BrowserStore,
	dropText,
	freshId,
	isNewer,
	isRecord,
	KEPT,
	makeRoom,
	moveAside,
	nameFor,
	putText,
	readJson,
	readRecord,
	type SetAside,
	setAside,
	textAt,
	type Why,
} from '../../storage/index.ts';
import { type BenchRecord, fitForKeeping } from './kept.ts';

const { bench } = KEPT;

/**
 * One opening's hold on the one place where a bench is kept. Another tab has one of its own: neither writes over what it has not
 * seen.
 */
export interface BenchHold {
	readonly id: string;
	/** The text in the place that this bench goes on from; null where it goes on from none. */
	from: string | null;
	/** Whether this bench has been written there. */
	wrote: boolean;
}

/** @param from the text that was found in the place, where the bench is a going on of that one */
export function takePlace(from: string | null = null): BenchHold {
	return { id: freshId(), from, wrote: false };
}

/** A bench as text, as it is kept and as it is saved to a file. */
export function benchText({ sheet, log }: BenchRecord, { id }: Pick<BenchHold, 'id'>, isTheirs = false): string {
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
	store: BrowserStore,
	{ sheet, log }: BenchRecord,
	place: BenchHold,
	{ isTheirs = false, why = 'tab', now }: KeepOptions,
): 'kept' | 'aside' | 'full' | 'refused' {
	const there = textAt(store, bench.key);
	const foreign = there !== null && there !== place.from;
	if (foreign) {
		const name = asideNameOf(there);
		if (!makeRoom(store, { place: bench.key, text: there, why, now, name })) return 'full';
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
export const holdsPlace = (store: BrowserStore, place: BenchHold): boolean =>
	place.wrote && textKept(store) === place.from;

/** Whether anything is kept; it may still be damaged. */
export const isKept = (store: BrowserStore): boolean => textKept(store) !== null;

/** The text that is kept; null where there is none, or none may be read. */
export const textKept = (store: BrowserStore): string | null => textAt(store, bench.key);

/** What a kept text was found to be. */
export type BenchReading =
	| { readonly is: 'bench'; readonly kept: BenchRecord }
	/** Made by a newer version of the site: it is sound, and not for this one to touch. */
	| { readonly is: 'newer' }
	| { readonly is: 'damaged' };

/** Reads a bench as it was kept. */
export async function readText(text: string): Promise<BenchReading> {
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
export function setKeptAside(store: BrowserStore, text: string, now: number): void {
	moveAside(store, { place: bench.key, text, why: 'damaged', now, name: asideNameOf(text) });
}

/** Benches of others, from links and never touched, that are set aside at most: the oldest goes. One's own never goes by itself. */
const MOST_THEIRS = 8;

/** A bench set aside, as it is listed. */
export interface Aside extends Pick<SetAside, 'why' | 'at'> {
	readonly id: string;
	/** What it says of itself; null where it cannot be read. */
	readonly about: { readonly name: string; readonly fixtures: number; readonly done: number } | null;
	readonly isNewer: boolean;
	/** From a link, and never touched. */
	readonly isTheirs: boolean;
}

/** The name of a kept text among those set aside: the same bench later on takes the place of itself. */
export function asideNameOf(text: string): string {
	const { id } = partsOf(text);
	return typeof id === 'string' && /^[0-9a-f]{16}$/.test(id) ? id : nameFor(text);
}

/** The id among those set aside of a bench by its name. */
export const asideIdOf = (name: string): string => asideKey(bench.key, name);

/**
 * Sets a kept text aside, whole and as it is.
 * @param now ms since 1970
 * @returns its id; null where the store refuses
 */
export function putAside(store: BrowserStore, text: string, why: Why, now: number): string | null {
	const name = asideNameOf(text);
	if (!setAside(store, { place: bench.key, text, why, now, name })) return null;
	dropOldest(store, name);
	return asideIdOf(name);
}

/** Keeps benches of others to their number. @param but by its name, one that stays */
function dropOldest(store: BrowserStore, but: string): void {
	const theirs = asideList(store).filter((each) => each.isTheirs);
	for (const { id } of theirs.slice(MOST_THEIRS)) if (id !== asideIdOf(but)) dropText(store, id);
}

/** How many are set aside; 0 where the store may not be read. */
export const asideCount = (store: BrowserStore): number => asideKeys(store, 'bench').length;

/** Those set aside, the latest first. */
export const asideList = (store: BrowserStore): readonly Aside[] =>
	asidesIn(store, 'bench').map(({ key, why, at, text }) => ({ id: key, why, at, ...saysOf(text) }));

/** The text of one that was set aside, as it stood in its place; null where it is gone. */
export const asideText = (store: BrowserStore, id: string): string | null => asideAt(store, id)?.text ?? null;

/** As much as is set aside at all. */
const LISTING_BOUNDS = { ...bench.bounds, characters: 9_000_000 };

function partsOf(text: string): Readonly<Record<string, unknown>> {
	const found = readJson(text, LISTING_BOUNDS);
	return typeof found !== 'string' && isRecord(found.value) ? found.value : {};
}

/** Looked at no closer than a list needs: it is read in full when it is brought back. */
function saysOf(text: string): Pick<Aside, 'about' | 'isNewer' | 'isTheirs'> {
	const { kept, theirs } = partsOf(text);
	const [sheet, log] = (Array.isArray(kept) ? kept : []) as [{ name?: unknown; fixtures?: unknown }?, unknown?];
	const { name, fixtures } = sheet ?? {};
	const readable = typeof name === 'string' && Array.isArray(fixtures) && Array.isArray(log);
	return {
		about: readable
			? {
					name,
					fixtures: fixtures.length,
					done: log.filter((event: { type?: unknown } | null) => event?.type !== 'clock.wait').length,
				}
			: null,
		isNewer: isNewer(text, bench),
		isTheirs: theirs === true,
	};
}
