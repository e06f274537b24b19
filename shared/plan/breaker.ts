/** How fast-acting a breaker is (IEC 60898). */
export const BREAKER_CURVES = Object.freeze(['B', 'C', 'D'] as const);
export type BreakerCurve = (typeof BREAKER_CURVES)[number];

/** The least times its rating at which a breaker of a curve may trip at once. Source: IEC 60898, read in a restatement. */
export const LEAST_TIMES: Readonly<Record<BreakerCurve, number>> = Object.freeze({ B: 3, C: 5, D: 10 });
