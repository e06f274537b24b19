import type { Learnt } from '../../../sim/finder/index.ts';
import type { ComplaintView, LaidView, WalkView } from './view.ts';
import type { Allows, Kept, RigChoice, SetWalk } from './walk.ts';

/** What the page asks of the worker, by name, and what it is handed back. */
export interface Asks {
	/** What is kept on the device, as text; null for what is not there. */
	readonly open: {
		readonly asks: { readonly walk: string | null; readonly counts: string | null };
		readonly gives: {
			readonly kept: Kept | null;
			readonly learnt: Learnt;
			readonly damaged: readonly ('walk' | 'counts')[];
		};
	};
	/** Text from a file, from a clipboard, or the fragment of a link to a bench. */
	readonly read: { readonly asks: { readonly text: string }; readonly gives: RigChoice };
	readonly lay: { readonly asks: { readonly rig: RigChoice }; readonly gives: LaidView };
	readonly complaints: {
		readonly asks: { readonly rig: RigChoice; readonly fixture: string };
		readonly gives: readonly ComplaintView[];
	};
	readonly look: {
		readonly asks: {
			readonly walk: SetWalk;
			readonly allows: Allows;
			/** Whether a first check will do that was chosen on part of the table: the whole takes longer on a large rig. */
			readonly isPartEnough: boolean;
		};
		readonly gives: WalkView;
	};
}
export type AskName = keyof Asks;

/** What the worker is at. */
export type Stage = 'fetching' | 'opening' | 'table' | 'choosing';

export type ToWorker = {
	[N in AskName]: { readonly id: number; readonly ask: N; readonly with: Asks[N]['asks'] };
}[AskName];

export type FromWorker =
	| { readonly id: number; readonly stage: Stage }
	| { readonly id: number; readonly gives: unknown }
	/** Nonsense came in: a code, and a sentence for the person. */
	| { readonly id: number; readonly refused: { readonly code: string; readonly sentence: string } }
	/** A bug, or a part of the worker that could not be fetched. */
	| { readonly id: number; readonly broke: string; readonly isUnfetched: boolean };
