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
import { addedUp, type Figure, type FigureId, type FigurePart, figure, part } from './figure.ts';
import { linesOf } from './line.ts';
import { DEFAULT_HOURS, DEFAULT_VOLTS, isOnBattery, profileOf } from './make.ts';
import { circuitKey } from './steps.ts';
import { byUsRules } from './supply.ts';
import { chargeFigures, howWatts, linkFigure, surgeFigures } from './surge.ts';
import type { Plan } from './types.ts';

/** The power factor taken where nobody has read one off a label: the lower end of what small supplies have (from memory, 0.5 to 0.6). */
const ASSUMED_POWER_FACTOR = 0.5;
/** Copper under load, °C: what a flexible cable may come to. Assumed, and on the cautious side. */
const ASSUMED_CELSIUS = 70;

/**
 * Share of a breaker's rating past which a load that lasts is for the electrician to judge: 80 %. In the US it is the rule for loads
 * of three hours or more (National Electrical Code, article 210, from memory).
 */
const CAUTIOUS_LOAD = 0.8;

const partOf = ({ parts }: Figure, id: FigurePart['id']): number | null =>
	parts.find((each) => each.id === id)?.value ?? null;

const BATTERY: readonly FigureId[] = ['battery-hours', 'hours-spare', 'charge-hours', 'charge-amperes'];

/** Whether a figure is about batteries and their charge. */
export const isOfBattery = (id: FigureId): boolean => BATTERY.includes(id);

/** Sums of the data lines: the line plan tells them. */
const LINE: readonly FigureId[] = ['unit-loads', 'cable-metres'];

/** Whether a figure stands on the load sheet: all but those of batteries, which the charge plan has, and of the data lines. */
export const isOfLoad = (id: FigureId): boolean => !isOfBattery(id) && !LINE.includes(id);

/** What is left of something, and is too little below zero. */
const LEFT: readonly FigureId[] = ['breaker-left', 'lasting-left', 'link-left', 'surge-left', 'hours-spare'];

/** Whether a figure says that more is asked than there is: amperes past a breaker's rating, 80 % of it by US rules, a link's or the least surge that may trip, hours past the battery's. */
export const isOver = ({ id, value }: Figure): boolean => LEFT.includes(id) && value !== null && value < 0;

/** Whether a breaker is loaded past {@link CAUTIOUS_LOAD} of its rating, and not past the rating. By US rules that is a figure of its own. */
export function isNear(figure: Figure): boolean {
	const [rating, amperes] = [partOf(figure, 'breaker'), partOf(figure, 'amperes')];
	if (figure.id !== 'breaker-left' || rating === null || amperes === null) return false;
	const volts = partOf(figure, 'volts');
	if (volts !== null && byUsRules(volts)) return false;
	return amperes > CAUTIOUS_LOAD * rating && !isOver(figure);
}

/** Watts of a fixture at tonight's look: idle, and the look's share of all its light. @param look 0 to 1 */
const lookWatts = (profile: Profile, look: number): number =>
	profile.power.idleWatts + look * (fullWatts(profile) - profile.power.idleWatts);

/** All figures of a plan: circuits, batteries by kind of fixture, what hangs overhead, lines. */
export function figuresOf(plan: Plan): Figure[] {
	return [
		...circuitFigures(plan),
		...batteryFigures(plan),
		...chargeFigures(plan, powerParts(plan)),
		...weightFigures(plan),
		...lineFigures(plan),
	];
}

function circuitFigures(plan: Plan): Figure[] {
	// by name, however it is written: half a load under each of two spellings would look like room
	const circuits = new Map<
		string,
		{ readonly circuit: string; readonly watts: number; readonly profiles: readonly string[] }
	>();
	for (const row of plan.rows) {
		const profile = profileOf(plan, row.profile);
		if (!profile || isOnBattery(plan, row)) continue;
		const key = circuitKey(row.circuit);
		const { circuit, watts, profiles } = circuits.get(key) ?? {
			circuit: key === '' ? '' : row.circuit.trim(),
			watts: 0,
			profiles: [],
		};
		circuits.set(key, { circuit, watts: watts + mainsWatts(profile), profiles: [...profiles, profile.id] });
	}
	return [...circuits.values()].flatMap(({ circuit, watts, profiles }) => ofCircuit(plan, circuit, watts, profiles));
}

/** Volts and power factor as they go into amperes, each with how it is known. */
function powerParts({ supply }: Plan): { readonly volts: FigurePart; readonly factor: FigurePart } {
	const { powerFactor, volts } = supply;
	return {
		// until somebody changes it, it is the plan's own
		volts: part('volts', volts, volts === DEFAULT_VOLTS ? 'assumed' : 'given'),
		factor: part('power-factor', powerFactor ?? ASSUMED_POWER_FACTOR, powerFactor === null ? 'assumed' : 'given'),
	};
}

function ofCircuit(plan: Plan, circuit: string, watts: number, profiles: readonly string[]): Figure[] {
	const { supply } = plan;
	const { volts, factor } = powerParts(plan);
	const drawn = amps(watts, volts.value, factor.value);
	const wattsPart = part('watts', watts, howWatts(plan));
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
		figure('watts', circuit, watts, [wattsPart]),
		figure('amperes', circuit, drawn, [wattsPart, volts, factor]),
		breaker === null
			? { ...figure('breaker-left', circuit, null, drawnParts), needs: 'breaker' }
			: figure('breaker-left', circuit, breaker - drawn, [part('breaker', breaker, 'given'), ...drawnParts]),
		...lastingFigure(plan, circuit, drawn, drawnParts),
		drop === null || dropParts === null
			? { ...figure('volt-drop', circuit, null, drawnParts), needs: 'cable' }
			: figure('volt-drop', circuit, drop, dropParts),
		...(drop === null || dropParts === null
			? []
			: [figure('drop-percent', circuit, (100 * drop) / supply.volts, dropParts)]),
		linkFigure(plan, circuit, drawn, drawnParts),
		...surgeFigures(plan, circuit, profiles),
	];
}

/** By US rules: 80 % of a breaker's rating less the amperes drawn. */
function lastingFigure(
	{ supply: { breaker, volts } }: Plan,
	circuit: string,
	drawn: number,
	drawnParts: readonly FigurePart[],
): Figure[] {
	if (!byUsRules(volts) || breaker === null) return [];
	const parts = [part('breaker', breaker, 'given'), part('share', CAUTIOUS_LOAD, 'assumed'), ...drawnParts];
	return [figure('lasting-left', circuit, CAUTIOUS_LOAD * breaker - drawn, parts)];
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
	const weights = overhead.map(({ profile }) => plan.kilograms[profile]);
	const { sum, parts, unknown } = addedUp('kilograms', weights);
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
