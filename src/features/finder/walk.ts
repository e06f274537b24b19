import { InputError } from '../../../shared/error/index.ts';
import { loadProfile, type Profile } from '../../../shared/profile/index.ts';
import {
	loadRig,
	type QuickRig,
	quickSheet,
	quickSheetOf,
	RIG_IDS,
	type RigId,
	type RigSheet,
} from '../../../shared/sheet/index.ts';
import type { Need } from '../../../sim/fault/index.ts';
import type { ComplaintKind, FinderOptions, Learnt } from '../../../sim/finder/index.ts';

/** How a walk came by its rig: enough to have the same sheet again. */
export type RigChoice =
	/** Three answers; `own` is the profile where it is none of the bundled. */
	| ({ readonly kind: 'quick'; readonly own?: Profile } & QuickRig)
	| { readonly kind: 'bundled'; readonly id: string }
	| { readonly kind: 'sheet'; readonly sheet: RigSheet };

/** What can be left at home. The desk and a second person are asked about in other ways. */
export type Spare = Exclude<Need, 'desk' | 'second-person'>;

/** What the gig allows. */
export interface Allows {
	readonly without: readonly Spare[];
	readonly showRunning: boolean;
	readonly alone: boolean;
}

export type WalkStep =
	| { readonly did: 'answer'; readonly check: string; readonly outcome: string }
	/** Set aside: it cannot be done now, or what was seen could not be told. */
	| { readonly did: 'cannot' | 'unsure'; readonly check: string };

/** A start address and mode that a light, or the desk for it, stands at where the plan says another. */
export interface OtherThanPlan {
	/** Id of the fixture. */
	readonly fixture: string;
	/** Whose fact it is. */
	readonly by: 'light' | 'desk';
	readonly universe: number | null;
	/** 1 to 512. */
	readonly address: number;
	readonly mode: string;
}

/** What came of a walk, as the page of the plan that it began from is told of it. */
export interface WalkFound {
	/** What was wrong and where, in words. */
	readonly was: string;
	/** Whether nothing else may have been it. */
	readonly isSure: boolean;
	/** What repaired it, in words; null where the plan is to change instead. */
	readonly repair: string | null;
	readonly other: OtherThanPlan | null;
	/** ms since 1970. */
	readonly at: number;
}

/** A walk as it is kept: data alone, from which the finder stands again where it stood. */
export interface FinderWalk {
	readonly rig: RigChoice;
	/** The fixture that does wrong, once chosen. */
	readonly fixture: string | null;
	readonly complaint: ComplaintKind | null;
	readonly steps: readonly WalkStep[];
	/** The verdicts of this device as they stood when the walk began: its questions do not change on the way. */
	readonly learnt: Learnt;
	/** When it began, ms since 1970. */
	readonly began: number;
	/** Ids of the faults this walk has added to the count, while its verdict stands. */
	readonly counted: readonly string[];
	/** The plan it began from, by its id on the device. */
	readonly plan?: string;
	/** What came of it, where it began from a plan. */
	readonly found?: WalkFound;
}

/** A walk with a fixture and a complaint: what the finder can work on. */
export interface SetWalk extends FinderWalk {
	readonly fixture: string;
	readonly complaint: ComplaintKind;
}

/** All that is kept of the finder between visits, the counts aside. */
export interface FinderRecord {
	readonly allows: Allows;
	readonly walk: FinderWalk | null;
}

export const ALLOWS_ALL: Allows = Object.freeze({ without: [], showRunning: false, alone: false });

export const isSet = (walk: FinderWalk | null): walk is SetWalk =>
	walk !== null && walk.fixture !== null && walk.complaint !== null;

export const freshWalk = (rig: RigChoice, learnt: Learnt, began: number): FinderWalk => ({
	rig,
	fixture: null,
	complaint: null,
	steps: [],
	learnt,
	began,
	counted: [],
});

/** One step back: the last answer, then the complaint, then the fixture; null once there is nothing left to take back. */
export function stepBack(walk: FinderWalk): FinderWalk | null {
	if (walk.steps.length > 0) return { ...walk, steps: walk.steps.slice(0, -1) };
	if (walk.complaint !== null) return { ...walk, complaint: null };
	if (walk.fixture !== null) return { ...walk, fixture: null };
	return null;
}

/** The walk with everything that was set aside to be asked again. */
export const withAsides = (walk: FinderWalk): FinderWalk => ({
	...walk,
	steps: walk.steps.filter(({ did }) => did === 'answer'),
});

/** As the finder takes it. */
export const optionsOf = ({ without, showRunning, alone }: Allows): FinderOptions => ({ without, showRunning, alone });

/** The sheet of a rig of three answers, its profile fetched. @throws InputError as `quickSheet`, NotFetched */
export async function readQuick({ own, ...rig }: Extract<RigChoice, { kind: 'quick' }>): Promise<RigSheet> {
	if (own) return { ...quickSheetOf(own, rig), profiles: [own] };
	await loadProfile(rig.profile);
	return quickSheet(rig);
}

/** A bundled rig, fetched where it is not there yet. @throws InputError `sheet.bundled`, NotFetched */
export async function readBundled(rig: string): Promise<RigSheet> {
	if (!RIG_IDS.includes(rig as RigId)) throw new InputError('sheet.bundled', 'id', { trouble: 'no-such-rig', id: rig });
	return loadRig(rig as RigId);
}
