import { amps } from '../power/index.ts';
import { LEAST_TIMES } from './breaker.ts';
import { addedUp, type Figure, type FigurePart, figure, type How, part } from './figure.ts';
import { DEFAULT_VOLTS, isOnBattery, profileOf } from './make.ts';
import { mayBeUs, US_VOLTS } from './supply.ts';
import type { Plan } from './types.ts';

/*
 * What a circuit meets beside its steady load: the limit of a mains link, the surge at switching on, the charging of batteries.
 */

/** How watts are known: a profile has those at the usual supply, and at any other they are taken to be the same. */
export const howWatts = ({ supply: { volts } }: Pick<Plan, 'supply'>): How =>
	volts === DEFAULT_VOLTS ? 'profile' : 'assumed';

/** Amperes of a link socket's label less what is drawn: all of a row goes through its first link. */
export function linkFigure({ supply }: Plan, circuit: string, drawn: number, parts: readonly FigurePart[]): Figure {
	const { link = null } = supply;
	if (link === null) return { ...figure('link-left', circuit, null, parts), needs: 'link' };
	return figure('link-left', circuit, link - drawn, [part('link', link, 'given'), ...parts]);
}

/**
 * Peak amperes if all of a circuit is switched on at once, and the least at which a breaker of that curve may trip at once, less
 * that. The sum of peaks, as labels have them; how short they are is not in it. US breakers are not rated by curve: at their volts what
 * trips one is never worked out, and where the supply may be theirs only from a curve that somebody gave.
 * @param profiles of each fixture of the circuit
 */
export function surgeFigures({ supply, surge = {} }: Plan, circuit: string, profiles: readonly string[]): Figure[] {
	const peaks = profiles.map((id) => surge[id]);
	const { sum, unknown, ...added } = addedUp('surge', peaks);
	// labels have the peak at the usual supply
	const parts = added.parts.map((each) =>
		each.id === 'surge' && supply.volts !== DEFAULT_VOLTS ? { ...each, how: 'assumed' as const } : each,
	);
	if (unknown > 0) return [{ ...figure('surge', circuit, null, parts), needs: 'surge' }];
	const { volts, breaker, curve = null } = supply;
	if (volts === US_VOLTS)
		return [
			figure('surge', circuit, sum, parts),
			{ ...figure('surge-left', circuit, null, parts), needs: 'electrician' },
		];
	const noCurve = mayBeUs(volts) ? 'us-or-curve' : breaker === null ? 'breaker' : 'curve';
	const needs = curve === null ? noCurve : 'breaker';
	if (breaker === null || curve === null)
		return [figure('surge', circuit, sum, parts), { ...figure('surge-left', circuit, null, parts), needs }];
	const least = LEAST_TIMES[curve];
	return [
		figure('surge', circuit, sum, parts),
		figure('surge-left', circuit, least * breaker - sum, [
			part('breaker', breaker, 'given'),
			part('times', least, 'assumed'),
			...parts,
		]),
	];
}

/** Amperes from the mains while every battery of the plan charges at once, dark. */
export function chargeFigures(
	plan: Plan,
	{ volts, factor }: { readonly volts: FigurePart; readonly factor: FigurePart },
): Figure[] {
	const watts = plan.rows
		.filter((row) => isOnBattery(plan, row))
		.reduce((sum, { profile }) => sum + (profileOf(plan, profile)?.power.battery?.chargeWatts ?? 0), 0);
	if (watts === 0) return [];
	const parts = [part('charging-watts', watts, howWatts(plan)), volts, factor];
	return [figure('charge-amperes', '', amps(watts, volts.value, factor.value), parts)];
}
