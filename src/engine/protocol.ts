/** What goes to the worker. Questions are answered in the order they come. */
export type ToWorker =
	| { readonly id: number; readonly route: string; readonly asks: unknown }
	/** A question that need not be answered any more. One that is at work goes on: to stop it, the worker is ended. */
	| { readonly id: number; readonly cancelled: true };

/** What comes back, by the question's number: any number of stages, then one of the others. */
export type FromWorker =
	| { readonly id: number; readonly stage: string }
	| { readonly id: number; readonly result: unknown }
	/** Nonsense came in: a code, and a sentence for the person. */
	| { readonly id: number; readonly refused: { readonly code: string; readonly sentence: string } }
	/** A bug, or a part of the worker that could not be fetched. */
	| { readonly id: number; readonly broke: string; readonly isUnfetched: boolean };

/** What a feature does in the worker. */
export interface Feature {
	/** Functions from plain data to plain data; the second argument tells the stage it is at. */
	readonly routes: object;
	/** What can be worked out while nothing is asked, piece by piece; handed out once, after each answer. */
	readonly ahead?: () => readonly (() => void)[];
}
