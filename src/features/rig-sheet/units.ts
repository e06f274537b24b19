/** Units that a crew reads the light in. */
export type Units = 'metric' | 'imperial';

/** Metres in a foot: exact by the international yard (1959). */
const FOOT = 0.3048;

/** Kilograms in a pound: exact by the international pound (1959). */
const POUND = 0.45359237;

/** Kilograms in pounds. */
export const poundsOf = (kilograms: number): number => kilograms / POUND;

/** Metres as they are shown: in metres or feet. */
export const lengthIn = (units: Units, metres: number): number => (units === 'metric' ? metres : metres / FOOT);

/** Metres of what was typed. */
export const metresFrom = (units: Units, length: number): number => (units === 'metric' ? length : length * FOOT);

/** Lux as they are shown: lux or foot-candles, lumens on a square foot. */
export const lightIn = (units: Units, lux: number): number => (units === 'metric' ? lux : lux * FOOT ** 2);
