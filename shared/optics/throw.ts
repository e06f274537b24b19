import { InputError, requireNumber, shown } from '../error/index.ts';

function above0(found: number, path: string, what: string): number {
	if (!(found > 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('optics.range', path, `${what} is more than 0; found ${shown(found)}.`);
	}
	return found;
}

/**
 * Diameter in metres of the pool a round beam makes square on a wall: `2 d tan(θ / 2)`.
 * @param metres from lens to wall, more than 0
 * @param degrees beam angle (to half the peak) or field angle (to a tenth), more than 0 and less than 180
 * @throws InputError `optics.range`
 */
export function poolDiameter(metres: number, degrees: number): number {
	above0(metres, 'metres', 'A throw in metres');
	above0(degrees, 'degrees', 'A beam angle in degrees');
	if (degrees >= 180) {
		throw new InputError('optics.range', 'degrees', `A beam angle is less than 180 degrees; found ${shown(degrees)}.`);
	}
	return 2 * metres * Math.tan((degrees * Math.PI) / 360);
}

/**
 * Illuminance in lux: `I cos θ / d²` (CIE e-ILV 912, read). Holds from about five times the source's size.
 * @param candela towards the surface, 0 or more
 * @param metres from source to surface, more than 0
 * @param incidence degrees between the light and the surface's normal, 0 (square on) to 90
 * @throws InputError `optics.range`
 */
export function illuminance(candela: number, metres: number, incidence = 0): number {
	const limits = { code: 'optics.range', lo: 0 };
	requireNumber(candela, { ...limits, hi: Number.MAX_VALUE, path: 'candela', what: 'An intensity in candela' });
	requireNumber(incidence, { ...limits, hi: 90, path: 'incidence', what: 'An angle of incidence in degrees' });
	above0(metres, 'metres', 'A distance in metres');
	return (candela * Math.cos((incidence * Math.PI) / 180)) / metres ** 2;
}
