import type { Seconds } from './seconds.ts';
import type { OutcomeTable } from './table.ts';

/** What every chooser looks at. */
export interface Search {
	readonly table: OutcomeTable;
	/** How likely each suspect is: 0 or more, on any scale. */
	readonly weights: Float64Array;
	/** Which mend clears each suspect, as whole numbers from 0. */
	readonly mends: Int32Array;
	readonly seconds: Seconds;
	/** The share of the weight left that one mend must hold to end the search, above 0.5; 1: no other mend is left. */
	readonly settled: number;
}

/** The suspects of a search, those with one mend side by side, as `Scorer` wants them. */
export function suspectsByMend(search: Search, suspects?: readonly number[]): Int32Array {
	const list = suspects ? Int32Array.from(suspects) : Int32Array.from(search.weights, (_, suspect) => suspect);
	const mendOf = (suspect: number) => search.mends[suspect] as number;
	return list.sort((a, b) => mendOf(a) - mendOf(b) || a - b);
}

/** Numbers the names of mends from 0 in order of first appearance. */
export function numberMends(names: readonly (number | string)[]): Int32Array {
	const known = new Map<number | string, number>();
	return Int32Array.from(names, (name) => {
		const number = known.get(name) ?? known.size;
		known.set(name, number);
		return number;
	});
}
