import { type RigStore, rigStore } from '../rig/index.ts';
import { fourInLine } from './firstSheet.ts';

/** How a bench came to be on the page. */
export interface Opening {
	readonly store: RigStore;
	/** A link took its place, and the person's own stands kept beside it. */
	readonly ownAside: boolean;
	/** A sentence about what went wrong on the way, if anything. */
	readonly trouble: string | null;
}

export type Keeping = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** The ready-made bench of a first visit. */
export const firstBench = (): RigStore => rigStore(fourInLine());
