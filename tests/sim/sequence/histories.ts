import { outcomesOf, type TableSearch } from '../../../sim/sequence/index.ts';

/** A small search with answers that may be wrong, and what a wrong end costs in seconds. */
export interface Asked {
	readonly search: TableSearch;
	readonly errors: ArrayLike<number>;
	readonly wrongSeconds: number;
}

/** Names the next check after some answers, or null to end; `weights` are what is left, on any scale. */
export type NextCheck = (weights: Float64Array, asked: readonly number[]) => number | null;

/** Bits under which a check is taken to tell nothing. */
const NOTHING = 1e-6;
/** Share of the heaviest under which a suspect is nobody to ask about. */
const FAINT = 0.003;

const sum = (list: ArrayLike<number>): number => Array.from(list).reduce((total, each) => total + each, 0);

/** Weights of the suspects, each times the chance that it gives this answer. */
function answered({ search, errors }: Asked, weights: Float64Array, check: number, answer: number): Float64Array {
	const count = search.table.counts[check] as number;
	const error = count > 1 ? (errors[check] as number) : 0;
	const row = outcomesOf(search.table, check);
	return weights.map((weight, suspect) => {
		if (row[suspect] === count) return weight / count;
		return weight * (row[suspect] === answer ? 1 - error : error / (count - 1));
	});
}

/** Weight by repair. */
function byRepair({ search }: Asked, weights: Float64Array): number[] {
	const held = new Map<number, number>();
	search.repairs.forEach((repair, at) => {
		held.set(repair, (held.get(repair) ?? 0) + (weights[at] as number));
	});
	return [...held.values()];
}

/** Entropy times weight, in bits. */
const spread = (list: readonly number[]): number => {
	const total = sum(list);
	return list.reduce((bits, each) => bits - (each > 0 ? each * Math.log2(each / total) : 0), 0);
};

/** Whether a check's answer tells of the repair: the entropy before, less that after. Those hardly likely left aside. */
function tells(asked: Asked, all: Float64Array, check: number): boolean {
	const least = FAINT * Math.max(...all);
	const weights = all.map((weight) => (weight < least ? 0 : weight));
	const answers = Array.from({ length: asked.search.table.counts[check] as number }, (_, answer) =>
		spread(byRepair(asked, answered(asked, weights, check, answer))),
	);
	return spread(byRepair(asked, weights)) - sum(answers) >= NOTHING * sum(weights);
}

/**
 * Expected seconds over every history of answers, right and wrong, those of a wrong end included: of the best way there is, or
 * of `next` where one is given. Plain recursion, each history by which answers were got worked out once; none of the
 * code under test. For some seven suspects and checks.
 */
export function overHistories(asked: Asked, next?: NextCheck): number {
	const { search, wrongSeconds } = asked;
	const { table, seconds, settled } = search;
	const known = new Map<string, number>();

	function made(check: number, weights: Float64Array, history: readonly number[]): number {
		let cost = (seconds.base[check] as number) * sum(weights);
		for (let answer = 0; answer < (table.counts[check] as number); answer++) {
			const left = answered(asked, weights, check, answer);
			if (answer === seconds.refundOutcome[check]) cost -= (seconds.refund[check] as number) * sum(left);
			else cost += from(left, history.with(check, answer));
		}
		return cost;
	}

	function from(weights: Float64Array, history: readonly number[]): number {
		const total = sum(weights);
		if (total <= 0) return 0;
		const key = history.join();
		const before = known.get(key);
		if (before !== undefined) return before;
		const most = Math.max(...byRepair(asked, weights));
		const end = wrongSeconds * (total - most);
		const open = history.flatMap((answer, check) => (answer < 0 ? [check] : []));
		const telling = most >= settled * total ? [] : open.filter((check) => tells(asked, weights, check));
		let cost = end;
		if (next && telling.length > 0) {
			const check = next(
				weights,
				history.flatMap((answer, at) => (answer < 0 ? [] : [at])),
			);
			if (check !== null) cost = made(check, weights, history);
		} else if (telling.length > 0) {
			cost = Math.min(...open.map((check) => made(check, weights, history)));
		}
		known.set(key, cost);
		return cost;
	}

	return from(
		search.weights,
		Array.from({ length: table.checks }, () => -1),
	);
}
