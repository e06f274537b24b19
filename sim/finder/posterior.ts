/**
 * Weights after an answer. A suspect that predicts the answer keeps `1 − error` of its weight; one that predicts another keeps
 * its share of the error; one that predicts nothing takes every answer for as likely as the next. Never a hard zero.
 * @param weights in, any scale; not written into
 * @param predicted what each suspect predicts; null for nothing
 * @param answers how many answers the check can have, 1 or more
 * @param error chance of a wrong answer, 0 to below 1
 * @returns weights that sum to one
 */
export function reweigh(
	weights: Float64Array,
	predicted: readonly (string | null)[],
	answer: string,
	answers: number,
	error: number,
): Float64Array {
	const others = Math.max(1, answers - 1);
	return normalise(
		weights.map((weight, at) => {
			const says = predicted[at];
			if (says === null || says === undefined) return weight / Math.max(2, answers);
			return weight * (says === answer ? 1 - error : error / others);
		}),
	);
}

/** The same weights on a scale that sums to one; all alike where they are all nothing. */
export function normalise(weights: Float64Array): Float64Array {
	const sum = weights.reduce((total, weight) => total + weight, 0);
	return sum > 0 ? weights.map((weight) => weight / sum) : weights.map(() => 1 / weights.length);
}
