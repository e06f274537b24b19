import { InputError, requireNumber, shown } from '../../shared/error/index.ts';
import type { Search } from './search.ts';
import type { AskOptions } from './types.ts';

/** Holds what is asked to what it must be. @throws InputError as `askNext`. */
export function requireAsking(search: Search, { errors, wrongSeconds = 0 }: AskOptions): void {
	const price = { lo: 0, hi: Number.MAX_VALUE, code: 'sequence.cost', path: 'wrongSeconds', of: 'wrong-end' } as const;
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
		throw new InputError('sequence.lengths', path, {
			expected: 'length',
			of: 'asked',
			length: wanted,
			found: shown(found),
		});
	}
	for (let check = 0; check < errors.length; check++) {
		const path = `errors[${check}]`;
		requireNumber(errors[check] as number, {
			lo: 0,
			hi: 0.5,
			code: 'sequence.error-rate',
			path,
			of: 'error-rate',
		});
	}
	const sum = weights.reduce((total, weight) => total + (weight >= 0 ? weight : Number.NaN), 0);
	if (!(sum > 0 && Number.isFinite(sum))) {
		throw new InputError(
			'sequence.weights',
			'weights',
			Number.isNaN(sum) ? { trouble: 'weight-below-0' } : { trouble: 'weights-sum', found: shown(sum) },
		);
	}
}
