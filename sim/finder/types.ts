import type { PlacedFault } from '../event/index.ts';
import type { FaultFamily, Need, RepairId } from '../fault/index.ts';
import type { askNext } from '../sequence/index.ts';
import type { Check } from './checks/index.ts';

/** What a gig allows, and what this device has learnt. */
export interface FinderOptions {
	/** Needs that cannot be met: no ladder, no spare cable ... */
	readonly without?: readonly Need[];
	/** A show is running: nothing that darkens or changes it. */
	readonly showRunning?: boolean;
	/** Nobody to watch a light while a fader is raised. */
	readonly alone?: boolean;
	readonly learnt?: Learnt;
	/** The sheet only stands in for the rig, as one made from a few answers does: how its panels scroll is not known. */
	readonly standIn?: boolean;
	/** Where the tech stands at the start: a fixture's id or `desk`. Default: at the fixture complained of. */
	readonly here?: string;
	/** Asked before anything else is answered or set aside, where the gig allows it: what was chosen on part of the table. */
	readonly first?: string;
	/** How the next check is chosen; left out, as `askNext` of `sim/sequence` does. For quizzes, which an older edition set. */
	readonly ask?: typeof askNext;
}

/** One thing that may be wrong. */
export interface Suspect {
	/** Text of its faults: permanent for a rig. `unknown` for what the model does not know. */
	readonly id: string;
	/** None for `unknown`. */
	readonly faults: readonly PlacedFault[];
	/** Its share of all that is left in question, 0 to 1. */
	readonly weight: number;
	readonly repairs: readonly PlacedRepair[];
	/** Checks whose answers speak against it: the check, what was seen, what it would have shown. */
	readonly against: readonly { readonly check: string; readonly seen: string; readonly predicted: string }[];
}

export interface PlacedRepair {
	readonly id: RepairId;
	readonly place: string;
	readonly seconds: number;
}

/** A check proposed, and why. */
export interface NextCheck {
	readonly check: Check;
	/** The walk there and the doing, seconds. */
	readonly seconds: number;
	/** What it can show, each with its chance and the suspects who would show it. */
	readonly outcomes: readonly { readonly id: string; readonly chance: number; readonly suspects: readonly string[] }[];
	/** How much it tells, bits. */
	readonly bits: number;
	/** Expected seconds from here to the cause, where that could be worked out. */
	readonly expected: number | null;
	/** `exact`: no order of checks is better in the mean; `played`: best of those tried to the end; `ranked`: most told a second. */
	readonly by: 'exact' | 'played' | 'ranked';
}

/**
 * The cause, or the few that nothing left to do can part; or `unknown` alone, and no cause beside it, where something speaks against
 * all that is known. What a repair has ruled out is never among them.
 */
export interface Verdict {
	/** Heaviest first. */
	readonly suspects: readonly Suspect[];
	/** Repairs in the order of least expected seconds: weight over seconds (Heckerman, Breese and Rommelse 1995). */
	readonly repairs: readonly (PlacedRepair & { readonly weight: number; readonly check: string })[];
	/** Share of all that is in question, 0 to 1. */
	readonly sure: number;
	/** A repair has been done and the complaint is gone. */
	readonly confirmed: boolean;
	/** Why the walk ends: one repair holds nearly all; nothing left parts them; nothing that is known fits; a repair has helped. */
	readonly because: 'sure' | 'no-check-left' | 'unknown' | 'mended';
	/** Where nothing known fits: the places that what was seen points to most, each with its share of that, heaviest first. */
	readonly near: readonly { readonly place: string; readonly share: number }[];
	/** Where nothing known fits: what the answers have in common; else null. */
	readonly common: CommonGround | null;
}

/** What the answers of a walk have in common, whatever is behind them. Repairs that were tried are no part of it. */
export interface CommonGround {
	/**
	 * Ids of the checks that showed what a rig with nothing wrong does not, and of those that showed what it does; in the order
	 * asked. Of power nothing is called fine.
	 */
	readonly odd: readonly string[];
	readonly fine: readonly string[];
	/** Kinds of fault that show most of what was seen, likeliest first. */
	readonly families: readonly FaultFamily[];
}

/** What a verdict hangs on: another cause, which one answer alone speaks against. */
export interface Hinge {
	/** The likeliest such cause, by another repair. */
	readonly suspect: Suspect;
	/** The answer that would have to be wrong: the check, what was seen, what that cause would have shown. */
	readonly answer: Suspect['against'][number];
	/** A check not done yet that parts the two: a look before a try, the quickest first; null where none is left. */
	readonly settle: { readonly check: string; readonly here: readonly string[]; readonly there: string } | null;
}

export type WalkAnswer =
	| { readonly did: 'answer'; readonly check: string; readonly outcome: string }
	/** Cannot be done, or cannot be told. */
	| { readonly did: 'cannot'; readonly check: string };

export interface Finder {
	suspects(): Suspect[];
	next(): NextCheck | null;
	/** Takes an outcome the check can show, or `ELSE`. @throws InputError `finder.check` or `finder.outcome`. */
	answer(check: string, outcome: string): void;
	/** Sets a check aside: it cannot be done now, or the answer cannot be told. It is not asked again. @throws InputError `finder.check`. */
	cannot(check: string): void;
	/** Takes the last step back; nothing where there is none. */
	undo(): void;
	verdict(): Verdict | null;
	/** Whether one wrong answer would have led to this verdict though another cause holds, and what settles it; null where none would. */
	hinge(): Hinge | null;
	/** The walk so far: enough, with the sheet and the complaint, to stand here again. */
	readonly steps: readonly WalkAnswer[];
	/** Seconds spent, walks included. */
	readonly spent: number;
	/** Every check of this rig and complaint, by id. */
	check(id: string): Check | undefined;
}

/** How often each kind of fault was the verdict on this device: fault id to count. */
export type Learnt = Readonly<Record<string, number>>;

/** What one verdict of this device's own counts for, against weights of the catalogue that run from 1 to 10. */
const ONE_VERDICT = 1.5;

/** A fault's weight with what this device has seen. It never takes a suspect away: what the rig shows comes first. */
export const weighBy =
	(learnt: Learnt) =>
	({ fault }: PlacedFault, weight: number): number =>
		weight + ONE_VERDICT * (learnt[fault] ?? 0);

/** The count with one more verdict. */
export function learn(learnt: Learnt, faults: readonly PlacedFault[]): Learnt {
	const next: Record<string, number> = { ...learnt };
	for (const { fault } of faults) next[fault] = (next[fault] ?? 0) + 1;
	return next;
}
