/** Tristimulus values X, Y, Z of CIE 1931; Y is a luminous flux, in lumens or as a share of them. */
export type Xyz = readonly [x: number, y: number, z: number];

/**
 * A flux at a chromaticity as tristimulus values (`X = x / y · Y`, `Z = (1 − x − y) / y · Y`: CIE 15). Light at y = 0 has no luminous
 * flux: it comes to zeros.
 */
export const xyzOf = ([x, y]: readonly [x: number, y: number], flux: number): Xyz =>
	y > 0 ? [(x / y) * flux, flux, ((1 - x - y) / y) * flux] : [0, 0, 0];

/** Chromaticity x, y of tristimulus values; null where there is no light. */
export function chromaticityOf([x, y, z]: Xyz): readonly [x: number, y: number] | null {
	const sum = x + y + z;
	return sum > 0 ? [x / sum, y / sum] : null;
}
