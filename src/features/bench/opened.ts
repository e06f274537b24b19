import { loadProfiles } from '../../../shared/sheet/index.ts';
import type { BrowserStore } from '../../storage/index.ts';
import { type BenchHold, type PlayProgress, type RigStore, rigStore, takePlace } from '../rig/index.ts';
import { fourInLine } from './firstSheet.ts';

/** How a bench came to be on the page. */
export interface BenchOpening {
	readonly store: RigStore;
	/** Its hold on the place where a bench is kept. */
	readonly place: BenchHold;
	/** Where the person's own bench stands that this one came before: among those set aside, or still in its place (`kept`). */
	readonly before: string | null;
	/** What the person's own bench made room for. */
	readonly by: 'link' | 'file';
	/** A sentence about what went wrong on the way, if anything. */
	readonly trouble: string | null;
	/** Kept at once, before anything is done to it: it stands nowhere else. */
	readonly keepAtOnce: boolean;
	/** Somebody else's, from a link. */
	readonly isTheirs: boolean;
	/** Forgotten among those set aside once it is kept again: it was brought back from there. */
	readonly backFrom: string | null;
}

/** Name in `Opening.before` for a bench that still stands in its place. */
export const IN_PLACE = 'kept';

export type DeviceStore = BrowserStore;

/** What opening takes of the page: the device, the time, and ways to tell of a long play and to end it. */
export interface OpeningHelp extends PlayProgress {
	readonly storage: DeviceStore;
	/** ms since 1970. */
	readonly now: () => number;
}

/** Opens a bench in the place of the one on the page, by whatever way. A sentence is handed back to who asked. */
export type OpenOther = (open: (ways: OpeningHelp) => Promise<BenchOpening | string>) => Promise<string | null>;

/** An opening of which nothing is to be said. */
export const plainly = (store: RigStore, rest: Partial<BenchOpening> = {}): BenchOpening => ({
	store,
	place: takePlace(),
	before: null,
	by: 'link',
	trouble: null,
	keepAtOnce: false,
	isTheirs: false,
	backFrom: null,
	...rest,
});

/** The ready-made bench of a first visit. @throws NotFetched */
export async function firstBench(): Promise<RigStore> {
	const sheet = fourInLine();
	await loadProfiles(sheet);
	return rigStore(sheet);
}
