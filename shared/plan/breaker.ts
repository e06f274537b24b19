/** How fast-acting a breaker is (IEC 60898). */
export const BREAKER_CURVES = Object.freeze(['B', 'C', 'D'] as const);
export type BreakerCurve = (typeof BREAKER_CURVES)[number];

/**
 * Times its rating between which a breaker of a curve trips at once: at the least it may, at the most it must. Source: IEC 60898,
 * read in a restatement: B 3 to 5, C 5 to 10, D 10 to 20.
 */
export const BREAKER_TIMES: Readonly<Record<BreakerCurve, { readonly least: number; readonly most: number }>> =
	Object.freeze({ B: { least: 3, most: 5 }, C: { least: 5, most: 10 }, D: { least: 10, most: 20 } });
