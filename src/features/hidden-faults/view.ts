import type { CautionId } from '#words/cautions/index.ts';
import type { Need } from '../../../sim/fault/index.ts';
import type { CheckSort, ReviewedStep } from '../../../sim/finder/index.ts';

/** Which drill. Everything else follows from it. */
export interface DrillOf {
	readonly rig: string;
	/** 0 to 2^32 - 1. */
	readonly seed: number;
	readonly count: 1 | 2;
}

/** A check that can be chosen. */
export interface CheckView {
	readonly id: string;
	readonly sort: CheckSort;
	readonly title: string;
	readonly does: string;
	/** Where, in few words. */
	readonly place: string;
	/** Once there. */
	readonly seconds: number;
	readonly needs: readonly Need[];
	readonly cautions: readonly CautionId[];
}

/** A drill as the learner meets it: no answer in it. */
export interface DrillView {
	readonly rig: string;
	readonly complaint: string;
	readonly checks: readonly CheckView[];
}

/** What was done, and what it showed. */
export interface DoneView {
	readonly check: string;
	readonly title: string;
	readonly seen: string;
	/** Walk and doing. */
	readonly seconds: number;
}

/** How the drill stands. */
export interface StandView {
	readonly done: readonly DoneView[];
	readonly spent: number;
	/** The complaint is gone. */
	readonly cleared: boolean;
	/** What nothing seen speaks against, heaviest first, by share of what is left. */
	readonly fitting: readonly { readonly name: string; readonly share: number }[];
}

/** How one choice did. */
export interface JudgedView extends DoneView {
	readonly judged: ReviewedStep['judged'];
	/** What the finder would have asked there; null where it was the same, or there was nothing left to ask. */
	readonly better: string | null;
	/** Bits of doubt before and after. */
	readonly before: number;
	readonly after: number;
}

/** What it was, and how it went. */
export interface ReviewView {
	readonly faults: readonly { readonly name: string; readonly cause: string; readonly mend: string }[];
	readonly spent: number;
	/** The finder on the same rig. */
	readonly finder: { readonly spent: number; readonly cleared: boolean; readonly done: readonly DoneView[] };
	readonly steps: readonly JudgedView[];
}
