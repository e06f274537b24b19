/** What a check can show: a number or a text, told apart by kind and value (1 is not '1'). */
export type Outcome = number | string;

/**
 * Seconds an outcome gives back, because the check has then already done what comes next: in 'repair and see', 'cleared'
 * gives back the repair. The sum to be least is then the time until all is well, less the repair that is needed anyway.
 */
export interface Refund {
	readonly outcome: Outcome;
	/** 0 to the check's own cost. */
	readonly seconds: number;
}

/** Where checks are made, and how long it takes to walk from place to place. Places are numbered from 0. */
export interface Places {
	/** Where the tech stands at the start. */
	readonly at: number;
	/** The place of each check. */
	readonly of: readonly number[];
	/** Seconds from place to place: `walk[from][to]`, 0 or more. */
	readonly walk: readonly (readonly number[])[];
}

/** The bare question: one suspect is guilty; which checks, in which order, find it in the fewest expected seconds? */
export interface TestProblem {
	/** How likely each suspect is: 0 or more, on any scale, not all 0. */
	readonly weights: readonly number[];
	/** What each check takes: 0 or more, in seconds (any one unit will do). */
	readonly costs: readonly number[];
	/** `outcomes[check][suspect]`: what the check shows when that suspect is the guilty one. */
	readonly outcomes: readonly (readonly Outcome[])[];
	/** Which repair clears each suspect; those left with one repair between them need no more checks. Default: each its own. */
	readonly repairs?: readonly (number | string)[];
	/** For each check, what one of its outcomes gives back; null for none. */
	readonly refunds?: readonly (Refund | null)[];
	readonly places?: Places;
}

/**
 * How the next check is chosen.
 * - `exact`: the least expected cost there is; at most 30 suspects that checks can part.
 * - `rollout` (default): exact from 30 such suspects down where that is not too long; else the best checks by `gain` are each played to the end.
 * - `gain`: most information per second.
 * - `order`: the first check of a fixed order that parts those left.
 */
export type Policy = 'exact' | 'rollout' | 'gain' | 'order';

/** What only some policies look at. */
export interface SequenceOptions {
	/** `order`: every check once, first to last. Default: cheapest first. */
	readonly order?: readonly number[];
	/** `rollout`: with this many suspects left or fewer, solve exactly; 0 to 30. Default 30. */
	readonly exactAt?: number;
	/** `rollout`: checks the exact solver tries before it gives way to play. Default 2,000,000. */
	readonly tries?: number;
	/** `rollout`: with this many left or fewer, a line of play is solved exactly; 1 to 30. Default by size: 16, 10 or 8. */
	readonly leafAt?: number;
	/** `rollout`: cells of the outcome table looked at for one choice before settling for the best so far. Default 24 times the table, 4,000,000 to 50,000,000. */
	readonly cells?: number;
}

/** A check to make. */
export interface CheckNode {
	readonly check: number;
	/** Seconds, walking included. */
	readonly cost: number;
	readonly branches: readonly TestBranch[];
}

/** What one outcome of a check leads to. */
export interface TestBranch {
	readonly outcome: Outcome;
	/** The suspects that show this outcome here, in ascending order. */
	readonly suspects: readonly number[];
	/** Seconds given back on this outcome; absent where nothing is. */
	readonly refund?: number;
	readonly node: TestNode;
}

/** The end of a walk: one suspect, several with one repair, or several that no check can part. In ascending order. */
export interface LeafNode {
	readonly suspects: readonly number[];
}

export type TestNode = CheckNode | LeafNode;

export interface TestTree {
	/** Seconds from the root to a leaf, each suspect counting by its share of the weight. */
	readonly expectedCost: number;
	readonly tree: TestNode;
}

/** What the next check hangs on besides the search. */
export interface AskOptions {
	/** Chance of a wrong answer to each check, 0 to 0.5; 0: it is never wrong, and suspects may be struck out. */
	readonly errors: ArrayLike<number>;
	/** Checks not to be made: those answered (asked again, they would repeat their error) and those that cannot be. */
	readonly excluded?: Iterable<number>;
	/** Where the tech stands. Default: place 0. */
	readonly here?: number;
	/**
	 * Seconds lost by ending on a wrong repair, 0 or more: what makes it worth while to be surer than asked where that
	 * is cheap. Default: ten minutes (a choice of ours; tests/sim/sequence measures what it does).
	 */
	readonly wrongSeconds?: number;
	/** Cells of the outcome table to look at before settling for the best so far. Default: `USUAL_CELLS`. */
	readonly cells?: number;
}

/** What checks take: their own seconds, what an outcome gives back, and the walk from where the tech stands. */
export interface Seconds {
	/** Seconds of each check where it stands, 0 or more. */
	readonly base: Float64Array;
	/** Seconds given back when `refundOutcome` is what the check shows, 0 to `base`. */
	readonly refund: Float64Array;
	/** Which outcome gives back; -1 for none. It means that the complaint is gone: `bestCheck` plays on no further. */
	readonly refundOutcome: Int32Array;
	/** The place of each check, 0 to `places - 1`. */
	readonly place: Int32Array;
	/** How many places there are, 1 or more. */
	readonly places: number;
	/** Seconds from place to place: `walk[from * places + to]`. */
	readonly walk: Float64Array;
}

/** Seconds of checks that stand side by side and give nothing back, or with what is given laid over that. */
export function makeSeconds(base: ArrayLike<number>, given: Partial<Omit<Seconds, 'base'>> = {}): Seconds {
	return {
		base: Float64Array.from(base),
		refund: new Float64Array(base.length),
		refundOutcome: new Int32Array(base.length).fill(-1),
		place: new Int32Array(base.length),
		places: 1,
		walk: new Float64Array(1),
		...given,
	};
}

/** Seconds of a check for a tech who stands at `here`: the walk and the check, nothing given back. */
export function secondsFrom(seconds: Seconds, here: number, check: number): number {
	const walk = seconds.walk[here * seconds.places + (seconds.place[check] as number)] as number;
	return walk + (seconds.base[check] as number);
}
