/**
 * How many times a property is tried: `usual` in `npm test`, `soak` (ten times as many unless told) in `npm run soak`.
 * Both are counts of runs, at least 1. Give it to fast-check: `fc.assert(property, { numRuns: runs(200) })`.
 * A counterexample once met is kept by name: in `examples` beside `numRuns`, or as a test of its own that says what went wrong.
 */
export function runs(usual: number, soak: number = usual * 10): number {
	return process.env['PREP_BAY_SOAK'] === '1' ? soak : usual;
}
