import type { Outcome, TestProblem } from '../../../sim/sequence/index.ts';

/**
 * The optimum by plain recursion over lists of suspects, each list worked out once: no bound, no bit, no check left
 * out, and no code shared with the solver, so that the two can be held against each other. Slow past 22 suspects.
 */
export function naiveOptimum(problem: TestProblem): number {
	const { weights, costs, outcomes, places } = problem;
	const repairs: readonly Outcome[] = problem.repairs ?? weights.map((_, i) => i);
	const known = new Map<string, number>();

	function least(left: readonly number[], here: number): number {
		if (new Set(left.map((suspect) => repairs[suspect])).size === 1) return 0;
		const key = `${here}:${left.join(',')}`;
		const before = known.get(key);
		if (before !== undefined) return before;
		const weight = left.reduce((sum, suspect) => sum + (weights[suspect] as number), 0);
		let best = Number.POSITIVE_INFINITY;
		costs.forEach((cost, check) => {
			const parts = new Map<Outcome, number[]>();
			for (const suspect of left) {
				const outcome = outcomes[check]?.[suspect] as Outcome;
				parts.set(outcome, [...(parts.get(outcome) ?? []), suspect]);
			}
			if (parts.size < 2) return;
			const there = places?.of[check] ?? 0;
			let total = (cost + (places?.walk[here]?.[there] ?? 0)) * weight;
			for (const [outcome, part] of parts) {
				const refund = problem.refunds?.[check];
				if (refund && refund.outcome === outcome) {
					total -= refund.seconds * part.reduce((sum, suspect) => sum + (weights[suspect] as number), 0);
				}
				total += least(part, there);
			}
			best = Math.min(best, total);
		});
		const found = best === Number.POSITIVE_INFINITY ? 0 : best;
		known.set(key, found);
		return found;
	}

	const everyone = weights.map((_, suspect) => suspect);
	return least(everyone, places?.at ?? 0) / weights.reduce((sum, weight) => sum + weight, 0);
}
