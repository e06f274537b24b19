import type { Learnt } from '../../../sim/finder/index.ts';
import type { ComplaintView, LaidView, WalkView } from './view.ts';
import type { Allows, Kept, RigChoice, SetWalk } from './walk.ts';

/** What the page asks of the worker, by the names of its routes, and what it is handed back. */
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

/** What the worker is at. */
export type Stage = 'fetching' | 'opening' | 'table' | 'choosing';
