import { InputError } from '../error/index.ts';

/** The mean; null of no numbers. */
export function mean(values: readonly number[]): number | null {
	return values.length === 0 ? null : sum(values) / values.length;
}

/** The variance, divided by the number of values; null of no numbers. */
export function variance(values: readonly number[]): number | null {
	const middle = mean(values);
	return middle === null ? null : sum(values.map((value) => (value - middle) ** 2)) / values.length;
}

/**
 * Pearson's product-moment correlation, −1 to 1; null where either list has no spread. With one list of 0s and 1s it is the
 * point-biserial correlation.
 * @throws InputError `statistics.length` where the lists are not of one length.
 */
export function correlation(xs: readonly number[], ys: readonly number[]): number | null {
	if (xs.length !== ys.length)
		throw new InputError('statistics.length', '', { expected: 'same-length', xs: xs.length, ys: ys.length });
	const [middleX, middleY] = [mean(xs) ?? 0, mean(ys) ?? 0];
	let [xx, yy, xy] = [0, 0, 0];
	for (const [at, x] of xs.entries()) {
		const [dx, dy] = [x - middleX, (ys[at] ?? 0) - middleY];
		xx += dx * dx;
		yy += dy * dy;
		xy += dx * dy;
	}
	// a spread that is only the rounding of sums is none
	if (xx <= FAINT * xs.length * middleX ** 2 || yy <= FAINT * ys.length * middleY ** 2 || xx === 0 || yy === 0)
		return null;
	return Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
}

const FAINT = 1e-24;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
