import { xlog2 } from './gain.ts';
import type { TableSearch } from './table.ts';
import type { Seconds } from './types.ts';

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
	const { n, weights, sameRepair } = small;
	const least = partingSeconds(small);
	const perBit = leastPerBit(small);
	const alone = sameRepair.every((mask, i) => mask === 1 << i);
	const own = weights.map(xlog2);
	const others: Int32Array[] = [];
	for (let i = 0; i < n; i++) {
		const list: number[] = [];
		for (let j = 0; j < n; j++) if (!(((sameRepair[i] as number) >> j) & 1)) list.push(j);
		others.push(Int32Array.from(list.sort((a, b) => (least[i * n + b] as number) - (least[i * n + a] as number))));
	}
	return (mask) => {
		let parting = 0;
		let spread = xlog2(weightOf(mask));
		for (let rest = mask; rest !== 0; rest &= rest - 1) {
			const i = 31 - Math.clz32(rest & -rest);
			if (alone) spread -= own[i] as number;
			else if ((mask & (sameRepair[i] as number) & ((1 << i) - 1)) === 0)
				spread -= xlog2(weightOf(mask & (sameRepair[i] as number)));
			for (const j of others[i] as Int32Array) {
				if (!((mask >> j) & 1)) continue;
				parting += (weights[i] as number) * (least[i * n + j] as number);
				break;
			}
		}
		return Math.max(parting, spread * perBit * (1 - 1e-12));
	};
}

/** The most suspects, parted from each other, that the exact solver takes: the bits of a positive 32-bit mask. */
export const MOST_EXACT = 30;

/** A small problem cut out of a search: suspects as bits, checks as parts of them, needless checks left out. */
export interface Small {
	/** Classes of suspects that its checks tell apart, at most 30; class i is bit i. */
	readonly n: number;
	/** The suspects of each class. */
	readonly members: readonly (readonly number[])[];
	readonly weights: Float64Array;
	/** For each class, the mask of those with the same repair, itself included. */
	readonly sameRepair: Int32Array;
	/** The checks, by their number in the table. */
	readonly checks: Int32Array;
	/** Parts of check c: `partMask[firstPart[c]]` up to `firstPart[c + 1]`. */
	readonly firstPart: Int32Array;
	readonly partMask: Int32Array;
	/** Seconds of the check when that part is what it shows: what it gives back taken off, no walk. */
	readonly partSeconds: Float64Array;
	readonly place: Int32Array;
	readonly seconds: Seconds;
	readonly settled: number;
}

interface Split {
	readonly check: number;
	readonly place: number;
	readonly masks: readonly number[];
	readonly seconds: readonly number[];
}

/** Splits positions into classes that no check tells apart. */
function split(search: TableSearch, suspects: Int32Array, checks: Int32Array): { classOf: Int32Array; n: number } {
	const { cells, suspects: width } = search.table;
	const size = suspects.length;
	let classOf = new Int32Array(size);
	let n = Math.min(1, size);
	for (let c = 0; c < checks.length && n < size; c++) {
		const row = (checks[c] as number) * width;
		const finer = new Int32Array(size);
		n = 0;
		for (let i = 0; i < size; i++) {
			const outcome = cells[row + (suspects[i] as number)];
			let j = 0;
			while (j < i && !(classOf[j] === classOf[i] && cells[row + (suspects[j] as number)] === outcome)) j++;
			finer[i] = j < i ? (finer[j] as number) : n++;
		}
		classOf = finer;
	}
	return { classOf, n };
}

/**
 * Whether making `a` in place of `b` never costs more: each part of `a` lies within one of `b`'s that takes no less.
 * Parts are numbered by their lowest suspect, so the first parts always meet.
 */
function covers(a: Split, b: Split, finer: boolean): boolean {
	const mine = a.masks;
	const theirs = b.masks;
	if (((mine[0] as number) & ~(theirs[0] as number)) !== 0 || a.place !== b.place) return false;
	if (finer ? mine.length < theirs.length : mine.length !== theirs.length) return false;
	for (let i = 0; i < mine.length; i++) {
		const mask = mine[i] as number;
		let j = 0;
		while ((mask & (theirs[j] as number)) === 0) j++;
		if ((mask & ~(theirs[j] as number)) !== 0 || (a.seconds[i] as number) > (b.seconds[j] as number)) return false;
	}
	return true;
}

/**
 * Cuts a small problem out of a search.
 * @param suspects those left, at most 30 of them that the checks tell apart.
 * @param checks those that may be made.
 */
export function cutSmall(search: TableSearch, suspects: Int32Array, checks: Int32Array): Small {
	const { table, seconds } = search;
	const { classOf, n } = split(search, suspects, checks);
	const members: number[][] = Array.from({ length: n }, () => []);
	const weights = new Float64Array(n);
	suspects.forEach((suspect, i) => {
		const to = classOf[i] as number;
		(members[to] as number[]).push(suspect);
		weights[to] = (weights[to] as number) + (search.weights[suspect] as number);
	});
	const repairOf = members.map((list, i) => {
		const repair = search.repairs[list[0] as number] as number;
		// suspects that no check parts but that want different repairs are a class of their own
		return list.every((suspect) => search.repairs[suspect] === repair) ? repair : -1 - i;
	});
	const sameRepair = Int32Array.from(repairOf, (repair) =>
		repairOf.reduce((mask, m, j) => (m === repair ? mask | (1 << j) : mask), 0),
	);
	const kept: Split[] = [];
	for (const check of checks) {
		const masks: number[] = [];
		const outcomes: number[] = [];
		for (let i = 0; i < n; i++) {
			const outcome = table.cells[check * table.suspects + ((members[i] as number[])[0] as number)] as number;
			const at = outcomes.indexOf(outcome);
			if (at < 0) {
				outcomes.push(outcome);
				masks.push(1 << i);
			} else masks[at] = (masks[at] as number) | (1 << i);
		}
		if (masks.length < 2) continue;
		const base = seconds.base[check] as number;
		const back = seconds.refundOutcome[check] as number;
		const parting: Split = {
			check,
			place: seconds.place[check] as number,
			masks,
			seconds: outcomes.map((outcome) => (outcome === back ? base - (seconds.refund[check] as number) : base)),
		};
		const finer = search.settled >= 1;
		if (kept.some((other) => covers(other, parting, finer))) continue;
		let size = 0;
		for (const other of kept) if (!covers(parting, other, finer)) kept[size++] = other;
		kept.length = size;
		kept.push(parting);
	}
	const firstPart = new Int32Array(kept.length + 1);
	kept.forEach((parting, i) => {
		firstPart[i + 1] = (firstPart[i] as number) + parting.masks.length;
	});
	return {
		n,
		members,
		weights,
		sameRepair: sameRepair,
		checks: Int32Array.from(kept, (parting) => parting.check),
		firstPart,
		partMask: Int32Array.from(kept.flatMap((parting) => parting.masks)),
		partSeconds: Float64Array.from(kept.flatMap((parting) => parting.seconds)),
		place: Int32Array.from(kept, (parting) => parting.place),
		seconds,
		settled: search.settled,
	};
}
