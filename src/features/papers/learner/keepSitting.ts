import {
	type BrowserStore,
	dropText,
	isNewer,
	KEPT,
	moveAside,
	putInPlace,
	putText,
	textAt,
} from '../../../storage/index.ts';
import type { Sitting } from './sitting.ts';

const { sitting: kept, lastPaper: last } = KEPT;

/** The key of a paper's sitting. @param paper its digest */
export const keyOf = (paper: string): string => kept.key + paper;

/** What is kept of a paper's sitting: its text; null where there is none, or the device refuses; `newer` where it is not for this version. */
export function sittingText(
	store: BrowserStore,
	paper: string,
): { readonly text: string; readonly isNewer: boolean } | null {
	const text = textAt(store, keyOf(paper));
	return text === null ? null : { text, isNewer: isNewer(text, kept) };
}

/** Keeps it. */
export const keepSitting = (store: BrowserStore, sitting: Sitting): ReturnType<typeof putInPlace> =>
	putInPlace(store, kept, JSON.stringify(sitting), { name: sitting.paper });

/** Deletes it: gone from the device. */
export const forgetSitting = (store: BrowserStore, paper: string): boolean => dropText(store, keyOf(paper));

/** Moves what could not be read out of the way, so that it neither stops the paper nor is lost. */
export const setSittingAside = (store: BrowserStore, paper: string, text: string): boolean =>
	moveAside(store, { place: keyOf(paper), text, why: 'damaged', now: Date.now() });

/** Keeps the fragment of the paper begun last, so that it is found again when its link is not at hand; null takes it away. */
export function keepLast(store: BrowserStore, fragment: string | null): void {
	if (fragment === null) dropText(store, last.key);
	else putText(store, last.key, fragment);
}

/** The fragment of the paper begun last; null where there is none. What it holds is read as any link is. */
export function lastPaper(store: BrowserStore): string | null {
	const text = textAt(store, last.key);
	return text?.startsWith('#paper=') ? text : null;
}
