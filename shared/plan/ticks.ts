import type { PlanSays, RowStep, StepStanding, TickStep } from './steps.ts';

/*
 * Ticks and notes of several phones: a grow-only set of entries, each of which names those it takes the place of (a multi-value
 * register for each step, and for each row's note). Merging is the union, so it is the same in any order; of two entries that did
 * not know of each other both stand, whatever their clocks say.
 */

/** Most ticks that are kept of one rig: a rig of 2,000 fixtures ticked through and through comes to a third. */
export const MOST_TICKS = 50_000;
/** Longest initials, and longest note, in characters. */
export const LONGEST_INITIALS = 4;
export const LONGEST_NOTE = 500;

/** What every entry says. */
interface Entry {
	/** Eight hex digits by chance: what later entries name it by. */
	readonly id: string;
	/** Row id. */
	readonly row: string;
	/** Initials of whoever made it. */
	readonly by: string;
	/** ms since 1970, by the clock of that phone. */
	readonly at: number;
	/** Ids of the entries it takes the place of. */
	readonly over: readonly string[];
}

/** A step ticked, or unticked. */
export interface Tick extends Entry {
	readonly step: TickStep;
	readonly on: boolean;
	/** What the plan said of the step then, as `planSays` has it. */
	readonly plan: string;
}

/** A row's note; empty where it was taken away. */
export interface TickNote extends Entry {
	readonly text: string;
}

/** All that was ticked and noted of a rig: plain JSON. */
export interface RigTicks {
	readonly version: 1;
	readonly ticks: readonly Tick[];
	readonly notes: readonly TickNote[];
}

export const NO_TICKS: RigTicks = Object.freeze({ version: 1, ticks: [], notes: [] });

const keyOf = (entry: Tick | TickNote): string =>
	JSON.stringify(
		'step' in entry
			? [entry.at, entry.id, entry.row, entry.step, entry.on, entry.plan, entry.by, entry.over]
			: [entry.at, entry.id, entry.row, entry.text, entry.by, entry.over],
	);

/** Entries of both, each once, in an order that hangs on nothing but themselves. */
function union<E extends Tick | TickNote>(one: readonly E[], other: readonly E[]): E[] {
	const byKey = new Map([...one, ...other].map((entry) => [keyOf(entry), entry]));
	return [...byKey]
		.toSorted(([a, { at }], [b, { at: later }]) => at - later || (a < b ? -1 : a > b ? 1 : 0))
		.map(([, entry]) => entry);
}

/** Two histories as one: the same whichever comes first, however often, and nothing of either is dropped. */
export function mergedTicks(one: RigTicks, other: RigTicks): RigTicks {
	return { version: 1, ticks: union(one.ticks, other.ticks), notes: union(one.notes, other.notes) };
}

/** How many entries the second has that the first has not, and who made them. */
export function newIn(known: RigTicks, other: RigTicks): { readonly count: number; readonly by: readonly string[] } {
	const all = [...known.ticks, ...known.notes];
	const keys = new Set(all.map(keyOf));
	const fresh = [...other.ticks, ...other.notes].filter((entry) => !keys.has(keyOf(entry)));
	return { count: fresh.length, by: [...new Set(fresh.map(({ by }) => by))].toSorted() };
}

/** The entries of one step, or one note, that no other of them takes the place of, the oldest first. */
function standing<E extends Entry>(entries: readonly E[]): readonly E[] {
	if (entries.length < 2) return entries;
	const gone = new Set(entries.flatMap(({ over }) => over));
	const left = entries.filter(({ id }) => !gone.has(id));
	// entries that take each other's place come from no crew; they are shown for all that
	return left.length > 0 ? left : entries;
}

/** Ticks by row and step, all of them. */
function bySteps(ticks: readonly Tick[]): ReadonlyMap<string, readonly Tick[]> {
	const found = new Map<string, Tick[]>();
	for (const tick of ticks) {
		const key = stepKey(tick);
		const its = found.get(key);
		if (its) its.push(tick);
		else found.set(key, [tick]);
	}
	return found;
}

const stepKey = ({ row, step }: RowStep): string => `${step} ${row}`;

export interface StepState {
	readonly standing: StepStanding;
	/** What stands of it, the oldest first. */
	readonly ticks: readonly Tick[];
}

const OPEN: StepState = Object.freeze({ standing: 'open', ticks: [] });

function stateOf(ticks: readonly Tick[], says: string | undefined): StepState {
	const on = ticks.filter((tick) => tick.on);
	if (on.length === 0) return { standing: 'open', ticks };
	const current = on.filter(({ plan }) => plan === says);
	if (on.length < ticks.length || (current.length > 0 && current.length < on.length))
		return { standing: 'split', ticks };
	return { standing: current.length > 0 ? 'done' : 'stale', ticks };
}

/** How every step that the plan asks for stands. */
export interface TickBoard {
	state(row: string, step: TickStep): StepState;
	isDone(row: string, step: TickStep): boolean;
	/** What stands as a row's note: more than one where two people wrote and neither knew. */
	notes(row: string): readonly TickNote[];
}

/** @param says what the plan says now */
export function boardOf(says: PlanSays, { ticks, notes }: RigTicks): TickBoard {
	const states = new Map(
		[...bySteps(ticks)].map(([key, its]) => {
			const [tick] = its;
			const now = tick && says.get(tick.row)?.[tick.step];
			return [key, stateOf(standing(its), now)] as const;
		}),
	);
	const noted = new Map<string, TickNote[]>();
	for (const note of notes) noted.set(note.row, [...(noted.get(note.row) ?? []), note]);
	const state = (row: string, step: TickStep): StepState => states.get(stepKey({ row, step })) ?? OPEN;
	return {
		state,
		isDone: (row, step) => state(row, step).standing === 'done',
		notes: (row) => standing(noted.get(row) ?? []).filter(({ text }) => text !== ''),
	};
}

/** Who makes an entry, when, and the id drawn for it. */
export type Signed = Pick<Entry, 'id' | 'by' | 'at'>;

/** With a step ticked or unticked; it takes the place of all that stood there. @param says what the plan says now */
export function withTick(
	all: RigTicks,
	says: PlanSays,
	{ row, step, on }: RowStep & { readonly on: boolean },
	signed: Signed,
): RigTicks {
	const stood = standing(all.ticks.filter((tick) => tick.row === row && tick.step === step));
	const { id, by, at } = signed;
	const plan = says.get(row)?.[step] ?? '';
	const tick: Tick = { id, row, step, on, plan, by, at, over: stood.map((each) => each.id) };
	return { ...all, ticks: [...all.ticks, tick] };
}

/**
 * What goes with a tick: a light whose supply is off is not lit, so that is unticked with it.
 * @returns all that is to be ticked or unticked, in order
 */
export function goesWith(
	{ state }: TickBoard,
	row: string,
	step: TickStep,
	on: boolean,
): (RowStep & { on: boolean })[] {
	const darkens = on && step === 'off' && state(row, 'lit').standing !== 'open';
	return [{ row, step, on }, ...(darkens ? [{ row, step: 'lit' as const, on: false }] : [])];
}

/** With a row's note written; it takes the place of all that stood there. */
export function withNote(all: RigTicks, row: string, text: string, { id, by, at }: Signed): RigTicks {
	const over = standing(all.notes.filter((note) => note.row === row)).map((each) => each.id);
	return { ...all, notes: [...all.notes, { id, row, by, at, over, text }] };
}

/** The first step of a walk that is not done; null where all are. @param isLeft whether a step is to be passed over for now */
export function nextOf(
	walk: readonly RowStep[],
	board: TickBoard,
	isLeft: (at: RowStep) => boolean = () => false,
): RowStep | null {
	const open = walk.filter(({ row, step }) => !board.isDone(row, step));
	return open.find((at) => !isLeft(at)) ?? open[0] ?? null;
}
