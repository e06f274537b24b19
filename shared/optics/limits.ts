import { InputError, shown } from '../error/index.ts';

/** Hands a number back if it is over 0 and finite. Throws `optics.range`. */
export function above0(found: number, path: string, what: string): number {
	if (!(found > 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('optics.range', path, `${what} is more than 0; found ${shown(found)}.`);
	}
	return found;
}

/** Hands an angle of a beam, in degrees, back if it is over 0 and under 180. Throws `optics.range`. */
export function requireBeam(degrees: number, path = 'degrees'): number {
	above0(degrees, path, 'A beam angle in degrees');
	if (degrees >= 180) {
		throw new InputError('optics.range', path, `A beam angle is less than 180 degrees; found ${shown(degrees)}.`);
	}
	return degrees;
}

/** Degrees in radians. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
