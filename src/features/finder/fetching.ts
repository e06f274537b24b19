import { finderWords } from '#words/finder/index.ts';
import { Refused, troubleText } from '../../engine/index.ts';
import type { HeldScene } from './scene.ts';
import type { Stage } from './view.ts';

/** Asks for what the page needs next. */
export type Fetch = <T>(
	get: (stage: (stage: Stage) => void) => Promise<T>,
	use: (got: T) => void | Promise<void>,
	/** Whether what is asked is the walk's own: where that is refused, the walk falls back. Left out, it is. */
	isWalks?: boolean,
) => Promise<void>;

/** @param refused what to do once the worker has refused what it was asked */
export function fetching(held: HeldScene, refused: () => Promise<void>): { readonly fetch: Fetch; drop(): void } {
	let asked = 0;
	return {
		/** What was asked before is of no use any more. */
		drop() {
			asked++;
		},
		/** Lets what comes fall where something else was done meanwhile. */
		async fetch(get, use, isWalks = true) {
			const mine = ++asked;
			try {
				const got = await get((stage) => {
					if (mine === asked) held.set({ stage });
				});
				if (mine === asked) await use(got);
			} catch (error) {
				if (mine !== asked) return;
				held.set({ stage: null, trouble: troubleText(error, finderWords.troubles) });
				if (error instanceof Refused && isWalks) await refused();
			}
		},
	};
}
