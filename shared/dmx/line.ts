import { requireNumber, requireWhole } from '../error/index.ts';

/**
 * What the line can carry. Source: EIA-485 (loads, volts, ohms) and ANSI E1.11 (terminator), read in restatements.
 */
export const EIA485 = Object.freeze({
	/** Unit loads on one line, at most. */
	mostUnitLoads: 32,
	/** One unit load, in ohms between the data wires: the least input resistance of a receiver. */
	unitLoadOhms: 12_000,
	/** The terminator across data− and data+ (pins 2 and 3) at the far end, in ohms; as much as the cable's own. */
	terminatorOhms: 120,
	/** The load a driver is tested into, in ohms: two terminators and a full line of receivers, near enough. */
	testLoadOhms: 54,
	/** A driver's least difference between the wires, in volts, into the test load. */
	leastDriveVolts: 1.5,
	/** A receiver is sure of a bit from this difference on, in volts, either way round. */
	receiverVolts: 0.2,
	/** The common-mode volts a receiver must bear. */
	commonModeVolts: Object.freeze({ lowest: -7, highest: 12 }),
});

/** Hands a receiver's share of a unit load back if it is one: over 0, to 32. Modern receivers are 1/8 or 1/4. */
function requireLoad(load: number, path: string): number {
	return requireNumber(load, {
		lo: Number.MIN_VALUE,
		hi: EIA485.mostUnitLoads,
		code: 'load.range',
		path,
		of: 'unit-load',
	});
}

/** The sum of receivers' unit loads. Throws InputError `load.range`. */
export function totalUnitLoads(loads: readonly number[]): number {
	return loads.reduce((sum, load, i) => sum + requireLoad(load, `loads[${i}]`), 0);
}

/** Whether these receivers are more than one line may carry, which is 32 unit loads. Throws InputError `load.range`. */
export function isOverloaded(loads: readonly number[]): boolean {
	return totalUnitLoads(loads) > EIA485.mostUnitLoads;
}

/** Unit loads a line with these receivers has room for still: 32 less their sum, and never less than 0. Throws InputError `load.range`. */
export function unitLoadsLeft(loads: readonly number[]): number {
	return Math.max(0, EIA485.mostUnitLoads - totalUnitLoads(loads));
}

/** How many receivers of one unit load each (a share of 1 unit load) one line may carry. Throws InputError `load.range`. */
export function mostReceivers(load: number): number {
	return Math.floor(EIA485.mostUnitLoads / requireLoad(load, 'load'));
}

/**
 * What the driver sees between the data wires, in ohms: terminators (0 or more, 120 Ω each) and unit loads (0 to 1000,
 * 12 kΩ each) side by side. Infinity with neither. The cable's own resistance is left out.
 * @throws InputError `load.range`, `terminator.range`.
 */
export function lineOhms(terminators: number, unitLoads: number): number {
	requireWhole(terminators, {
		lo: 0,
		hi: 100,
		code: 'terminator.range',
		path: 'terminators',
		of: 'terminators',
	});
	requireNumber(unitLoads, { lo: 0, hi: 1000, code: 'load.range', path: 'unitLoads', of: 'unit-loads' });
	return 1 / (terminators / EIA485.terminatorOhms + unitLoads / EIA485.unitLoadOhms);
}

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
