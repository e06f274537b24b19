import { type Rows, rowsOf, type TableSearch } from './table.ts';

/** x log2 x, 0 at 0. */
export function xlog2(x: number): number {
	return x > 0 ? x * Math.log2(x) : 0;
}

/**
 * Scores checks over a stretch of suspects: how much each tells about the repair that is needed, and what it takes. The stretch is
 * laid down first, then one check after another is scored on it. It keeps its working space between calls, so the answers of one
 * call are read before the next.
 *
 * What a check tells is the mutual information of its answer and the repair, I = H(answer) - H(answer | repair), in bits
 * times the weight in question. An answer is wrong with chance `error`, each wrong one as likely as the next.
 */
export class Scorer {
	/** Weight of the suspects laid down. */
	weight = 0;
	/** The weights it goes by: the search's own until others are laid in. */
	weights: Float64Array;
	/** Whether the check last scored shows two of them different outcomes. */
	parts = false;
	/** Weight by outcome as predicted, of the check last scored; one more entry for those who predict nothing. */
	readonly masses: Float64Array;

	/** Of the check being scored: outcomes, the chance of a right answer above a wrong one's, of each wrong one, and its doubt in bits. */
	private readonly odds = { count: 1, right: 1, wrong: 0, doubt: 0 };
	private readonly search: TableSearch;
	private readonly rows: Rows;
	private readonly group: Float64Array;
	/** Bits of an answer of which nothing is predicted, and of one that may be wrong, by check. */
	private readonly blank: Float64Array;
	private readonly doubt: Float64Array;
	private readonly doubtFor: Float64Array;
	/** The stretch, how often one was laid down, and by suspect when it was last in one. */
	private stretch: Int32Array = new Int32Array();
	private from = 0;
	private to = 0;
	private turn = 0;
	private readonly seen: Int32Array;
	/** By repair, how many of the stretch it clears, and their weight. */
	private readonly members: Int32Array;
	private readonly held: Float64Array;
	/** Bits times weight of the stretch by itself. */
	private whole = 0;
	/** The check last scored, and what it told: the next may be alike. */
	private last = -1;
	private lastError = 0;
	private lastByRepair = true;
	private told = 0;

	constructor(search: TableSearch) {
		this.search = search;
		this.weights = search.weights;
		const { counts, suspects } = search.table;
		let most = 1;
		for (const count of counts) most = Math.max(most, count);
		this.rows = rowsOf(search.table, search.repairs);
		this.masses = new Float64Array(most + 1);
		this.group = new Float64Array(most + 1);
		this.blank = Float64Array.from(counts, (count) => Math.log2(count));
		this.doubt = new Float64Array(counts.length);
		this.doubtFor = new Float64Array(counts.length);
		this.seen = new Int32Array(suspects);
		let highest = 0;
		for (const repair of search.repairs) highest = Math.max(highest, repair);
		this.members = new Int32Array(highest + 1);
		this.held = new Float64Array(highest + 1);
	}

	/**
	 * Lays down the suspects that checks are scored on from here.
	 * @param suspects those left, from `from` up to but not including `to`; those with one repair side by side. Not copied.
	 */
	lay(suspects: Int32Array, from: number, to: number): void {
		const { repairs } = this.search;
		const { weights, seen, members, held } = this;
		this.stretch = suspects;
		this.from = from;
		this.to = to;
		this.turn++;
		this.last = -1;
		let all = 0;
		let before = -1;
		for (let at = from; at < to; at++) {
			const suspect = suspects[at] as number;
			const repair = repairs[suspect] as number;
			const weight = weights[suspect] as number;
			if (repair !== before) {
				members[repair] = 0;
				held[repair] = 0;
			}
			before = repair;
			seen[suspect] = this.turn;
			members[repair] = (members[repair] as number) + 1;
			held[repair] = (held[repair] as number) + weight;
			all += weight;
		}
		this.weight = all;
		this.whole = xlog2(all);
	}

	/**
	 * Information of a check, in bits times weight, over the suspects laid down.
	 * @param error chance of a wrong answer, 0 to below 1.
	 * @param byRepair false: count what it tells about the suspect, not only about the repair.
	 */
	information(check: number, error = 0, byRepair = true): number {
		const alike = this.rows.alike[check] as number;
		if (alike === this.last && error === this.lastError && byRepair === this.lastByRepair) return this.told;
		this.last = alike;
		this.lastError = error;
		this.lastByRepair = byRepair;
		this.told = this.score(check, error, byRepair);
		return this.told;
	}

	private score(check: number, error: number, byRepair: boolean): number {
		const { masses, weight } = this;
		const count = this.search.table.counts[check] as number;
		const wrong = count > 1 ? error / (count - 1) : 0;
		const right = 1 - error - wrong;
		const doubt = this.doubtOf(check, error, count);
		const { odds } = this;
		odds.count = count;
		odds.right = right;
		odds.wrong = wrong;
		odds.doubt = doubt;
		// between suspects with one repair it is of no use
		const idle = this.sum(check, byRepair);
		if (!this.parts || count === 1) return 0;
		const silent = masses[count] as number;
		const known = weight - silent;
		let told = this.whole - idle - silent * (this.blank[check] as number) - known * doubt;
		for (let outcome = 0; outcome < count; outcome++) {
			told -= xlog2(right * (masses[outcome] as number) + wrong * known + silent / count);
		}
		return told > 1e-12 * weight ? told : 0;
	}

	/**
	 * Sums weight by outcome, and sees whether the check parts anybody. Goes through those who may show another outcome than most:
	 * the few whom the row names, or the stretch where that is shorter.
	 * @returns what the check tells between suspects with one repair, bits times weight; 0 where that counts too.
	 */
	private sum(check: number, byRepair: boolean): number {
		const { count } = this.odds;
		const { table, repairs } = this.search;
		const { cells } = table;
		const { masses, group, weights, members, seen, turn, rows } = this;
		const row = check * table.suspects;
		const usual = rows.usual[check] as number;
		const begin = rows.first[check] as number;
		const end = rows.first[check + 1] as number;
		const isFew = end - begin < this.to - this.from;
		const list = isFew ? rows.others : this.stretch;
		const to = isFew ? end : this.to;
		for (let outcome = 0; outcome <= count; outcome++) masses[outcome] = 0;
		let others = 0;
		let left = this.to - this.from;
		let shown = -1;
		let differs = false;
		let idle = 0;
		for (let at = isFew ? begin : this.from; at < to; at++) {
			const suspect = list[at] as number;
			const outcome = cells[row + suspect] as number;
			if (outcome === usual || seen[suspect] !== turn) continue;
			const weight = weights[suspect] as number;
			const repair = repairs[suspect] as number;
			if (shown < 0) shown = outcome;
			else if (shown !== outcome) differs = true;
			masses[outcome] = (masses[outcome] as number) + weight;
			others += weight;
			left--;
			if (!byRepair || members[repair] === 1) continue;
			for (let each = 0; each <= count; each++) group[each] = 0;
			group[outcome] = weight;
			let sum = weight;
			let alone = 1;
			let parts = false;
			while (at + 1 < to && repairs[list[at + 1] as number] === repair) {
				const next = list[++at] as number;
				const showing = cells[row + next] as number;
				if (showing === usual || seen[next] !== turn) continue;
				const more = weights[next] as number;
				if (showing !== outcome) parts = true;
				if (showing !== shown) differs = true;
				group[showing] = (group[showing] as number) + more;
				masses[showing] = (masses[showing] as number) + more;
				sum += more;
				others += more;
				alone++;
				left--;
			}
			if (alone < (members[repair] as number)) group[usual] = Math.max(0, (this.held[repair] as number) - sum);
			else if (!parts) continue;
			idle += this.within(check);
		}
		masses[usual] = left > 0 ? Math.max(0, this.weight - others) : 0;
		this.parts = differs || (shown >= 0 && left > 0);
		return idle;
	}

	/** What a check tells between suspects with one repair, whose weights are in `group`: bits times weight. */
	private within(check: number): number {
		const { group } = this;
		const { count, right, wrong, doubt } = this.odds;
		let sum = 0;
		for (let outcome = 0; outcome < count; outcome++) sum += group[outcome] as number;
		const silent = group[count] as number;
		let told = xlog2(sum + silent) - sum * doubt - silent * (this.blank[check] as number);
		for (let outcome = 0; outcome < count; outcome++) {
			told -= xlog2(right * (group[outcome] as number) + wrong * sum + silent / count);
		}
		return told;
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

	/** Weight that the check last scored is expected to rule out: a second measure of its worth, blind to repairs. */
	shed(): number {
		let left = 0;
		for (let outcome = 0; outcome < this.odds.count; outcome++) left += (this.masses[outcome] as number) ** 2;
		return this.weight > 0 ? this.weight - left / this.weight : 0;
	}

	/** Entropy, in bits, of an answer whose right one is known but which may be given wrong. */
	private doubtOf(check: number, error: number, count: number): number {
		if (this.doubtFor[check] !== error) {
			this.doubtFor[check] = error;
			this.doubt[check] = -xlog2(1 - error) - (count - 1) * xlog2(count > 1 ? error / (count - 1) : 0);
		}
		return this.doubt[check] as number;
	}
}
