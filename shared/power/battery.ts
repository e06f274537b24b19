import { requireAbove0, requireFrom0, requireShare } from './limits.ts';

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
