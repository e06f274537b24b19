import type { Profile } from '../profile/index.ts';
import { fullWatts } from './draw.ts';
import { requireAbove0, requireFrom0, requireShare } from './limits.ts';

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
