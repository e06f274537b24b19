import { idOf } from './layout.ts';
import type { Bench } from './table.ts';
import type { Suspect } from './types.ts';
import { mendsOf } from './verdict.ts';

/** What was answered, and what each candidate had predicted. */
export interface Heard {
	readonly check: string;
	readonly outcome: string;
	readonly predicted: readonly (string | null)[];
}

/** How many answers speak against each candidate. */
export function countAgainst(candidates: number, heard: readonly Heard[]): Uint16Array {
	const against = new Uint16Array(candidates);
	for (const { outcome, predicted } of heard) {
		for (let at = 0; at < candidates; at++) {
			const said = predicted[at] ?? null;
			if (said !== null && said !== outcome) against[at] = (against[at] ?? 0) + 1;
		}
	}
	return against;
}

/**
 * Everything that may be wrong, heaviest first. A fault that came while the rig ran and the same one that was there when it was switched
 * on are one suspect, and it is held to the one of the two that fits better.
 * @param weights by candidate, and what is not known last
 */
export function suspectsOf(
	bench: Bench,
	weights: Float64Array,
	against: ArrayLike<number>,
	heard: readonly Heard[],
): Suspect[] {
	const byId = new Map<string, { at: number; weight: number }>();
	for (const [at, candidate] of bench.candidates.entries()) {
		const weight = weights[at] ?? 0;
		const id = idOf(candidate);
		const known = byId.get(id);
		if (!known) {
			byId.set(id, { at, weight });
			continue;
		}
		const fewer = (against[at] ?? 0) - (against[known.at] ?? 0);
		if (fewer < 0 || (fewer === 0 && weight > (weights[known.at] ?? 0))) known.at = at;
		known.weight += weight;
	}
	const suspects = [...byId].map(([id, { at, weight }]): Suspect => {
		const faults = bench.candidates[at]?.faults ?? [];
		return {
			id,
			faults,
			weight,
			mends: mendsOf(bench, { faults }),
			against: heard.flatMap(({ check, outcome, predicted }) => {
				const said = predicted[at] ?? null;
				return said !== null && said !== outcome ? [{ check, seen: outcome, predicted: said }] : [];
			}),
		};
	});
	const unknown: Suspect = { id: 'unknown', faults: [], weight: weights.at(-1) ?? 0, mends: [], against: [] };
	return [...suspects, unknown].sort((a, b) => b.weight - a.weight);
}
