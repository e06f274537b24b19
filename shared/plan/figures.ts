import {
	amps,
	batteryHours,
	CAUTIOUS_SHARE,
	COPPER_OHMS,
	chargeHours,
	fullWatts,
	mainsWatts,
	voltDrop,
} from '../power/index.ts';
import type { Profile } from '../profile/index.ts';
import { linesOf } from './line.ts';
import { DEFAULT_HOURS, DEFAULT_VOLTS, isOnBattery, profileOf } from './make.ts';
import { circuitKey } from './steps.ts';
import type { Plan } from './types.ts';

/** How a number came about: somebody said it, a profile says it, it is taken for want of better, or it follows from others. */
export type How = 'given' | 'profile' | 'assumed' | 'computed';

/** What goes into a figure, in the order of its sum. */
export interface FigurePart {
	readonly id:
		| 'watts'
		| 'volts'
		| 'power-factor'
		| 'metres'
		| 'ohms-per-km'
		| 'celsius'
		| 'amperes'
		| 'breaker'
		| 'watt-hours'
		| 'share'
		| 'look-watts'
		| 'charge-watts'
		| 'kilograms'
		| 'fixtures'
		| 'unknown'
		| 'battery-hours'
		| 'hours';
	readonly value: number;
	readonly how: How;
}

export type FigureId =
	| 'watts'
	| 'amperes'
	| 'breaker-left'
	| 'volt-drop'
	| 'drop-percent'
	| 'battery-hours'
	| 'hours-spare'
	| 'charge-hours'
	| 'weight'
	| 'unit-loads'
	| 'cable-metres';

/** One number of the plan with its sum. Never a verdict: what a supply, a point or a night may take is for who is on site to say. */
export interface Figure {
	readonly id: FigureId;
	/** A circuit, a profile id, or a run as `universe.run`; empty for the whole plan. */
	readonly of: string;
	/** Null where something that nobody has given is needed first. */
	readonly value: number | null;
	readonly parts: readonly FigurePart[];
	/** What has to be given before it can be worked out. */
	readonly needs: 'breaker' | 'cable' | 'weight' | null;
}

/** The power factor taken where nobody has read one off a label: the lower end of what small supplies have (from memory, 0.5 to 0.6). */
const ASSUMED_POWER_FACTOR = 0.5;
/** Copper under load, °C: what a flexible cable may come to. Assumed, and on the cautious side. */
const ASSUMED_CELSIUS = 70;

/** Share of a breaker's rating past which a load that lasts is for the electrician to judge: 80 %, as in US practice (from memory). */
const CAUTIOUS_LOAD = 0.8;

const partOf = ({ parts }: Figure, id: FigurePart['id']): number | null =>
	parts.find((each) => each.id === id)?.value ?? null;

/** Whether a figure says that more is asked than there is: amperes past a breaker's rating, hours past the battery's. */
export const isOver = ({ id, value }: Figure): boolean =>
	(id === 'breaker-left' || id === 'hours-spare') && value !== null && value < 0;

/** Whether a breaker is loaded past {@link CAUTIOUS_LOAD} of its rating, and not past the rating. */
export function isNear(figure: Figure): boolean {
	const [rating, amperes] = [partOf(figure, 'breaker'), partOf(figure, 'amperes')];
	if (figure.id !== 'breaker-left' || rating === null || amperes === null) return false;
	return amperes > CAUTIOUS_LOAD * rating && !isOver(figure);
}

const part = (id: FigurePart['id'], value: number, how: How): FigurePart => ({ id, value, how });
const figure = (id: FigureId, of: string, value: number | null, parts: readonly FigurePart[]): Figure => ({
	id,
	of,
	value,
	parts,
	needs: null,
});

/** Watts of a fixture at tonight's look: idle, and the look's share of all its light. @param look 0 to 1 */
const lookWatts = (profile: Profile, look: number): number =>
	profile.power.idleWatts + look * (fullWatts(profile) - profile.power.idleWatts);

/** All figures of a plan: circuits, batteries by kind of fixture, what hangs overhead, lines. */
export function figuresOf(plan: Plan): Figure[] {
	return [...circuitFigures(plan), ...batteryFigures(plan), ...weightFigures(plan), ...lineFigures(plan)];
}

function circuitFigures(plan: Plan): Figure[] {
	// by name, however it is written: half a load under each of two spellings would look like room
	const circuits = new Map<string, { readonly circuit: string; readonly watts: number }>();
	for (const row of plan.rows) {
		const profile = profileOf(plan, row.profile);
		if (!profile || isOnBattery(plan, row)) continue;
		const key = circuitKey(row.circuit);
		const { circuit, watts } = circuits.get(key) ?? { circuit: row.circuit.trim(), watts: 0 };
		circuits.set(key, { circuit, watts: watts + mainsWatts(profile) });
	}
	return [...circuits.values()].flatMap(({ circuit, watts }) => ofCircuit(plan, circuit, watts));
}

function ofCircuit({ supply }: Plan, circuit: string, watts: number): Figure[] {
	const factor = part(
		'power-factor',
		supply.powerFactor ?? ASSUMED_POWER_FACTOR,
		supply.powerFactor === null ? 'assumed' : 'given',
	);
	// until somebody changes it, it is the plan's own
	const volts = part('volts', supply.volts, supply.volts === DEFAULT_VOLTS ? 'assumed' : 'given');
	const drawn = amps(watts, volts.value, factor.value);
	// what follows from the amperes leans on all that they lean on
	const drawnParts = [part('amperes', drawn, 'computed'), volts, factor];
	const { breaker, area, metres } = supply;
	const ohms = area === null ? undefined : COPPER_OHMS[String(area)];
	const dropParts =
		ohms === undefined || metres === null
			? null
			: [
					...drawnParts,
					part('metres', metres, 'given'),
					part('ohms-per-km', ohms, 'assumed'),
					part('celsius', ASSUMED_CELSIUS, 'assumed'),
				];
	const drop = dropParts ? voltDrop(drawn, metres ?? 0, area ?? 0, ASSUMED_CELSIUS) : null;
	return [
		figure('watts', circuit, watts, [part('watts', watts, 'profile')]),
		figure('amperes', circuit, drawn, [part('watts', watts, 'profile'), volts, factor]),
		breaker === null
			? { ...figure('breaker-left', circuit, null, drawnParts), needs: 'breaker' }
			: figure('breaker-left', circuit, breaker - drawn, [part('breaker', breaker, 'given'), ...drawnParts]),
		drop === null || dropParts === null
			? { ...figure('volt-drop', circuit, null, drawnParts), needs: 'cable' }
			: figure('volt-drop', circuit, drop, dropParts),
		...(drop === null || dropParts === null
			? []
			: [figure('drop-percent', circuit, (100 * drop) / supply.volts, dropParts)]),
	];
}

function batteryFigures(plan: Plan): Figure[] {
	const ids = [...new Set(plan.rows.filter((row) => isOnBattery(plan, row)).map(({ profile }) => profile))];
	return ids.flatMap((id) => {
		const profile = profileOf(plan, id);
		const battery = profile?.power.battery;
		if (!profile || !battery) return [];
		const watts = lookWatts(profile, plan.show.look);
		const energy = part('watt-hours', battery.wattHours, 'profile');
		const share = part('share', CAUTIOUS_SHARE, 'assumed');
		const drawn = part('look-watts', watts, 'computed');
		const hours = watts > 0 ? batteryHours(energy.value, watts, share.value) : null;
		return [
			figure('battery-hours', id, hours, [energy, share, drawn]),
			figure('hours-spare', id, hours === null ? null : hours - plan.show.hours, [
				part('battery-hours', hours ?? 0, 'computed'),
				share,
				part('hours', plan.show.hours, plan.show.hours === DEFAULT_HOURS ? 'assumed' : 'given'),
			]),
			figure('charge-hours', id, chargeHours(battery.wattHours, battery.chargeWatts), [
				energy,
				part('charge-watts', battery.chargeWatts, 'profile'),
			]),
		];
	});
}

/** Kilograms overhead, added up and no more. */
function weightFigures(plan: Plan): Figure[] {
	const overhead = plan.rows.filter(({ place }) => place.overhead);
	if (overhead.length === 0) return [];
	const weights = overhead.flatMap(({ profile }) => plan.kilograms[profile] ?? []);
	const unknown = overhead.length - weights.length;
	const sum = weights.reduce((all, each) => all + each, 0);
	const parts = [
		part('kilograms', sum, 'given'),
		part('fixtures', overhead.length, 'given'),
		part('unknown', unknown, 'given'),
	];
	return [unknown > 0 ? { ...figure('weight', '', null, parts), needs: 'weight' } : figure('weight', '', sum, parts)];
}

function lineFigures(plan: Plan): Figure[] {
	return linesOf(plan).flatMap(({ universe, runs }) =>
		runs.flatMap((run, i) => {
			const of = `${universe}.${i + 1}`;
			return [
				figure('unit-loads', of, run.unitLoads, [part('fixtures', run.rows.length, 'given')]),
				figure('cable-metres', of, run.metres, [part('metres', run.metres, 'computed')]),
			];
		}),
	);
}
