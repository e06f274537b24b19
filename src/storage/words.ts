/** Words for what is kept of one kind, from `content/`. */
export interface KeepingWords {
	readonly kept: string;
	readonly keptWords: string;
	readonly export: string;
	readonly import: string;
	readonly clear: string;
	readonly clearTitle: string;
	readonly clearWords: string;
	readonly clearDo: string;
	readonly keep: string;
	readonly fileName: string;
	readonly asideName: string;
	readonly saveAside: string;
	readonly dismiss: string;
	readonly notKept: string;
	/** 0 where all of it was. */
	readonly damaged: (count: number) => string;
}
