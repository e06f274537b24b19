import type { Search } from './search.ts';

/** x log2 x, 0 at 0. */
export function xlog2(x: number): number {
	return x > 0 ? x * Math.log2(x) : 0;
}

/**
 * Scores one check over a stretch of suspects: how much it tells about the mend that is needed, and what it takes.
 * It keeps its working space between calls, so the answers of one call are read before the next.
 *
 * What a check tells is the mutual information of its answer and the mend, I = H(answer) - H(answer | mend), in bits
 * times the weight in question. An answer is wrong with chance `error`, each wrong one as likely as the next.
 */
export class Scorer {
	/** Weight of the suspects last scored. */
	weight = 0;
	/** The weights it goes by: the search's own until others are laid in. */
	weights: Float64Array;
	/** Whether the check last scored shows two of them different outcomes. */
	parts = false;
	/** Weight by outcome as predicted, of the check last scored; one more entry for those who predict nothing. */
	readonly masses: Float64Array;

	private readonly search: Search;
	private readonly shared: boolean;
	private readonly group: Float64Array;
	/** Bits of an answer of which nothing is predicted, and of one that may be wrong, by check. */
	private readonly blank: Float64Array;
	private readonly doubt: Float64Array;
	private readonly doubtFor: Float64Array;

	constructor(search: Search) {
		this.search = search;
		this.weights = search.weights;
		const { counts } = search.table;
		let most = 1;
		for (const count of counts) most = Math.max(most, count);
		this.masses = new Float64Array(most + 1);
		this.group = new Float64Array(most + 1);
		this.blank = Float64Array.from(counts, (count) => Math.log2(count));
		this.doubt = new Float64Array(counts.length);
		this.doubtFor = new Float64Array(counts.length);
		this.shared = new Set(search.mends).size < search.mends.length;
	}

	/**
	 * Information of a check, in bits times weight.
	 * @param suspects those left, from `from` up to but not including `to`; those with one mend side by side.
	 * @param error chance of a wrong answer, 0 to below 1.
	 * @param byMend false: count what it tells about the suspect, not only about the mend.
	 */
	information(check: number, suspects: Int32Array, from: number, to: number, error = 0, byMend = true): number {
		const { table } = this.search;
		const { masses, weights } = this;
		const row = check * table.suspects;
		const count = table.counts[check] as number;
		masses.fill(0, 0, count + 1);
		const first = table.cells[row + (suspects[from] as number)] as number;
		let differs = 0;
		for (let at = from; at < to; at++) {
			const suspect = suspects[at] as number;
			const outcome = table.cells[row + suspect] as number;
			differs |= outcome ^ first;
			masses[outcome] = (masses[outcome] as number) + (weights[suspect] as number);
		}
		this.parts = differs !== 0;
		let weight = 0;
		for (let outcome = 0; outcome <= count; outcome++) weight += masses[outcome] as number;
		this.weight = weight;
		if (!this.parts || count === 1) return 0;
		const silent = masses[count] as number;
		const known = weight - silent;
		const wrong = count > 1 ? error / (count - 1) : 0;
		const right = 1 - error - wrong;
		let told = xlog2(weight);
		for (let outcome = 0; outcome < count; outcome++) {
			told -= xlog2(right * (masses[outcome] as number) + wrong * known + silent / count);
		}
		const doubt = this.doubtOf(check, error, count);
		told -= silent * (this.blank[check] as number) + known * doubt;
		if (this.shared && byMend) told -= this.withinMends(check, suspects, from, to, right, wrong, doubt);
		return told > 1e-12 * weight ? told : 0;
	}

	/**
	 * Seconds times weight of the check last scored, net of what it gives back, when making it takes `full` seconds.
	 * @param error as given to `information`.
	 */
	spent(check: number, full: number, error = 0): number {
		const { table, seconds } = this.search;
		const outcome = seconds.refundOutcome[check] as number;
		if (outcome < 0) return full * this.weight;
		const count = table.counts[check] as number;
		const silent = this.masses[count] as number;
		const wrong = count > 1 ? error / (count - 1) : 0;
		const shown =
			(1 - error - wrong) * (this.masses[outcome] as number) + wrong * (this.weight - silent) + silent / count;
		return full * this.weight - (seconds.refund[check] as number) * shown;
	}

	/** Entropy, in bits, of an answer whose right one is known but which may be given wrong. */
	private doubtOf(check: number, error: number, count: number): number {
		if (this.doubtFor[check] !== error) {
			this.doubtFor[check] = error;
			this.doubt[check] = -xlog2(1 - error) - (count - 1) * xlog2(count > 1 ? error / (count - 1) : 0);
		}
		return this.doubt[check] as number;
	}

	/** What a check tells between suspects with one mend, which is of no use: bits times weight. */
	private withinMends(
		check: number,
		suspects: Int32Array,
		from: number,
		to: number,
		right: number,
		wrong: number,
		doubt: number,
	): number {
		const { table, mends } = this.search;
		const { group, weights } = this;
		const row = check * table.suspects;
		const count = table.counts[check] as number;
		let idle = 0;
		let end = from;
		for (let start = from; start < to; start = end) {
			const mend = mends[suspects[start] as number];
			const first = table.cells[row + (suspects[start] as number)] as number;
			let differs = 0;
			for (end = start + 1; end < to && mends[suspects[end] as number] === mend; end++) {
				differs |= (table.cells[row + (suspects[end] as number)] as number) ^ first;
			}
			if (differs === 0) continue;
			group.fill(0, 0, count + 1);
			for (let at = start; at < end; at++) {
				const suspect = suspects[at] as number;
				const outcome = table.cells[row + suspect] as number;
				group[outcome] = (group[outcome] as number) + (weights[suspect] as number);
			}
			let sum = 0;
			for (let outcome = 0; outcome < count; outcome++) sum += group[outcome] as number;
			const silent = group[count] as number;
			idle += xlog2(sum + silent) - sum * doubt - silent * (this.blank[check] as number);
			for (let outcome = 0; outcome < count; outcome++) {
				idle -= xlog2(right * (group[outcome] as number) + wrong * sum + silent / count);
			}
		}
		return idle;
	}
}
