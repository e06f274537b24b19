/**
 * Correlated colour temperature in kelvin of a chromaticity near the Planckian locus: McCamy's cubic (1992; formula read in
 * several public restatements). Within some 2 % from 2300 K to 12,500 K, no use elsewhere.
 */
export function colourTemperature([x, y]: readonly [number, number]): number {
	const n = (x - 0.332) / (0.1858 - y);
	return 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33;
}

/** Ohno's polynomial for the distance of the locus from (0.292, 0.24) in CIE 1960 u, v (Leukos 10, 2014; coefficients read in public restatements). */
const LOCUS = Object.freeze([-0.471106, 1.925865, -2.4243787, 1.5317403, -0.5179722, 0.0893944, -0.00616793]);

/**
 * Distance from the Planckian locus in CIE 1960 u, v (Duv): above 0 greenish, below 0 pinkish.
 * Meant for 2600 K to 20,000 K and distances under 0.03; farther off it only grows.
 */
export function distanceFromLocus([x, y]: readonly [number, number]): number {
	const scale = -2 * x + 12 * y + 3;
	const u = (4 * x) / scale - 0.292;
	const v = (6 * y) / scale - 0.24;
	const far = Math.hypot(u, v);
	if (far === 0) return Number.NEGATIVE_INFINITY;
	const angle = Math.acos(u / far);
	return far - LOCUS.reduceRight((sum, k) => sum * angle + k, 0);
}
