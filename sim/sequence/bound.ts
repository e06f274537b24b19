import { xlog2 } from './gain.ts';
import type { Small } from './small.ts';

/**
 * Seconds it takes at the least to tell each suspect from each other, `least[i * n + j]` on i's side, by one check:
 * whatever the order of checks, the path of i holds one that parts it from j.
 */
function partingSeconds(small: Small): Float64Array {
	const { n } = small;
	const least = new Float64Array(n * n).fill(Number.POSITIVE_INFINITY);
	for (let part = 0; part < small.partMask.length; part++) {
		const mask = small.partMask[part] as number;
		const takes = small.partSeconds[part] as number;
		for (let i = 0; i < n; i++) {
			if (!((mask >> i) & 1)) continue;
			for (let j = 0; j < n; j++) {
				if (!((mask >> j) & 1) && takes < (least[i * n + j] as number)) least[i * n + j] = takes;
			}
		}
	}
	return least;
}

/** The least seconds for one bit: a check of k outcomes tells log2 k bits at most. */
function leastPerBit(small: Small): number {
	let least = Number.POSITIVE_INFINITY;
	for (let check = 0; check < small.checks.length; check++) {
		const start = small.firstPart[check] as number;
		const end = small.firstPart[check + 1] as number;
		let takes = Number.POSITIVE_INFINITY;
		for (let part = start; part < end; part++) takes = Math.min(takes, small.partSeconds[part] as number);
		least = Math.min(least, takes / Math.log2(end - start));
	}
	return least;
}

/**
 * A lower bound on the cost of a set of suspects that has not ended: the larger of two.
 * - Each suspect's path parts it from the one dearest to tell it from.
 * - Entropy: each check tells so many bits at most (Huffman's bound, loosened to the entropy).
 *
 * With `settled` below 1 a search may end with others left, and neither holds: the bound is 0.
 * @returns seconds times weight for a mask of two suspects or more.
 */
export function boundFor(small: Small, weightOf: (mask: number) => number): (mask: number) => number {
	if (small.settled < 1) return () => 0;
	const { n, weights, sameMend } = small;
	const least = partingSeconds(small);
	const perBit = leastPerBit(small);
	const alone = sameMend.every((mask, i) => mask === 1 << i);
	const own = weights.map(xlog2);
	const others: Int32Array[] = [];
	for (let i = 0; i < n; i++) {
		const list: number[] = [];
		for (let j = 0; j < n; j++) if (!(((sameMend[i] as number) >> j) & 1)) list.push(j);
		others.push(Int32Array.from(list.sort((a, b) => (least[i * n + b] as number) - (least[i * n + a] as number))));
	}
	return (mask) => {
		let parting = 0;
		let spread = xlog2(weightOf(mask));
		for (let rest = mask; rest !== 0; rest &= rest - 1) {
			const i = 31 - Math.clz32(rest & -rest);
			if (alone) spread -= own[i] as number;
			else if ((mask & (sameMend[i] as number) & ((1 << i) - 1)) === 0)
				spread -= xlog2(weightOf(mask & (sameMend[i] as number)));
			for (const j of others[i] as Int32Array) {
				if (!((mask >> j) & 1)) continue;
				parting += (weights[i] as number) * (least[i * n + j] as number);
				break;
			}
		}
		return Math.max(parting, spread * perBit * (1 - 1e-12));
	};
}
