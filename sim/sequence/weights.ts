import { InputError, requireNumber, requireWhole, shown } from '../../shared/error/index.ts';
import { xlog2 } from './gain.ts';
import type { OutcomeTable, TableSearch } from './table.ts';

/**
 * Bayes' rule for one answer: a suspect that predicts it is multiplied by `1 - errorRate`, one that predicts another
 * by `errorRate / (outcomeCount - 1)`, one that predicts nothing by `1 / outcomeCount`; then the weights are scaled to
 * sum to 1. With an error rate above 0 nobody is ever struck out, and answers may come in any order.
 *
 * @param weights 0 or more each, on any scale, not all 0; left as they are.
 * @param outcomesOfCheck what each suspect predicts, 0 to `outcomeCount - 1`; `outcomeCount` for nothing.
 * @param answer what was seen, 0 to `outcomeCount - 1`; 'unknown' changes nothing.
 * @param errorRate chance that an answer to this check is wrong, 0 to 0.5, each wrong answer as likely as the next.
 * @param outcomeCount how many answers the check can have, 1 or more.
 * @returns new weights that sum to 1.
 * @throws InputError `sequence.lengths`, `.error-rate`, `.answer`, `.weights`; `sequence.contradiction` where the error
 * rate is 0 and no suspect with any weight predicts the answer.
 */
export function updateWeights(
	weights: ArrayLike<number>,
	outcomesOfCheck: ArrayLike<number>,
	answer: number | 'unknown',
	errorRate: number,
	outcomeCount: number,
): Float64Array {
	if (outcomesOfCheck.length !== weights.length) {
		throw new InputError('sequence.lengths', 'outcomesOfCheck', {
			expected: 'length',
			of: 'outcomes-of-suspects',
			length: weights.length,
			found: shown(outcomesOfCheck.length),
		});
	}
	const limits = { lo: 0, hi: 0.5, code: 'sequence.error-rate', path: 'errorRate', of: 'error-rate' } as const;
	requireNumber(errorRate, limits);
	if (answer !== 'unknown') {
		const answers = { lo: 0, hi: outcomeCount - 1, code: 'sequence.answer', path: 'answer', of: 'answer' } as const;
		requireWhole(answer, answers);
	}
	const updated = Float64Array.from(weights);
	const slip = outcomeCount > 1 ? errorRate : 0;
	const wrong = slip / Math.max(1, outcomeCount - 1);
	let sum = 0;
	for (let suspect = 0; suspect < updated.length; suspect++) {
		const outcome = outcomesOfCheck[suspect] as number;
		let likely = 1;
		if (answer !== 'unknown') {
			likely = outcome >= outcomeCount ? 1 / outcomeCount : outcome === answer ? 1 - slip : wrong;
		}
		updated[suspect] = (updated[suspect] as number) * likely;
		sum += updated[suspect] as number;
	}
	if (!(sum > 0 && Number.isFinite(sum))) {
		if (errorRate > 0 || answer === 'unknown') {
			throw new InputError('sequence.weights', 'weights', { trouble: 'weights-sum', found: shown(sum) });
		}
		throw new InputError('sequence.contradiction', 'answer', { trouble: 'no-suspect-fits' });
	}
	return updated.map((weight) => weight / sum);
}

/** The row of one check in a table: what each suspect predicts. It shares the table's memory. */
export function outcomesOf(table: OutcomeTable, check: number): Uint16Array {
	return table.cells.subarray(check * table.suspects, (check + 1) * table.suspects);
}

/**
 * How a check splits the suspects: the share of the weight, 0 to 1, that predicts each answer, and last the share that
 * predicts nothing. `table.counts[check] + 1` numbers that sum to 1.
 */
export function splitBy(table: OutcomeTable, weights: ArrayLike<number>, check: number): Float64Array {
	const shares = new Float64Array((table.counts[check] as number) + 1);
	let sum = 0;
	outcomesOf(table, check).forEach((outcome, suspect) => {
		shares[outcome] = (shares[outcome] as number) + (weights[suspect] as number);
		sum += weights[suspect] as number;
	});
	return sum > 0 ? shares.map((share) => share / sum) : shares;
}

/** The share of the weight, 0 to 1, of each repair, by its number; as many as the highest number and one. */
export function sharesByRepair(search: Pick<TableSearch, 'weights' | 'repairs'>): Float64Array {
	let most = -1;
	for (const repair of search.repairs) most = Math.max(most, repair);
	const shares = new Float64Array(most + 1);
	let sum = 0;
	search.weights.forEach((weight, suspect) => {
		const repair = search.repairs[suspect] as number;
		shares[repair] = (shares[repair] as number) + weight;
		sum += weight;
	});
	return sum > 0 ? shares.map((share) => share / sum) : shares;
}

/** Shannon's entropy of weights on any scale, in bits: 0 or more. */
export function entropyOf(weights: ArrayLike<number>): number {
	let sum = 0;
	let parts = 0;
	for (let i = 0; i < weights.length; i++) {
		sum += weights[i] as number;
		parts += xlog2(weights[i] as number);
	}
	return sum > 0 ? Math.max(0, Math.log2(sum) - parts / sum) : 0;
}
