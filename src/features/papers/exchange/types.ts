import type { InputError } from '../../../../shared/error/index.ts';
import type { Answers, Paper, PaperMark, PaperRecipe, PaperRecipeInput } from '../../../../shared/paper/index.ts';

/** A paper as it travels: what sets it, and nothing that is right. */
export interface PaperSlip {
	readonly recipe: PaperRecipe;
	/** 0 to 2^32 − 1. */
	readonly seed: number;
}

/** What a learner hands in: plain JSON. Its score is only what the learner's device said; marks are worked out from the answers. */
export interface PaperResult extends PaperSlip {
	readonly version: 1;
	/** The mark of the paper that was sat: 16 hex digits. */
	readonly paper: string;
	/** As the learner typed it; may be empty. At most 80 characters. */
	readonly name: string;
	readonly answers: Answers;
	/** Right answers as the learner's device counted them: never used but to be compared. */
	readonly claimed: number;
	/** Ms since 1970; null where not known. */
	readonly started: number | null;
	readonly ended: number | null;
	/** 16 random hex digits: the same attempt handed in twice has the same. */
	readonly attempt: string;
}

/** A result taken in, and whether what came still had the check it was handed in with. */
export interface TakenResult {
	readonly result: PaperResult;
	/** False where it was changed after it was handed in. */
	readonly whole: boolean;
}

/** Sets a paper: `setPaper`, or `setRigPaper` fetched when a recipe needs it. @throws InputError where it cannot be set */
export type PaperSetter = (recipe: PaperRecipeInput, seed: number) => Paper | Promise<Paper>;

/** Marks a paper: `markPaper`, or `markRigPaper`. */
export type PaperMarker = (paper: Paper, answers: Answers) => PaperMark | Promise<PaperMark>;

/** One thing that was handed in, sorted into what it is. */
export type HandedIn =
	| ({ readonly is: 'paper'; readonly from: string } & PaperSlip)
	| ({ readonly is: 'result'; readonly from: string } & TakenResult)
	/** A whole store: papers, results and names, and what of it could not be read. */
	| { readonly is: 'store'; readonly from: string; readonly held: TrainerRecords; readonly refused: readonly Refusal[] }
	| ({ readonly is: 'refused'; readonly error: InputError } & Refusal);

/** What could not be read, by name, and why. */
export interface Refusal {
	/** The file, or where in the text: 'week-3.json', 'piece 2 of the text'. */
	readonly from: string;
	/** An error's code, such as `handed.damaged`. */
	readonly code: string;
	/** A sentence to act on. */
	readonly sentence: string;
}

/** A paper on the trainer's device. */
export interface KeptPaper extends PaperSlip {
	readonly version: 1;
	/** Its mark, under which it is kept. */
	readonly mark: string;
	/** When it was kept, ms since 1970. */
	readonly kept: number;
}

/** A result on the trainer's device, kept under its attempt. */
export interface KeptResult extends TakenResult {
	readonly version: 1;
	/** When it was taken in, ms since 1970. */
	readonly kept: number;
}

/** A name as the trainer typed it, in place of the one that came with an attempt. */
export interface KeptName {
	readonly version: 1;
	readonly attempt: string;
	readonly name: string;
}

/** Whether a result counts, as the trainer said, whatever would be so by itself. */
export interface KeptCount {
	readonly version: 1;
	readonly attempt: string;
	readonly counts: boolean;
}

/** All that a trainer keeps. */
export interface TrainerRecords {
	readonly papers: readonly KeptPaper[];
	readonly results: readonly KeptResult[];
	readonly names: readonly KeptName[];
	readonly counts: readonly KeptCount[];
}
