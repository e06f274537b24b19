import { InputError, shown } from '../error/index.ts';

/** Hands a number back if it is over 0 and finite. Throws `optics.range`. */
export function above0(found: number, path: string, of: 'throw' | 'distance' | 'beam-angle'): number {
	if (!(found > 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('optics.range', path, { expected: 'over-0', of, found: shown(found) });
	}
	return found;
}

/** Hands an angle of a beam, in degrees, back if it is over 0 and under 180. Throws `optics.range`. */
export function requireBeam(degrees: number, path = 'degrees'): number {
	above0(degrees, path, 'beam-angle');
	if (degrees >= 180) {
		throw new InputError('optics.range', path, {
			expected: 'below',
			of: 'beam-angle',
			limit: 180,
			found: shown(degrees),
		});
	}
	return degrees;
}

/** Degrees in radians. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
