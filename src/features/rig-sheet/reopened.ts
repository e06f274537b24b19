import {
	circuitKey,
	type Plan,
	type PlanRow,
	profileOf,
	type RowStep,
	stepsOf,
	type TickBoard,
	type TickStep,
	UNKNOWN_CIRCUIT,
} from '../../../shared/plan/index.ts';
import type { RepairId } from '../../../sim/fault/index.ts';
import type { Finding } from '../finder/index.ts';

/**
 * Where the hands are at a repair: at the desk, the remote, the supply or nowhere on the light (`away`); on the light or a data plug
 * of it (`on`); on its mains lead or link (`lead`); at its wall plug alone (`wall`); or there is another light (`swap`).
 */
type Hands = 'away' | 'on' | 'lead' | 'wall' | 'swap';

const HANDS: Readonly<Record<RepairId, Hands>> = {
	'switch-on': 'on',
	'fresh-battery': 'on',
	'plug-mains': 'lead',
	'restore-hall': 'away',
	'set-panel': 'on',
	'set-switches': 'on',
	'open-sensor': 'on',
	'clear-sight': 'away',
	'remote-battery': 'away',
	'remote-code': 'away',
	'plug-cable': 'on',
	'replace-cable': 'on',
	'fit-terminator': 'on',
	'right-way-round': 'away',
	'output-on': 'away',
	'raise-master': 'away',
	'set-universe': 'away',
	'set-patch': 'away',
	'set-levels': 'away',
	'let-cool': 'away',
	'clear-lens': 'on',
	'swap-fixture': 'swap',
	'other-socket': 'wall',
	'replace-lead': 'lead',
	'ask-breaker': 'away',
	'box-on': 'away',
	'other-output': 'away',
	'lift-stray': 'on',
	'leave-blind': 'away',
	'restart-desk': 'away',
	'set-start-code': 'away',
	'clear-sensor': 'on',
};

const STEPS: Readonly<Record<Exclude<Hands, 'swap'>, readonly TickStep[]>> = {
	away: [],
	on: ['hung', 'bond'],
	lead: ['off', 'hung', 'bond', 'linked'],
	wall: ['off', 'linked'],
};

/** The row that a repair was done at: that of its place, and where that is a cable or a box, the one that did wrong. */
export function rowOfRepair(plan: Plan, { fixture, done }: Finding): PlanRow | undefined {
	const at = done?.place.split(':')[0];
	return plan.rows.find(({ id }) => id === at) ?? plan.rows.find(({ id }) => id === fixture);
}

/** Repairs after which a light is plugged in. */
const PLUGGED_IN: readonly string[] = ['other-socket', 'plug-mains', 'replace-lead'] satisfies readonly RepairId[];

/**
 * Whether the plan's circuit may be another than the light's own: it was put on another socket, or is plugged in while the plan names
 * none, or one that nobody knows.
 */
export const asksCircuit = (plan: Plan, finding: Finding): boolean => {
	const row = rowOfRepair(plan, finding);
	if (!row || !finding.done) return false;
	const { repair } = finding.done;
	return repair === 'other-socket' || (circuitKey(row.circuit) === '' && PLUGGED_IN.includes(repair));
};

/**
 * A row's circuit after its light was plugged in: the one that is named; with none, the one it had. One that nobody knows is empty, but for
 * a light with a battery: it would count as running on that, with its amperes in no sum and no step that has its supply off.
 * @param typed what stands in the box
 * @param isUnknown the person says that nobody knows it
 */
export function circuitAfter(plan: Plan, row: PlanRow, typed: string, isUnknown: boolean): string {
	const unknown = profileOf(plan, row.profile)?.power.battery ? UNKNOWN_CIRCUIT : '';
	if (isUnknown) return unknown;
	return typed.trim() || (circuitKey(row.circuit) === '' ? unknown : row.circuit);
}

const BEFORE_LIT: readonly TickStep[] = ['off', 'hung', 'bond'];

/** Whether a light may be ticked as lit while these are unticked: not where clamp, second fixing or supply are to be looked at first. */
export const mayBeLit = (reopens: readonly RowStep[]): boolean =>
	!reopens.some(({ step }) => BEFORE_LIT.includes(step));

/** Steps ticked before a repair that somebody must look at again after it. Of a light that was swapped, all of them. */
export function reopenedBy(plan: Plan, { state }: TickBoard, finding: Finding): RowStep[] {
	const row = rowOfRepair(plan, finding);
	if (!row || !finding.done) return [];
	const { repair } = finding.done;
	// kept by a version that knows others: then the steps are not known, and all are looked at again
	const hands = Object.hasOwn(HANDS, repair) ? HANDS[repair as RepairId] : 'swap';
	return stepsOf(plan, row)
		.filter((step) => (hands === 'swap' || STEPS[hands].includes(step)) && state(row.id, step).standing !== 'open')
		.map((step) => ({ row: row.id, step }));
}
