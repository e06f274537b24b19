import { murmur3Text } from '../random/index.ts';
import { alongRoom, type DataLink, linksOf } from './line.ts';
import { isOnBattery, UNKNOWN_CIRCUIT } from './make.ts';
import { askedOf, settingsOf } from './sheet.ts';
import type { Plan, PlanRow } from './types.ts';

/**
 * What is ticked off at a fixture, in the order it is safe to do: set on the floor, the supply off before hands go to the mains, the
 * safety bond right after the clamp, linked with the supply off, lit last. Permanent: kept ticks name them.
 */
export const TICK_STEPS = Object.freeze([
	'charged',
	'mode',
	'address',
	'off',
	'hung',
	'bond',
	'placed',
	'linked',
	'lit',
] as const);
export type TickStep = (typeof TICK_STEPS)[number];

/** Steps that a crew does for all fixtures before it goes on: charge, set, put up and link, light. */
const ROUNDS: readonly (readonly TickStep[])[] = [
	['charged'],
	['mode', 'address'],
	['off', 'hung', 'bond', 'placed', 'linked'],
	['lit'],
];

/** The steps of one row, in order. */
export function stepsOf(plan: Plan, row: PlanRow): TickStep[] {
	const onBattery = isOnBattery(plan, row);
	const hasAddress = settingsOf(plan, row).address !== undefined || askedOf(plan, row).address !== undefined;
	const asked: Readonly<Record<TickStep, boolean>> = {
		charged: onBattery,
		mode: true,
		address: hasAddress,
		off: !onBattery,
		hung: row.place.overhead,
		bond: row.place.overhead,
		placed: !row.place.overhead,
		linked: true,
		lit: true,
	};
	return TICK_STEPS.filter((step) => asked[step]);
}

/** What the plan says of each step of each row, as digests by row id: a tick is of the plan as it stood then. */
export type PlanSays = ReadonlyMap<string, Readonly<Partial<Record<TickStep, string>>>>;

/** Worked out once for a plan. */
export function planSays(plan: Plan): PlanSays {
	const links = linksOf(plan);
	return new Map(
		plan.rows.map((row) => {
			const told = toldOf(plan, row, links.get(row.id) ?? null);
			return [row.id, Object.fromEntries(stepsOf(plan, row).map((step) => [step, digestOf([step, ...told[step]])]))];
		}),
	);
}

const digestOf = (told: unknown): string => murmur3Text(JSON.stringify(told), 0).toString(16).padStart(8, '0');

/** What each step hangs on. A fixture that is moved, or another one in its place, is to be hung and bonded again. */
function toldOf(plan: Plan, row: PlanRow, link: DataLink | null): Readonly<Record<TickStep, readonly unknown[]>> {
	const { address, ...settings } = askedOf(plan, row);
	const { x, y, overhead } = row.place;
	const mode = [row.profile, settings];
	const at = [row.profile, address];
	const stands = [row.profile, x, y, overhead];
	const linked = [...stands, row.circuit, row.universe, link?.from ?? null, link?.to ?? null];
	return {
		charged: [row.profile],
		mode,
		address: at,
		// once it was linked the supply was on: hands that go back to it begin with the supply
		off: linked,
		hung: stands,
		bond: stands,
		placed: stands,
		linked,
		lit: [mode, at, linked],
	};
}

/** A step of a row. */
export interface RowStep {
	readonly row: string;
	readonly step: TickStep;
}

/** All steps of a plan in the order a crew takes them: round by round, along the room. */
export function walkOf(plan: Plan): RowStep[] {
	const rows = alongRoom(plan.rows).map((row) => ({ row: row.id, steps: stepsOf(plan, row) }));
	return ROUNDS.flatMap((round) =>
		rows.flatMap(({ row, steps }) => steps.filter((step) => round.includes(step)).map((step) => ({ row, step }))),
	);
}

/**
 * How a step stands: `open`; `done`; `stale` where it was ticked and the plan says something else since; `split` where two people
 * said differently, or ticked it by different plans, and neither knew of the other.
 */
export type StepStanding = 'open' | 'done' | 'stale' | 'split';

/** What must be seen to before hands go on, though it is ticked or asked next. */
export type TickWarning =
	/** It hangs, or is further on than that, and its second fixing is not ticked. */
	| 'bond'
	/** Hands are at a mains link, or are about to be, and the supply is not ticked off, or the light is ticked as lit. */
	| 'supply';

/**
 * What is unsafe about a row as it is ticked. It warns and forbids nothing: who stands there decides.
 * @param stands how a step stands
 * @param next the step that is asked of this row now; null where it is another row's turn
 * @param isCircuitLit whether another light on its circuit is ticked as lit: that supply is on
 */
export function warningsOf(
	steps: readonly TickStep[],
	stands: (step: TickStep) => StepStanding,
	{ next = null, isCircuitLit = false }: { readonly next?: TickStep | null; readonly isCircuitLit?: boolean } = {},
): TickWarning[] {
	const has = (step: TickStep): boolean => steps.includes(step);
	/** Somebody says so, by the plan as it is now. */
	const said = (step: TickStep): boolean => has(step) && ['done', 'split'].includes(stands(step));
	const isDone = (step: TickStep): boolean => stands(step) === 'done';
	const toTouch: readonly TickStep[] = (['hung', 'bond', 'placed', 'linked'] as const).filter(has);
	const isAtMains = toTouch.some(said) || (next !== null && toTouch.includes(next));
	// what was hung by another plan hangs all the same
	const was = (step: TickStep): boolean => has(step) && stands(step) !== 'open';
	const isUp = was('hung') || was('linked') || was('lit') || next === 'linked' || next === 'lit';
	const isOn = isCircuitLit || (has('lit') && stands('lit') !== 'open');
	const left = toTouch.some((step) => !isDone(step));
	return [
		...(has('bond') && isUp && !isDone('bond') ? (['bond'] as const) : []),
		...(has('off') && ((isAtMains && !isDone('off')) || (left && isOn)) ? (['supply'] as const) : []),
	];
}

/** A circuit by its name, however that is spelt; empty where none is named, or nobody knows which. */
export function circuitKey(circuit: string): string {
	const key = circuit.trim().toLowerCase();
	return key === UNKNOWN_CIRCUIT ? '' : key;
}

/**
 * Circuits on which a mains light is ticked as lit, each with the rows that are: their supply is on. Rows for which none is named
 * count as one: they may share it.
 */
export function litCircuits(plan: Plan, isLit: (row: string) => boolean): ReadonlyMap<string, ReadonlySet<string>> {
	const found = new Map<string, Set<string>>();
	for (const row of plan.rows) {
		const key = circuitKey(row.circuit);
		if (!isOnBattery(plan, row) && isLit(row.id)) found.set(key, (found.get(key) ?? new Set()).add(row.id));
	}
	return found;
}
