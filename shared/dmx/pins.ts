import { requireWhole } from '../error/index.ts';

/** A conductor of the line. The second pair is seldom wired, and by three-pin connectors not at all. */
export type Conductor = 'common' | 'data-minus' | 'data-plus' | 'second-minus' | 'second-plus';

/** Conductors by pin, pin 1 first. Source: ANSI E1.11, read in tables that quote it. */
export const PINS: readonly Conductor[] = Object.freeze([
	'common',
	'data-minus',
	'data-plus',
	'second-minus',
	'second-plus',
]);

/** The conductor on a pin (1 to 5). Throws InputError `pin.range`. */
export function conductorOf(pin: number): Conductor {
	requireWhole(pin, { lo: 1, hi: PINS.length, code: 'pin.range', path: 'pin', of: 'pin' });
	return PINS[pin - 1] as Conductor;
}

/** The pin (1 to 5) a conductor is on. */
export function pinOf(conductor: Conductor): number {
	return PINS.indexOf(conductor) + 1;
}
