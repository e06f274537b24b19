import type { Learnt } from '../../../sim/finder/index.ts';
import { isNewer, KEPT, moveAside, putInPlace, type Store, textAt } from '../../storage/index.ts';
import type { Kept } from './walk.ts';

/** The finder's two kept things: its walk with what the gig allows, and its count of verdicts. */
type KeptOf = 'walk' | 'verdicts';

/** The text that is kept of either; null where there is none, or none may be read; `newer` where it is not for this version. */
export function found(store: Store, what: KeptOf): { readonly text: string; readonly isNewer: boolean } | null {
	const text = textAt(store, KEPT[what].key);
	return text === null ? null : { text, isNewer: isNewer(text, KEPT[what]) };
}

/** Keeps the walk and what the gig allows. */
export const keepWalk = (store: Store, { allows, walk }: Kept): ReturnType<typeof putInPlace> =>
	putInPlace(store, KEPT.walk, JSON.stringify({ version: KEPT.walk.version, allows, walk }));

/** Keeps the count of verdicts, apart from any walk. */
export const keepCounts = (store: Store, counts: Learnt): ReturnType<typeof putInPlace> =>
	putInPlace(store, KEPT.verdicts, JSON.stringify({ version: KEPT.verdicts.version, counts }));

/** Moves what could not be read out of the way, so that it neither stops the page nor is lost. */
export function setAside(store: Store, what: KeptOf): void {
	const { key } = KEPT[what];
	const text = textAt(store, key);
	if (text !== null) moveAside(store, key, text, 'damaged', Date.now());
}
