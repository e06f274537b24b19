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
