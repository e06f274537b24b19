import type { Sitting } from './sitting.ts';

type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const keyOf = (paper: string): string => `prep-bay.sitting.${paper}`;

/** The text kept of a paper's sitting; null where there is none, or the device refuses. @param store asked for late: a browser may refuse it by throwing */
export function sittingText(store: () => Store, paper: string): string | null {
	try {
		return store().getItem(keyOf(paper));
	} catch {
		return null;
	}
}

/** Keeps it. Returns false where the device refuses (private browsing, full). */
export function keepSitting(store: () => Store, sitting: Sitting): boolean {
	try {
		store().setItem(keyOf(sitting.paper), JSON.stringify(sitting));
		return true;
	} catch {
		return false;
	}
}

/** Deletes it: gone from the device. */
export function forgetSitting(store: () => Store, paper: string): void {
	try {
		store().removeItem(keyOf(paper));
	} catch {
		// a store that refuses holds nothing
	}
}

/** Moves what could not be read out of the way, so that it neither stops the paper nor is lost. */
export function setSittingAside(store: () => Store, paper: string): void {
	try {
		const text = store().getItem(keyOf(paper));
		if (text !== null) store().setItem(`${keyOf(paper)}.damaged`, text);
		store().removeItem(keyOf(paper));
	} catch {
		// it stays, and is met again next time
	}
}

/** Under which the paper begun last stands: its fragment, so that it is found again when its link is not at hand. */
const LAST = 'prep-bay.sitting.last';

/** Keeps the fragment of the paper begun last; null takes it away. */
export function keepLast(store: () => Store, fragment: string | null): void {
	try {
		if (fragment === null) store().removeItem(LAST);
		else store().setItem(LAST, fragment);
	} catch {
		// the link is still the way back
	}
}

/** The fragment of the paper begun last; null where there is none. What it holds is read as any link is. */
export function lastPaper(store: () => Store): string | null {
	try {
		const text = store().getItem(LAST);
		return text?.startsWith('#paper=') ? text : null;
	} catch {
		return null;
	}
}
