import { boundFor, type Small } from './bound.ts';

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
		sums[mask] = (sums[mask & (mask - 1)] as number) + (values[from + lowestBit(mask)] as number);
	}
	return sums;
}

const lowestBit = (mask: number): number => 31 - Math.clz32(mask & -mask);

/** Whether a set holds one suspect, or none. */
const isAlone = (mask: number): boolean => (mask & (mask - 1)) === 0;

/** What is known of each set of suspects: NaN until told. Few sets are ever met, so many bits want a map, few a plain array. */
interface ValueStore {
	get(at: number): number;
	set(at: number, value: number): void;
}

function makeStore(size: number): ValueStore {
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
	return new Solver(small, most);
}

class Solver implements Exact {
	looked = 0;
	private readonly small: Small;
	private readonly most: number;
	private readonly low: Float64Array;
	private readonly high: Float64Array;
	private readonly bound: (mask: number) => number;
	private readonly costs: ValueStore;
	private readonly bounds: ValueStore;
	/** By depth: the checks still to be tried, what each costs at the least, and the best of those tried. */
	private readonly orders: Int32Array[] = [];
	private readonly estimates: Float64Array[] = [];
	private readonly chosen: number[] = [];

	constructor(small: Small, most: number) {
		this.small = small;
		this.most = most;
		this.low = halfSums(small.weights, 0);
		this.high = halfSums(small.weights, HALF);
		this.bound = boundFor(small, (mask) => this.weightOf(mask));
		const sets = 2 ** small.n * small.seconds.places;
		this.costs = makeStore(sets);
		this.bounds = makeStore(sets);
	}

	get over(): boolean {
		return this.looked > this.most;
	}

	cost(mask: number, here: number): number {
		return this.costBelow(Number.POSITIVE_INFINITY, mask, here, 0);
	}

	choice(mask: number, here: number): number {
		if (isAlone(mask) || this.ends(mask)) return -1;
		this.boundOf(mask, here);
		this.explore(Number.POSITIVE_INFINITY, mask, here, 0);
		return this.chosen[0] as number;
	}

	private weightOf(mask: number): number {
		const high = this.small.n > HALF ? (this.high[mask >>> HALF] as number) : 0;
		return (this.low[mask & LOW] as number) + high;
	}

	private ends(mask: number): boolean {
		const { sameRepair, settled } = this.small;
		if ((mask & ~(sameRepair[lowestBit(mask)] as number)) === 0) return true;
		if (settled >= 1) return false;
		const needed = settled * this.weightOf(mask);
		for (let rest = mask; rest !== 0; ) {
			const same = mask & (sameRepair[lowestBit(rest)] as number);
			if (this.weightOf(same) >= needed) return true;
			rest &= ~same;
		}
		return false;
	}

	/** The best proven lower bound, or the cost itself once it is known. */
	private boundOf(mask: number, here: number): number {
		if (isAlone(mask)) return 0;
		const at = mask * this.small.seconds.places + here;
		let known = this.bounds.get(at);
		if (Number.isNaN(known)) {
			known = this.ends(mask) ? 0 : this.bound(mask);
			this.bounds.set(at, known);
		}
		return known;
	}

	/** Cost of a check if everything after it went as well as its bound allows; -1 where it parts nobody. */
	private estimate(check: number, mask: number, here: number): number {
		const { firstPart, partMask, partSeconds, seconds } = this.small;
		const end = firstPart[check + 1] as number;
		const place = this.small.place[check] as number;
		let sum = 0;
		for (let part = firstPart[check] as number; part < end; part++) {
			const left = mask & (partMask[part] as number);
			if (left === mask) return -1;
			if (left !== 0) sum += (partSeconds[part] as number) * this.weightOf(left) + this.boundOf(left, place);
		}
		return sum + (seconds.walk[here * seconds.places + place] as number) * this.weightOf(mask);
	}

	/** The least cost where it is below `limit`, else a lower bound of `limit` or more. */
	private costBelow(limit: number, mask: number, here: number, depth: number): number {
		if (isAlone(mask)) return 0;
		const known = this.costs.get(mask * this.small.seconds.places + here);
		if (!Number.isNaN(known)) return known;
		const least = this.boundOf(mask, here);
		if (least >= limit) return least;
		return this.ends(mask) ? 0 : this.explore(limit, mask, here, depth);
	}

	/** The same for a set that has not ended, by trying its checks; the best of them is left in `chosen`. */
	private explore(limit: number, mask: number, here: number, depth: number): number {
		const at = mask * this.small.seconds.places + here;
		this.chosen[depth] = -1;
		let tries = this.list(mask, here, depth);
		if (this.over) return 0;
		if (tries === 0) {
			this.costs.set(at, 0);
			return 0;
		}
		const order = this.orders[depth] as Int32Array;
		const guess = this.estimates[depth] as Float64Array;
		let best = limit;
		let proven = Number.POSITIVE_INFINITY;
		while (tries > 0) {
			let least = 0;
			for (let i = 1; i < tries; i++) if ((guess[i] as number) < (guess[least] as number)) least = i;
			const check = order[least] as number;
			const estimate = guess[least] as number;
			if (estimate >= best * (1 - TIE)) {
				proven = Math.min(proven, estimate);
				break;
			}
			tries--;
			guess.copyWithin(least, least + 1, tries + 1);
			order.copyWithin(least, least + 1, tries + 1);
			const total = this.follow(check, best, mask, here, depth);
			if (this.over) return 0;
			if (total < best * (1 - TIE)) {
				best = total;
				this.chosen[depth] = check;
			}
			proven = Math.min(proven, total);
		}
		if (this.chosen[depth] === -1) {
			this.bounds.set(at, Math.max(this.bounds.get(at), proven));
			return proven;
		}
		this.costs.set(at, best);
		this.bounds.set(at, best);
		return best;
	}

	/** Lists the checks that part a set, with their estimates; returns how many. */
	private list(mask: number, here: number, depth: number): number {
		const { length } = this.small.checks;
		this.orders[depth] ??= new Int32Array(length);
		this.estimates[depth] ??= new Float64Array(length);
		const order = this.orders[depth];
		const guess = this.estimates[depth];
		let tries = 0;
		for (let check = 0; check < length; check++) {
			const value = this.estimate(check, mask, here);
			if (value < 0) continue;
			order[tries] = check;
			guess[tries++] = value;
		}
		this.looked += length;
		return tries;
	}

	/** What a check costs with all that follows, as long as that may be below `best`; else a bound of `best` or more. */
	private follow(check: number, best: number, mask: number, here: number, depth: number): number {
		const { firstPart, partMask, place: places } = this.small;
		const begin = firstPart[check] as number;
		const end = firstPart[check + 1] as number;
		const place = places[check] as number;
		// bounds may have risen since it was listed
		let total = this.estimate(check, mask, here);
		for (let part = begin; part < end && total < best; part++) {
			const left = mask & (partMask[part] as number);
			if (left === 0) continue;
			const least = this.boundOf(left, place);
			total += this.costBelow(best - total + least, left, place, depth + 1) - least;
			if (this.over) return 0;
		}
		return total;
	}
}
