/**
 * What a look costs: watts drawn, hours a battery lasts, hours it charges, and what a chain of mains fixtures takes from
 * one socket. Small formulas in watts, watt-hours, volts, amperes and hours; the rig reckons its own batteries step by step in
 * `sim/fixture` and comes to the same figures. What is left out: the sag of a battery's volts, the slow last part of a
 * charge, the surge when a supply is switched on. It adds up what is drawn; it does not say what a supply may be asked for.
 */

import { type ErrorFacts, InputError, type Limits, requireNumber, shown } from '../error/index.ts';
import type { Profile } from '../profile/index.ts';

export { COPPER_OHMS, voltDrop } from './drop.ts';

/**
 * The share of a battery's printed energy to plan a night on: age, cold and a reserve take the rest. Common practice, no
 * source for the number; it is no property of the simulated battery, which gives all that its health leaves it.
 */
export const CAUTIOUS_SHARE = 0.8;

/**
 * Energy in watt-hours of a battery by its label: `V × Ah`. Source: the carriers' rule for lithium batteries (read).
 * @param volts nominal, more than 0
 * @param ampHours more than 0
 * @throws InputError `power.range`
 */
export function wattHours(volts: number, ampHours: number): number {
	return requireAbove0(volts, 'volts', 'voltage') * requireAbove0(ampHours, 'ampHours', 'ampere-hours');
}

/**
 * Hours a battery lasts at a steady look: `energy × share / watts`. Source: power is energy over time; the form with a
 * share is read in engineers' notes on running times.
 * @param energy watt-hours, 0 or more: of the label, or what is left
 * @param watts drawn at the look, idle draw included: more than 0 (`wattsAt`)
 * @param share of that energy that can be counted on, over 0 to 1: battery health, or `CAUTIOUS_SHARE`; 1 unless told
 * @throws InputError `power.range`
 */
export function batteryHours(energy: number, watts: number, share = 1): number {
	requireFrom0(energy, 'energy', 'watt-hours');
	requireAbove0(watts, 'watts', 'watts');
	return (energy * requireShare(share, 'share', 'energy-share')) / watts;
}

/**
 * Watt-hours left after so many hours at a steady look: `energy × share − watts × hours`, and never less than 0.
 * @param energy watt-hours at the start, 0 or more
 * @param watts drawn, 0 or more
 * @param hours 0 or more
 * @param share of the energy that can be counted on, over 0 to 1; 1 unless told
 * @throws InputError `power.range`
 */
export function wattHoursLeft(energy: number, watts: number, hours: number, share = 1): number {
	requireFrom0(energy, 'energy', 'watt-hours');
	requireFrom0(watts, 'watts', 'watts');
	requireFrom0(hours, 'hours', 'hours');
	return Math.max(0, energy * requireShare(share, 'share', 'energy-share') - watts * hours);
}

/**
 * Hours to put so much energy back: `missing / (chargeWatts × share)`. A real charger slows near full, so the last tenth
 * takes longer than this says (common practice, no source).
 * @param missing watt-hours to put back, 0 or more
 * @param chargeWatts into the battery, more than 0
 * @param share of the charger's watts that end up in the battery, over 0 to 1; 1 unless told
 * @throws InputError `power.range`
 */
export function chargeHours(missing: number, chargeWatts: number, share = 1): number {
	requireFrom0(missing, 'missing', 'watt-hours');
	requireAbove0(chargeWatts, 'chargeWatts', 'charging-watts');
	return missing / (chargeWatts * requireShare(share, 'share', 'charging-share'));
}

/** Watts a fixture may take from the mains at most: all its light at full and, where it has a battery, charging as well. */
export function mainsWatts(profile: Profile): number {
	return fullWatts(profile) + (profile.power.battery?.chargeWatts ?? 0);
}

/**
 * Watts a chain of linked fixtures takes from the socket it starts at: the sum, for the first cable carries it all.
 * @param watts of each fixture of the chain, 0 or more; none at all come to 0
 * @throws InputError `power.range`
 */
export function chainWatts(watts: readonly number[]): number {
	return watts.reduce((sum, each, i) => sum + requireFrom0(each, `[${i}]`, 'watts'), 0);
}

/**
 * Amperes drawn: `watts / (volts × power factor)`. Source: P = V I cos φ (school physics, read with worked examples).
 * @param watts 0 or more
 * @param volts of the supply, as stated on site: more than 0
 * @param powerFactor over 0 to 1, from the label; 1 unless told
 * @throws InputError `power.range`
 */
export function amps(watts: number, volts: number, powerFactor = 1): number {
	requireFrom0(watts, 'watts', 'watts');
	requireAbove0(volts, 'volts', 'voltage');
	return watts / (volts * requireShare(powerFactor, 'powerFactor', 'power-factor'));
}

/**
 * How many fixtures of one kind may hang on a chain: as many as stay within so many amperes, which are the least of cable,
 * link socket and supply. Source of that limit: the labels and the electrician on site, never a table here.
 * @param watts of one fixture, more than 0
 * @param most amperes the weakest part of the chain may carry, more than 0
 * @param volts of the supply, more than 0
 * @param powerFactor over 0 to 1; 1 unless told
 * @throws InputError `power.range`
 */
export function mostOnChain(watts: number, most: number, volts: number, powerFactor = 1): number {
	const each = amps(requireAbove0(watts, 'watts', 'watts'), volts, powerFactor);
	// a hair of room: 13 A at 2.6 A each is five, whatever the last bit of the division says
	return Math.floor(requireAbove0(most, 'most', 'amperes') / each + 1e-9);
}

/** Emitter id to output, 0 (out) to 1 (full), all cells alike; an emitter not named is out. */
export type EmitterLevels = Readonly<Record<string, number>>;

/**
 * Watts drawn at a look: the idle draw, and each emitter's watts times its output. Output is what the emitter gives in the
 * end, after intensity, dim curve and limit; with a straight curve it is the level over 255.
 * @throws InputError `power.range`, or `power.emitter` for an emitter the profile does not have
 */
export function wattsAt(profile: Profile, levels: EmitterLevels): number {
	let watts = profile.power.idleWatts;
	for (const [id, output] of Object.entries(levels)) {
		const emitter = profile.emitters.find((each) => each.id === id);
		if (!emitter) {
			throw new InputError('power.emitter', id, {
				expected: 'one-of',
				profile: profile.name,
				known: profile.emitters.map((each) => each.id),
				found: shown(id),
			});
		}
		watts += emitter.watts * requireNumber(output, { lo: 0, hi: 1, code: 'power.range', path: id, of: 'output' });
	}
	return watts;
}

/** Watts drawn with every emitter at full: the most its light can draw, charging not counted. */
export function fullWatts(profile: Profile): number {
	return wattsAt(profile, Object.fromEntries(profile.emitters.map(({ id }) => [id, 1])));
}

type Of<Expected extends string> = Extract<ErrorFacts['power.range'], { readonly expected: Expected }>['of'];

/** Hands a number back if it is more than 0 and finite. Throws `power.range`. */
function requireAbove0(found: number, path: string, of: Of<'over-0'>): number {
	if (!(typeof found === 'number' && found > 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('power.range', path, { expected: 'over-0', of, found: shown(found) });
	}
	return found;
}

/** Hands a number back if it is 0 or more and finite. Throws `power.range`. */
function requireFrom0(found: number, path: string, of: Of<'from-0'>): number {
	if (!(typeof found === 'number' && found >= 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('power.range', path, { expected: 'from-0', of, found: shown(found) });
	}
	return found;
}

/** Hands a share back if it is over 0 and at most 1. Throws `power.range`. */
function requireShare(
	found: number,
	path: string,
	of: Exclude<Limits<'power.range'>['of'], 'output' | 'celsius'>,
): number {
	requireAbove0(found, path, of);
	return requireNumber(found, { lo: 0, hi: 1, code: 'power.range', path, of });
}
