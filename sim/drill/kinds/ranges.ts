import type { Range } from '../types.ts';

/** Rising numbers as ranges. */
export function rangesOf(numbers: readonly number[]): Range[] {
	const ranges: { from: number; to: number }[] = [];
	for (const number of numbers) {
		const last = ranges.at(-1);
		if (last && number === last.to + 1) last.to = number;
		else ranges.push({ from: number, to: number });
	}
	return ranges;
}
