/** What a worker can be asked: functions from plain data to plain data. */
export type Work = object;

/** What each takes and gives. */
export type AsksOf<W extends Work, N extends keyof W> = W[N] extends (asks: infer A) => unknown ? A : never;
export type GivesOf<W extends Work, N extends keyof W> = W[N] extends (asks: never) => infer G ? Awaited<G> : never;

export interface ToWorker {
	readonly id: number;
	readonly ask: string;
	readonly asks: unknown;
}

export type FromWorker =
	| { readonly id: number; readonly gives: unknown }
	/** Nonsense came in: a sentence for the person. */
	| { readonly id: number; readonly refused: string }
	/** A bug, or a part of the worker that could not be fetched. */
	| { readonly id: number; readonly broke: string; readonly isUnfetched: boolean };
