import { InputError, requireNumber } from '../../shared/error/index.ts';
import type { Search } from './search.ts';
import type { AskOptions } from './types.ts';

/** Holds what is asked to what it must be. @throws InputError as `askNext`. */
export function requireAsking(search: Search, { errors, wrongSeconds = 0 }: AskOptions): void {
	const price = { lo: 0, hi: Number.MAX_VALUE, code: 'sequence.cost', path: 'wrongSeconds', what: 'A wrong end' };
	requireNumber(wrongSeconds, price);
	const { table, weights, mends, seconds } = search;
	const lengths: [string, number, number][] = [
		['weights', weights.length, table.suspects],
		['mends', mends.length, table.suspects],
		['seconds.base', seconds.base.length, table.checks],
		['errors', errors.length, table.checks],
	];
	for (const [path, found, wanted] of lengths) {
		if (found === wanted) continue;
		throw new InputError('sequence.lengths', path, `Here ${path} must be ${wanted} long; found ${found}.`);
	}
	for (let check = 0; check < errors.length; check++) {
		const path = `errors[${check}]`;
		requireNumber(errors[check] as number, {
			lo: 0,
			hi: 0.5,
			code: 'sequence.error-rate',
			path,
			what: 'An error rate',
		});
	}
	const sum = weights.reduce((total, weight) => total + (weight >= 0 ? weight : Number.NaN), 0);
	if (!(sum > 0 && Number.isFinite(sum))) {
		const found = Number.isNaN(sum) ? 'one is below 0 or no number' : `these sum to ${sum}`;
		throw new InputError(
			'sequence.weights',
			'weights',
			`Weights are 0 or more and sum to a finite number above 0; ${found}.`,
		);
	}
}
