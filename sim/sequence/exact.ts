import { boundFor } from './bound.ts';
import type { Small } from './small.ts';

/** The exact solver of a small problem. Suspects left are the bits of a mask; all costs are seconds times weight. */
export interface Exact {
	/** The least cost from here on, for a tech who stands at `here`. */
	cost(mask: number, here: number): number;
	/** The check that reaches it (an index into `small.checks`); -1 where the search ends. */
	choice(mask: number, here: number): number;
	/** Checks tried so far, each time one was tried on a set of suspects. */
	readonly looked: number;
	/** Whether the limit was passed: costs and choices asked for since then mean nothing. */
	readonly over: boolean;
}

/** Costs nearer than this share of each other are one cost: rounding must not choose between checks. */
const TIE = 1e-12;

/** Half of a mask's bits: sums over a mask are read from two tables of this many bits. */
const HALF = 15;
const LOW = (1 << HALF) - 1;

function halfSums(values: Float64Array, from: number): Float64Array {
	const bits = Math.max(0, Math.min(HALF, values.length - from));
	const sums = new Float64Array(1 << bits);
	for (let mask = 1; mask < sums.length; mask++) {
		const low = 31 - Math.clz32(mask & -mask);
		sums[mask] = (sums[mask & (mask - 1)] as number) + (values[from + low] as number);
	}
	return sums;
}

/** What is known of each set of suspects: NaN until told. Few sets are ever met, so many bits want a map, few a plain array. */
interface Store {
	get(at: number): number;
	set(at: number, value: number): void;
}

function makeStore(size: number): Store {
	if (size <= 1 << 14) {
		const values = new Float64Array(size).fill(Number.NaN);
		return {
			get: (at) => values[at] as number,
			set: (at, value) => {
				values[at] = value;
			},
		};
	}
	const values = new Map<number, number>();
	return {
		get: (at) => values.get(at) ?? Number.NaN,
		set: (at, value) => {
			values.set(at, value);
		},
	};
}

/**
 * Solves a small problem: depth first, checks in rising order of a lower bound, left off once the bound reaches the
 * best found or what the caller can use (a set left off so keeps the better bound and may be met again).
 * @param most how many checks to try (see `looked`) before giving up.
 */
export function solveExactly(small: Small, most = Number.POSITIVE_INFINITY): Exact {
	const { n, seconds, checks, firstPart, partMask, partSeconds, sameMend, settled } = small;
	const low = halfSums(small.weights, 0);
	const high = halfSums(small.weights, HALF);
	const weightOf = (mask: number) => (low[mask & LOW] as number) + (n > HALF ? (high[mask >>> HALF] as number) : 0);
	const costs = makeStore(2 ** n * seconds.places);
	const bounds = makeStore(2 ** n * seconds.places);
	const bound = boundFor(small, weightOf);
	const orders: Int32Array[] = [];
	const estimates: Float64Array[] = [];
	let looked = 0;

	function ends(mask: number): boolean {
		const lowest = 31 - Math.clz32(mask & -mask);
		if ((mask & ~(sameMend[lowest] as number)) === 0) return true;
		if (settled >= 1) return false;
		const needed = settled * weightOf(mask);
		for (let rest = mask; rest !== 0; ) {
			const same = mask & (sameMend[31 - Math.clz32(rest & -rest)] as number);
			if (weightOf(same) >= needed) return true;
			rest &= ~same;
		}
		return false;
	}

	/** The best proven lower bound, or the cost itself once it is known. */
	function boundOf(mask: number, here: number): number {
		if ((mask & (mask - 1)) === 0) return 0;
		const at = mask * seconds.places + here;
		let known = bounds.get(at);
		if (Number.isNaN(known)) {
			known = ends(mask) ? 0 : bound(mask);
			bounds.set(at, known);
		}
		return known;
	}

	/** Cost of a check if everything after it went as well as its bound allows; -1 where it parts nobody. */
	function estimate(check: number, mask: number, here: number): number {
		const end = firstPart[check + 1] as number;
		const place = small.place[check] as number;
		let sum = 0;
		for (let part = firstPart[check] as number; part < end; part++) {
			const left = mask & (partMask[part] as number);
			if (left === mask) return -1;
			if (left !== 0) sum += (partSeconds[part] as number) * weightOf(left) + boundOf(left, place);
		}
		return sum + (seconds.walk[here * seconds.places + place] as number) * weightOf(mask);
	}

	/** The least cost where it is below `limit`, else a lower bound of `limit` or more. */
	function cost(mask: number, here: number, depth: number, limit: number, note: ((check: number) => void) | null) {
		if ((mask & (mask - 1)) === 0) return 0;
		const at = mask * seconds.places + here;
		if (note === null) {
			const known = costs.get(at);
			if (!Number.isNaN(known)) return known;
			const least = boundOf(mask, here);
			if (least >= limit) return least;
		}
		if (ends(mask)) return 0;
		orders[depth] ??= new Int32Array(checks.length);
		estimates[depth] ??= new Float64Array(checks.length);
		const order = orders[depth];
		const guess = estimates[depth];
		let tries = 0;
		for (let check = 0; check < checks.length; check++) {
			const value = estimate(check, mask, here);
			if (value < 0) continue;
			order[tries] = check;
			guess[tries++] = value;
		}
		looked += checks.length;
		if (looked > most) return 0;
		if (tries === 0) {
			costs.set(at, 0);
			return 0;
		}
		let best = limit;
		let proven = Number.POSITIVE_INFINITY;
		let found = false;
		while (tries > 0) {
			let least = 0;
			for (let i = 1; i < tries; i++) if ((guess[i] as number) < (guess[least] as number)) least = i;
			const check = order[least] as number;
			const place = small.place[check] as number;
			let total = guess[least] as number;
			if (total >= best * (1 - TIE)) {
				proven = Math.min(proven, total);
				break;
			}
			tries--;
			guess.copyWithin(least, least + 1, tries + 1);
			order.copyWithin(least, least + 1, tries + 1);
			const end = firstPart[check + 1] as number;
			const walk = (seconds.walk[here * seconds.places + place] as number) * weightOf(mask);
			total = walk;
			// bounds may have risen since the estimate: sum again
			for (let part = firstPart[check] as number; part < end; part++) {
				const left = mask & (partMask[part] as number);
				if (left !== 0) total += (partSeconds[part] as number) * weightOf(left) + boundOf(left, place);
			}
			for (let part = firstPart[check] as number; part < end && total < best; part++) {
				const left = mask & (partMask[part] as number);
				if (left === 0) continue;
				const least = boundOf(left, place);
				total += cost(left, place, depth + 1, best - total + least, null) - least;
				if (looked > most) return 0;
			}
			if (total < best * (1 - TIE)) {
				best = total;
				found = true;
				note?.(check);
			}
			proven = Math.min(proven, total);
		}
		if (!found) {
			bounds.set(at, Math.max(bounds.get(at), proven));
			return proven;
		}
		costs.set(at, best);
		bounds.set(at, best);
		return best;
	}

	return {
		cost: (mask, here) => cost(mask, here, 0, Number.POSITIVE_INFINITY, null),
		choice(mask, here) {
			let chosen = -1;
			boundOf(mask, here);
			cost(mask, here, 0, Number.POSITIVE_INFINITY, (check) => {
				chosen = check;
			});
			return chosen;
		},
		get looked() {
			return looked;
		},
		get over() {
			return looked > most;
		},
	};
}
