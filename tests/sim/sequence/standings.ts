import { type Policy, type SequenceOptions, sequence, type TestProblem } from '../../../sim/sequence/index.ts';
import { naiveOptimum } from './naive.ts';

/** How a policy stands against the optimum over a set of problems: ratios of expected cost, 1 or more. */
export interface Standing {
	readonly mean: number;
	readonly p95: number;
	readonly worst: number;
}

/** The policies in a table, by the name they go by in it. */
export const ENTRIES = {
	exact: ['exact', {}],
	default: ['rollout', {}],
	'played, exact from 8 down': ['rollout', { exactAt: 8, leafAt: 8 }],
	'gain a second': ['gain', {}],
	'fixed order, cheapest first': ['order', {}],
} as const satisfies Record<string, [Policy, SequenceOptions]>;

export type Entry = keyof typeof ENTRIES;

/** How each entry stands against the long search (`naiveOptimum`, which is exact). */
export function standings(problems: readonly TestProblem[], entries: readonly Entry[]): Record<Entry, Standing> {
	const ratios = new Map<Entry, number[]>(entries.map((entry) => [entry, []]));
	for (const problem of problems) {
		const optimum = naiveOptimum(problem);
		for (const entry of entries) {
			const [policy, options] = ENTRIES[entry];
			ratios.get(entry)?.push(optimum > 0 ? sequence(problem, policy, options).expectedCost / optimum : 1);
		}
	}
	const table = [...ratios].map(([entry, list]): [Entry, Standing] => {
		const sorted = list.sort((a, b) => a - b);
		const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] as number;
		return [
			entry,
			{ mean: sorted.reduce((sum, ratio) => sum + ratio, 0) / sorted.length, p95: at(0.95), worst: at(1) },
		];
	});
	return Object.fromEntries(table) as Record<Entry, Standing>;
}

/** The same as rows to print. */
export function rowsOf(table: Record<Entry, Standing>): Record<string, Record<string, string>> {
	return Object.fromEntries(
		Object.entries(table).map(([entry, { mean, p95, worst }]) => [
			entry,
			{ mean: mean.toFixed(5), '95th of 100': p95.toFixed(4), worst: worst.toFixed(4) },
		]),
	);
}
