import { Scorer } from './gain.ts';
import type { TableSearch } from './table.ts';
import { secondsFrom } from './types.ts';

/** A check that parts some of those left. */
export interface RankedCheck {
	readonly check: number;
	/** What its answer tells about the repair, in bits, 0 or more. */
	readonly gain: number;
	/** Expected seconds: walking included, what it gives back taken off. */
	readonly seconds: number;
	/** Bits a second; infinite for a free check that tells something. */
	readonly rate: number;
}

/** Bits a second of a check that tells `gain` and takes `seconds`; 0 for one that tells nothing, free or not. */
function rateOf(gain: number, seconds: number): number {
	return gain > 0 ? gain / seconds : 0;
}

/** What checks are ranked by. */
interface RankedByRate {
	readonly check: number;
	readonly seconds: number;
	readonly rate: number;
}

/**
 * Whether one check comes before another: more bits a second, then fewer seconds, then the order of the table. In single
 * precision, so that rounding in the sums never decides.
 */
function comesFirst(a: RankedByRate, b: RankedByRate): boolean {
	const rate = Math.fround(a.rate);
	const other = Math.fround(b.rate);
	if (rate !== other) return rate > other;
	const takes = Math.fround(a.seconds);
	const otherTakes = Math.fround(b.seconds);
	return takes === otherTakes ? a.check < b.check : takes < otherTakes;
}

/** The best of the checks offered since `clear`. One is kept for many choices: it makes nothing anew in a loop. */
export class BestCheck implements RankedByRate {
	/** -1 until one is offered. */
	check = -1;
	seconds = 0;
	rate = 0;
	private readonly offered = { check: -1, seconds: 0, rate: 0 };

	clear(): void {
		this.check = -1;
		this.rate = 0;
	}

	/** Offers a check that tells `gain` and takes `seconds`. */
	offer(check: number, gain: number, seconds: number): void {
		const { offered } = this;
		offered.check = check;
		offered.seconds = seconds;
		offered.rate = rateOf(gain, seconds);
		if (this.check >= 0 && !comesFirst(offered, this)) return;
		this.check = check;
		this.seconds = seconds;
		this.rate = offered.rate;
	}
}

/** What `rankChecks` may be told besides the search. */
export interface RankOptions {
	/** Where the tech stands. Default: place 0. */
	readonly here?: number;
	/** Chance of a wrong answer to each check, 0 to below 1. Default: none is ever wrong. */
	readonly errors?: ArrayLike<number>;
	/** A scorer of this search to use again. */
	readonly scorer?: Scorer;
}

/**
 * Every check that parts those left, best first by information a second; where none tells of the repair by itself
 * (though two together may), by information about the suspect.
 * @param suspects those left, those with one repair side by side (see `suspectsByMend`).
 * @param checks those that may be made.
 */
export function rankChecks(
	search: TableSearch,
	suspects: Int32Array,
	checks: Int32Array,
	options: RankOptions = {},
): RankedCheck[] {
	const { here = 0, errors, scorer = new Scorer(search) } = options;
	scorer.lay(suspects, 0, suspects.length);
	const rank = (byRepair: boolean): RankedCheck[] => {
		const ranked: RankedCheck[] = [];
		for (const check of checks) {
			const error = errors?.[check] ?? 0;
			const told = scorer.information(check, error, byRepair);
			if (!scorer.parts) continue;
			const full = secondsFrom(search.seconds, here, check);
			const { weight } = scorer;
			const seconds = weight > 0 ? scorer.spent(check, full, error) / weight : full;
			const gain = weight > 0 ? told / weight : 0;
			ranked.push({ check, gain, seconds, rate: rateOf(gain, seconds) });
		}
		return ranked.sort((a, b) => (comesFirst(a, b) ? -1 : 1));
	};
	const ranked = rank(true);
	return ranked.some((item) => item.gain > 0) ? ranked : rank(false);
}
