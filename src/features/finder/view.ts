import type { CautionId } from '#words/cautions/index.ts';
import { partWait } from '#words/finder/index.ts';
import type { FaultFamily, Need } from '../../../sim/fault/index.ts';
import type { CheckSort, ComplaintKind, Learnt, NextCheck, Verdict } from '../../../sim/finder/index.ts';
import { laterWith } from '../../ui/index.ts';
import type { Picture } from './picture.ts';
import type { Allows, FinderRecord, OtherThanPlan, RigChoice, SetWalk } from './walk.ts';

/** What the worker hands the page to draw: words and numbers, and nothing left to work out but how to lay them out. */

/** A rig laid out, before anything is asked about it. */
export interface LaidView {
	/** As its sheet has it: a rig of three answers is named by the page that asked them. */
	readonly name: string;
	/** Whether its values are stand-ins: no sheet said them. */
	readonly isQuick: boolean;
	readonly fixtures: readonly { readonly id: string; readonly name: string }[];
}

export interface ComplaintView {
	readonly kind: ComplaintKind;
	readonly says: string;
	readonly short: string;
	readonly asks: string;
	readonly more: string;
}

/** What would be seen. */
export interface AnswerView {
	readonly id: string;
	readonly words: string;
	/** The stand-in behind 'as you meant it', on a rig with no sheet. */
	readonly note: string | null;
	/** 0 to 1. */
	readonly chance: number;
	/** Names of those who would show it, heaviest first. */
	readonly suspects: readonly string[];
}

export interface CheckView {
	readonly id: string;
	readonly sort: CheckSort;
	readonly title: string;
	readonly does: string;
	/** The walk there and the doing, seconds. */
	readonly seconds: number;
	/** Of that, the way there. */
	readonly walk: number;
	/** Whether the way there goes up a ladder. */
	readonly climbs: boolean;
	readonly needs: readonly Need[];
	readonly disturbs: boolean;
	readonly cautions: readonly CautionId[];
	/** Of those, what this walk has shown in full before: told in a line that opens. */
	readonly said: readonly CautionId[];
	readonly picture: Picture;
	readonly answers: readonly AnswerView[];
	readonly by: NextCheck['by'];
	/** Seconds from here to the cause, where known. */
	readonly expected: number | null;
	/** Of a repair, the likeliest cause it would clear that is an address or mode other than the sheet has. */
	readonly tries: MayBePlan | null;
}

/** What may be right as it is, and the plan wrong. */
export type MayBePlan = Pick<CauseView, 'name' | 'other'>;

export interface SuspectView {
	readonly id: string;
	/** What it is and where. */
	readonly name: string;
	/** What tells it from another of the same name; null where there is none. */
	readonly more: string | null;
	/** 0 to 1. */
	readonly share: number;
	/** What speaks against it: in order, the check, what was seen, what it would have shown. */
	readonly against: readonly { readonly check: string; readonly seen: string; readonly predicted: string }[];
}

export interface CauseView {
	readonly id: string;
	readonly name: string;
	readonly cause: string;
	readonly tape: readonly string[];
	readonly share: number;
	/** Kinds of its faults. */
	readonly faults: readonly string[];
	/** A start address or mode other than the sheet has, which it comes down to. */
	readonly other: OtherThanPlan | null;
}

export interface RepairView {
	/** The check that tries it. */
	readonly check: string;
	readonly title: string;
	readonly does: string;
	readonly confirm: string;
	readonly seconds: number;
	readonly cautions: readonly CautionId[];
	readonly needs: readonly Need[];
	readonly disturbs: boolean;
	readonly picture: Picture;
}

/** What there is to go on where nothing known fits. */
export interface LostView {
	/** Names of the places that what was seen points to. */
	readonly near: readonly string[];
	/** What was seen that a good rig would not show, and titles of the checks that found all as it should be. */
	readonly odd: readonly { readonly check: string; readonly seen: string }[];
	readonly fine: readonly string[];
	/** Kinds of fault that show most of it, likeliest first. */
	readonly families: readonly FaultFamily[];
	/** What goes with swapping parts that nobody can name beforehand. */
	readonly cautions: readonly CautionId[];
	/** What to write on the tape. */
	readonly tape: readonly string[];
}

export interface VerdictView {
	readonly because: Verdict['because'];
	/** 0 to 1. */
	readonly sure: number;
	/** None where nothing known fits. */
	readonly causes: readonly CauseView[];
	/** Where nothing known fits; else null. */
	readonly lost: LostView | null;
	readonly repairs: readonly RepairView[];
	/** Checks set aside on the way. */
	readonly asides: number;
	/** Whether one wrong answer would have led here; null where the question does not arise: a repair has helped, or nothing known fits. */
	readonly hinge: { readonly on: HingeView | null } | null;
}

/** The other cause that only one answer speaks against. */
export interface HingeView {
	readonly name: string;
	/** The answer: its check, and what was seen. */
	readonly check: string;
	readonly seen: string;
	/** What parts the two, and what is seen if it is the other, or else; null where no check is left. */
	readonly settle: {
		readonly title: string;
		readonly does: string;
		readonly sort: CheckSort;
		readonly disturbs: boolean;
		readonly there: string;
		readonly here: readonly string[];
	} | null;
	/** Those of the check that is to be done, or done again. */
	readonly cautions: readonly CautionId[];
}

export interface LogLineView {
	readonly check: string;
	/** What was seen; null where it was set aside. */
	readonly seen: string | null;
	readonly did: 'answer' | 'cannot' | 'unsure';
}

/** The walk as it stands. */
export interface WalkView {
	readonly complaint: string;
	/** The check to do now; null where there is a verdict. */
	readonly check: CheckView | null;
	readonly verdict: VerdictView | null;
	/** Heaviest first, what is not known among them. */
	readonly suspects: readonly SuspectView[];
	readonly log: readonly LogLineView[];
	/** Seconds, walks included. */
	readonly spent: number;
	/** Worked out on part of the table: the check stands, and what else is in question may still grow. */
	readonly isPart: boolean;
}

/** What the page asks of the worker, by the names of its routes, and what it is handed back. */
export interface Asks {
	/** What is kept on the device, as text; null for what is not there. */
	readonly open: {
		readonly asks: { readonly walk: string | null; readonly counts: string | null };
		readonly gives: {
			readonly kept: FinderRecord | null;
			readonly learnt: Learnt;
			readonly damaged: readonly ('walk' | 'counts')[];
		};
	};
	/** Text from a file, from a clipboard, or the fragment of a link to a bench; or a walk that was handed on, as a link. */
	readonly read: {
		readonly asks: { readonly text: string };
		readonly gives: { readonly rig: RigChoice } | { readonly handed: FinderRecord };
	};
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

/** A part of the finder whose script is fetched when it is first drawn. */
export const later = laterWith(partWait, 'hint');

/** Where a plan is ticked off, and asks about what was found. @param plan its id on the device */
export const planAddress = (plan: string): string => `/rig/#ticks=${plan}`;
