import { InputError, requireNumber, shown } from '../../shared/error/index.ts';

/** Repairs in the order to try them. */
export interface RepairOrder {
	/** Numbers of the repairs, first to last. */
	readonly order: readonly number[];
	/** Expected seconds until one has cleared the fault, each tried in turn; each repair counts by its share of the weight. */
	readonly expected: number;
}

/**
 * The order of repairs with the fewest expected seconds when no check is left to make: falling weight over seconds
 * (D. Heckerman, J. Breese and K. Rommelse, Decision-theoretic troubleshooting, CACM 38(3), 1995: optimal for a single
 * fault and costs that do not hang on the order). Ties go by number.
 *
 * @param weights how likely it is that each repair is the one: 0 or more, on any scale, not all 0.
 * @param seconds what each repair takes: 0 or more, as many as weights.
 * @throws InputError `sequence.lengths`, `sequence.weight`, `sequence.cost`, `sequence.weights`.
 */
export function orderRepairs(weights: readonly number[], seconds: readonly number[]): RepairOrder {
	if (weights.length !== seconds.length) {
		throw new InputError('sequence.lengths', 'seconds', {
			expected: 'length',
			of: 'repair-seconds',
			length: weights.length,
			found: shown(seconds.length),
		});
	}
	const most = Number.MAX_VALUE;
	weights.forEach((weight, i) => {
		requireNumber(weight, { lo: 0, hi: most, code: 'sequence.weight', path: `weights[${i}]`, of: 'weight' });
	});
	seconds.forEach((value, i) => {
		requireNumber(value, { lo: 0, hi: most, code: 'sequence.cost', path: `seconds[${i}]`, of: 'repair-seconds' });
	});
	const total = weights.reduce((sum, weight) => sum + weight, 0);
	if (!(total > 0 && Number.isFinite(total))) {
		throw new InputError('sequence.weights', 'weights', { trouble: 'weights-sum', found: shown(total) });
	}
	// a/b against c/d as a*d against c*b, so that free repairs need no case of their own
	const order = weights
		.map((_, repair) => repair)
		.sort((a, b) => {
			const left = (weights[a] as number) * (seconds[b] as number);
			const right = (weights[b] as number) * (seconds[a] as number);
			return right - left || a - b;
		});
	let left = 1;
	let expected = 0;
	for (const repair of order) {
		expected += Math.max(0, left) * (seconds[repair] as number);
		left -= (weights[repair] as number) / total;
	}
	return { order, expected };
}
