import type { Plan, RigTicks } from '../../../shared/plan/index.ts';
import { needsLaterReader } from '../../../shared/profile/index.ts';
import {
	type BrowserStore,
	dropText,
	freshId,
	isNewer,
	KEPT,
	keysIn,
	moveAside,
	putText,
	readJson,
	textAt,
} from '../../storage/index.ts';

const { rigs, ticks } = KEPT;

/** A kept rig as it is listed. */
export interface KeptRig {
	readonly id: string;
	readonly name: string;
	readonly fixtures: number;
	/** When it was last changed, ms since 1970. */
	readonly at: number;
}

const keyOf = (id: string): string => rigs.key + id;

/** What stands beside a plan. */
export interface BesidePlan {
	/** The rig's id: a phone that has it already knows it again. In what is sent alone. */
	readonly id?: string;
	/** What was ticked off, in what is sent alone: on the device it has a place of its own. */
	readonly ticks?: RigTicks;
	/** The plan that sheets were printed from and lights set by, where that was another. */
	readonly before?: Plan;
}

/** A plan without what stands empty in it: an older site refuses a box it doesn't know, empty or not. */
export function leanPlan({ supply, surge = {}, rows, ...rest }: Plan): Plan {
	const { link = null, curve = null, ...feed } = supply;
	return {
		...rest,
		supply: { ...feed, ...(link === null ? {} : { link }), ...(curve === null ? {} : { curve }) },
		...(Object.keys(surge).length === 0 ? {} : { surge }),
		rows: rows.map(({ tilt = 0, ...row }) => (tilt === 0 ? row : { ...row, tilt })),
	};
}

/** Whether a plan says what only the second version of kept rigs has. */
function isSecond(plan: Plan): boolean {
	const { supply, surge, rows, profiles } = leanPlan(plan);
	return (
		'link' in supply ||
		'curve' in supply ||
		surge !== undefined ||
		rows.some((row) => 'tilt' in row) ||
		profiles.some(needsLaterReader)
	);
}

/** Whether a plan says what only the third version has. */
const isThird = ({ rows }: Plan): boolean => rows.some(({ after }) => after !== undefined);

/** Whether a plan says what only the fourth version has. */
const isFourth = ({ rows }: Plan): boolean => rows.some(({ unseen }) => unseen);

/** The plan sheets were printed from, as it is written: what a bench showed, and nobody saw, is nothing that a sheet was printed from, and would keep phones of an older version out. */
const leanBefore = ({ rows, ...rest }: Plan): Plan =>
	leanPlan({ ...rest, rows: rows.map(({ unseen, ...row }) => (unseen ? { ...row, shows: null } : row)) });

/** The version of what is written: the first wherever an older site can read it, since phones of a crew are not all as new. */
export function rigVersion(plan: Plan, before?: Plan): number {
	const plans = [plan, ...(before ? [before] : [])];
	if (isFourth(plan)) return rigs.version;
	if (plans.some(isThird)) return 3;
	return plans.some(isSecond) ? 2 : 1;
}

/** A plan as it is kept, saved to a file and sent. @param now ms since 1970 */
export const planText = (plan: Plan, now: number, beside: BesidePlan = {}): string => {
	const { before } = beside;
	const version = rigVersion(plan, before);
	const its = { ...beside, ...(before ? { before: leanBefore(before) } : {}) };
	return JSON.stringify({ version, at: now, plan: leanPlan(plan), ...its });
};

/** The text of a kept rig; null where there is none. */
export const rigText = (store: BrowserStore, id: string): string | null => textAt(store, keyOf(id));

/** A rig being worked on: its id, and the text that stood there when it was last read or written. */
export interface RigHold {
	readonly id: string;
	readonly from: string | null;
}

/** What became of keeping a rig; `copy` where another tab had changed it, and this one is kept beside it. */
export type RigKept = 'kept' | 'copy' | 'full' | 'refused';

/** Keeps a plan. What another tab, or a newer version, wrote in its place stays, and this goes under an id of its own. */
export function keepRig(
	store: BrowserStore,
	hold: RigHold,
	plan: Plan,
	now: number,
	beside: BesidePlan = {},
): { hold: RigHold; came: RigKept } {
	const there = rigText(store, hold.id);
	const isForeign = there !== null && there !== hold.from;
	const id = isForeign ? freshId() : hold.id;
	const text = planText(plan, now, beside);
	const came = putText(store, keyOf(id), text);
	if (came !== 'kept') return { hold, came };
	return { hold: { id, from: text }, came: isForeign ? 'copy' : 'kept' };
}

/** Keeps one rig while it is worked on. */
export interface RigKeeper {
	/** Where it stands on the device, or will. */
	id(): string;
	/**
	 * @param before the plan that sheets were printed from, where it is another
	 * @param now ms since 1970
	 * @returns what became of it; null where there is nothing to write
	 */
	save(plan: Plan, now: number, before?: Plan): RigKept | null;
	/** Deletes it; nothing is written after. */
	forget(): void;
}

/**
 * Writes only what is not on the device yet, and nothing once the rig is deleted.
 * @param from where the plan was read on the device; null for one that is new there
 */
export function rigKeeper(store: BrowserStore, start: Plan, from: RigHold | null, startBefore?: Plan): RigKeeper {
	let hold = from ?? { id: freshId(), from: null };
	let written = hold.from === null ? null : start;
	let writtenBefore = startBefore;
	let isGone = false;
	return {
		id: () => hold.id,
		save(plan, now, before) {
			if (isGone || (plan === written && before === writtenBefore)) return null;
			const { hold: next, came } = keepRig(store, hold, plan, now, before ? { before } : {});
			hold = next;
			if (came === 'kept' || came === 'copy') {
				written = plan;
				writtenBefore = before;
			}
			return came;
		},
		forget() {
			isGone = true;
			forgetRig(store, hold.id);
		},
	};
}

/** Kept rigs, the latest first. What cannot be read is not listed here; it is met, and set aside, when it is opened. */
export function keptRigs(store: BrowserStore): KeptRig[] {
	return keysIn(store)
		.flatMap((key) => {
			const id = key.startsWith(rigs.key) ? key.slice(rigs.key.length) : '';
			const text = rigs.names.test(id) ? textAt(store, key) : null;
			return text === null || isNewer(text, rigs) ? [] : [listed(id, text)];
		})
		.toSorted((a, b) => b.at - a.at);
}

function listed(id: string, text: string): KeptRig {
	const found = readJson(text, rigs.bounds);
	const { plan, at } = (typeof found === 'string' ? {} : (found.value ?? {})) as {
		plan?: { name?: unknown; rows?: unknown };
		at?: unknown;
	};
	const { name, rows } = plan ?? {};
	return {
		id,
		name: typeof name === 'string' ? name : '?',
		fixtures: Array.isArray(rows) ? rows.length : 0,
		at: typeof at === 'number' ? at : 0,
	};
}

/** Deletes a rig, and what was ticked off of it. */
export const forgetRig = (store: BrowserStore, id: string): boolean =>
	[keyOf(id), ticks.key + id].map((key) => dropText(store, key)).every(Boolean);

/** Moves a rig that cannot be read out of the way. */
export function setRigAside(store: BrowserStore, id: string, text: string, now: number): void {
	moveAside(store, { place: keyOf(id), text, why: 'damaged', now });
}
