import { Scorer, xlog2 } from './gain.ts';
import { comesFirst, rateOf } from './rank.ts';
import type { Search } from './search.ts';
import { secondsFrom } from './seconds.ts';

/** Suspects below this share of the heaviest are left out of play: two wrong answers away, at an error rate of .05. */
export const FAINT = 0.003;

/** A check that tells less than this, in bits, is not worth asking. */
export const LEAST_TOLD = 1e-6;

/** The checks still to come tell less a second than the one just made: measured so that `expected` comes true on average. */
const SLOWER = 1.5;

/** Entropy, in bits, that is left when one mend holds the share `settled` and one other the rest. */
function entropyAt(settled: number): number {
	return -xlog2(settled) - xlog2(1 - settled);
}

/**
 * Plays a check and what follows to the end when answers may be wrong: every answer that may come is followed, right
 * ones and wrong ones, weights are shifted and never struck out, and the next check is the one with the most
 * information a second. A branch that is hardly likely is guessed from its entropy. It keeps its working space.
 */
export class SoftPlayer {
	/** Cells of the outcome table looked at so far. */
	looked = 0;
	/** Cells that may be looked at before a line of play is given up. */
	limit = Number.POSITIVE_INFINITY;
	/** A branch less likely than this is not played but guessed. */
	branch = 0.02;
	/** Seconds lost by ending on a wrong mend. */
	wrongSeconds = 0;
	/** The part of the cost last told that stands for ending on a wrong mend. */
	regret = 0;

	private readonly search: Search;
	private readonly errors: ArrayLike<number>;
	private readonly scorer: Scorer;
	private readonly weights: Float64Array[] = [];
	private readonly suspects: Int32Array[] = [];
	private readonly checks: Int32Array[] = [];

	constructor(search: Search, errors: ArrayLike<number>) {
		this.search = search;
		this.errors = errors;
		this.scorer = new Scorer(search);
	}

	/**
	 * Expected seconds from making `check` to the end, those lost by ending on a wrong mend included.
	 * @param suspects those in question, those with one mend side by side; the weights are the search's, of any sum.
	 * @param checks those that may be made, `check` among them; quickest with those that are alike side by side.
	 * @param rate bits a second of `check`, to guess by.
	 * @param most the line is given up, as infinite, once it costs this much.
	 * @returns NaN where the limit of cells was passed.
	 */
	cost(check: number, suspects: Int32Array, checks: Int32Array, here: number, rate: number, most: number): number {
		this.regret = 0;
		const weights = this.level(0);
		let sum = 0;
		for (const suspect of suspects) sum += this.search.weights[suspect] as number;
		for (const suspect of suspects) weights[suspect] = (this.search.weights[suspect] as number) / sum;
		(this.suspects[0] as Int32Array).set(suspects);
		(this.checks[0] as Int32Array).set(checks);
		return this.make(check, 0, suspects.length, checks.length, 1, here, rate, most);
	}

	private level(depth: number): Float64Array {
		const { table } = this.search;
		this.weights[depth] ??= new Float64Array(table.suspects);
		this.suspects[depth] ??= new Int32Array(table.suspects);
		this.checks[depth] ??= new Int32Array(table.checks);
		return this.weights[depth];
	}

	/** Makes a check at a level whose weights sum to 1 and follows each answer; `chance` is that of being here. */
	private make(
		check: number,
		depth: number,
		size: number,
		checksSize: number,
		chance: number,
		here: number,
		rate: number,
		most: number,
	): number {
		const { table, seconds } = this.search;
		const weights = this.weights[depth] as Float64Array;
		const suspects = this.suspects[depth] as Int32Array;
		const count = table.counts[check] as number;
		const row = check * table.suspects;
		const error = count > 1 ? (this.errors[check] as number) : 0;
		const wrong = count > 1 ? error / (count - 1) : 0;
		const next = this.level(depth + 1);
		const place = seconds.place[check] as number;
		let total = chance * secondsFrom(seconds, here, check);
		for (let answer = 0; answer < count; answer++) {
			let sum = 0;
			for (let i = 0; i < size; i++) {
				const suspect = suspects[i] as number;
				const outcome = table.cells[row + suspect] as number;
				const likely = outcome === answer ? 1 - error : outcome === count ? 1 / count : wrong;
				const weight = (weights[suspect] as number) * likely;
				next[suspect] = weight;
				sum += weight;
			}
			if (sum <= 0) continue;
			if (answer === seconds.refundOutcome[check]) {
				total -= chance * sum * (seconds.refund[check] as number); // mended: nothing follows
				continue;
			}
			for (let i = 0; i < size; i++) {
				const suspect = suspects[i] as number;
				next[suspect] = (next[suspect] as number) / sum;
			}
			total += this.goOn(check, depth + 1, size, checksSize, chance * sum, place, rate);
			if (Number.isNaN(total)) return total;
			if (total >= most) return Number.POSITIVE_INFINITY;
		}
		return total;
	}

	/** Goes on at a level whose weights have just been laid in, `made` being the check that led to it. */
	private goOn(
		made: number,
		depth: number,
		size: number,
		checksSize: number,
		chance: number,
		here: number,
		rate: number,
	): number {
		const { settled } = this.search;
		const { heaviest, entropy } = this.standing(depth, size);
		if (heaviest >= settled) return this.end(chance, 1 - heaviest);
		if (chance < this.branch) {
			const more = rate > 0 ? (SLOWER * Math.max(0, entropy - entropyAt(settled))) / rate : 0;
			return chance * more + this.end(chance, (1 - settled) / 2);
		}
		const kept = this.dropFaint(depth, size);
		this.looked += kept * checksSize;
		if (this.looked > this.limit) return Number.NaN;
		const { scorer } = this;
		scorer.weights = this.weights[depth] as Float64Array;
		scorer.lay(this.suspects[depth] as Int32Array, 0, kept);
		const from = this.checks[depth - 1] as Int32Array;
		const checks = this.checks[depth] as Int32Array;
		let left = 0;
		let best = -1;
		let bestRate = 0;
		let bestSpent = 0;
		for (let i = 0; i < checksSize; i++) {
			const check = from[i] as number;
			if (check === made) continue; // asked again, it would repeat its error
			const error = this.errors[check] as number;
			const told = scorer.information(check, error);
			if (told < LEAST_TOLD) continue;
			checks[left++] = check;
			const spent = scorer.spent(check, secondsFrom(this.search.seconds, here, check), error);
			const each = rateOf(told, spent);
			if (best >= 0 && !comesFirst(each, spent, check, bestRate, bestSpent, best)) continue;
			best = check;
			bestRate = each;
			bestSpent = spent;
		}
		if (best < 0) return this.end(chance, 1 - heaviest);
		return this.make(best, depth, kept, left, chance, here, bestRate, Number.POSITIVE_INFINITY);
	}

	/** What it costs to end here, with this chance of being here and of being wrong. */
	private end(chance: number, wrong: number): number {
		const lost = chance * wrong * this.wrongSeconds;
		this.regret += lost;
		return lost;
	}

	/** The share of the heaviest mend, and the entropy over mends in bits, of weights just laid in. */
	private standing(depth: number, size: number): { heaviest: number; entropy: number } {
		const { mends } = this.search;
		const weights = this.weights[depth] as Float64Array;
		const before = this.suspects[depth - 1] as Int32Array;
		let heaviest = 0;
		let entropy = 0;
		let run = 0;
		for (let i = 0; i < size; i++) {
			const suspect = before[i] as number;
			if (i > 0 && mends[suspect] !== mends[before[i - 1] as number]) {
				entropy -= xlog2(run);
				run = 0;
			}
			run += weights[suspect] as number;
			if (run > heaviest) heaviest = run;
		}
		return { heaviest, entropy: entropy - xlog2(run) };
	}

	/** Lists the suspects of a level that are not faint, their weights scaled to sum to 1; returns how many. */
	private dropFaint(depth: number, size: number): number {
		const weights = this.weights[depth] as Float64Array;
		const before = this.suspects[depth - 1] as Int32Array;
		const suspects = this.suspects[depth] as Int32Array;
		let top = 0;
		for (let i = 0; i < size; i++) top = Math.max(top, weights[before[i] as number] as number);
		let kept = 0;
		let sum = 0;
		for (let i = 0; i < size; i++) {
			const suspect = before[i] as number;
			const weight = weights[suspect] as number;
			if (weight < top * FAINT) continue;
			suspects[kept++] = suspect;
			sum += weight;
		}
		for (let i = 0; i < kept; i++) weights[suspects[i] as number] = (weights[suspects[i] as number] as number) / sum;
		return kept;
	}
}
