import { Scorer } from './gain.ts';
import { MARKS } from './play.ts';
import { BestCheck } from './rank.ts';
import {
	dropFaint,
	entropyAt,
	keepAll,
	LEAST_TOLD,
	layAnswer,
	layFirst,
	makeLevel,
	markOf,
	nearOf,
	type PlayLevel,
	type SoftQuestion,
	standingOf,
	swap,
} from './soft-level.ts';
import type { TableSearch } from './table.ts';
import { secondsFrom } from './types.ts';

/** What scoring a check takes besides the suspects in question, in cells. */
const FIXED_CELLS = 24;

/** What a line of play costs: seconds times the chance of being where it begins. */
interface Played {
	readonly cost: number;
	/** The parts of it that stand for ending on a wrong repair, and that were guessed. */
	readonly regret: number;
	readonly guessed: number;
	/** Nothing in it was guessed, and every way to go on was tried. */
	readonly isExact: boolean;
}

/**
 * Plays a check and what follows to the end when answers may be wrong: every answer that may come is followed, right ones and wrong
 * ones, weights are shifted and never struck out. For so many checks all ways to go on are tried; from there on the next check is the
 * one with the most information a second. A branch that is hardly likely is guessed from its entropy. It keeps its working space.
 */
export class SoftPlayer {
	/** Cells of the outcome table looked at so far. */
	looked = 0;
	/** Cells that may be looked at before a line of play is given up. */
	limit = Number.POSITIVE_INFINITY;
	/** A branch less likely than this is not played but guessed. */
	branch = 0;
	/** Takes along who is hardly likely, and checks that tell nothing yet. */
	isWide = false;
	/** Bits a second that a guess goes by, the same for every line. */
	yardstick = 1;
	/** Seconds lost by ending on a wrong repair. */
	wrongSeconds = 0;
	/** Bits told and seconds spent by the checks played after the first, those of lines given up among them: what a second is worth there. */
	playedBits = 0;
	playedSeconds = 0;
	/** Of the cost last told: what stands for ending on a wrong repair, what was guessed, and whether nothing can be better. */
	regret = 0;
	guessed = 0;
	isExact = true;

	private readonly search: TableSearch;
	private readonly errors: ArrayLike<number>;
	private readonly scorer: Scorer;
	private readonly best = new BestCheck();
	private readonly levels: PlayLevel[] = [];
	/** What was played already, by answers got, place and checks tried ahead: answers may come in many orders. */
	private readonly known = new Map<number, Played>();
	private readonly bitsLeft: number;

	constructor(search: TableSearch, errors: ArrayLike<number>) {
		this.search = search;
		this.errors = errors;
		this.scorer = new Scorer(search);
		this.bitsLeft = entropyAt(search.settled);
	}

	/** Forgets what was played, as it must when `branch` changes. */
	forget(): void {
		this.known.clear();
	}

	/**
	 * Expected seconds from making `check` to the end, those lost by ending on a wrong repair included.
	 * @param ahead after the first check, for how many all ways to go on are tried: 0 or more.
	 * @param most the line is given up, as infinite, once it costs this much.
	 * @returns NaN where the limit of cells was passed.
	 */
	cost(check: number, question: SoftQuestion, ahead: number, most: number): number {
		this.begin();
		const level = this.level(0);
		layFirst(level, this.search.weights, question);
		level.told = Number.POSITIVE_INFINITY;
		level.mark = 0;
		return this.make(check, 0, ahead, most);
	}

	private begin(): void {
		this.regret = 0;
		this.guessed = 0;
		this.isExact = true;
	}

	private level(depth: number): PlayLevel {
		const { suspects, checks } = this.search.table;
		this.levels[depth] ??= makeLevel(suspects, checks);
		return this.levels[depth];
	}

	/** Makes a check at a level and follows each answer. */
	private make(check: number, depth: number, ahead: number, most: number): number {
		const { table, seconds } = this.search;
		const { chance, here, mark } = this.level(depth);
		const count = table.counts[check] as number;
		const level = this.level(depth + 1);
		const repaired = seconds.refundOutcome[check] as number;
		let total = chance * secondsFrom(seconds, here, check);
		// what is given back comes first: a line is given up by what it costs in all
		if (repaired >= 0) total -= chance * this.answer(check, repaired, depth) * (seconds.refund[check] as number);
		for (let answer = 0; answer < count; answer++) {
			if (answer === repaired) continue; // nothing follows
			if (total >= most) return Number.POSITIVE_INFINITY;
			const sum = this.answer(check, answer, depth);
			if (sum <= 0) continue;
			const { suspects, size } = this.level(depth);
			const next = level.weights;
			for (let i = 0; i < size; i++) {
				const suspect = suspects[i] as number;
				next[suspect] = (next[suspect] as number) / sum;
			}
			level.chance = chance * sum;
			level.here = seconds.place[check] as number;
			level.mark = (mark + markOf(check, answer)) % MARKS;
			total += this.goOn(check, depth + 1, ahead, most - total);
			if (Number.isNaN(total)) return total;
		}
		return total >= most ? Number.POSITIVE_INFINITY : total;
	}

	/** Lays in at the next level the weights after an answer; their sum. */
	private answer(check: number, answer: number, depth: number): number {
		const { weights } = this.level(depth + 1);
		return layAnswer(weights, this.level(depth), this.search, check, answer, this.errors);
	}

	/** Goes on at a level whose weights have just been laid in, `made` being the check that led to it. */
	private goOn(made: number, depth: number, ahead: number, most: number): number {
		const level = this.level(depth);
		const before = this.level(depth - 1);
		const { chance } = level;
		const { heaviest, entropy } = standingOf(level, before, this.search.repairs);
		if (heaviest >= this.search.settled) return this.end(chance * (1 - heaviest));
		if (chance < this.branch) return this.guess(level, before, entropy, heaviest);
		const solved = (level.mark + 64 * level.here) % MARKS;
		const key = (solved + 1 + Math.min(62, ahead)) % MARKS;
		const played = this.known.get(solved) ?? this.known.get(key);
		if (played) {
			this.regret += played.regret;
			this.guessed += played.guessed;
			if (!played.isExact) this.isExact = false;
			return played.cost;
		}
		const { regret, guessed, isExact } = this;
		this.begin();
		const cost = this.play(made, depth, ahead, most, heaviest);
		if (cost < Number.POSITIVE_INFINITY) {
			const { isExact: solvedNow } = this;
			this.known.set(solvedNow ? solved : key, {
				cost,
				regret: this.regret,
				guessed: this.guessed,
				isExact: solvedNow,
			});
		}
		this.regret += regret;
		this.guessed += guessed;
		this.isExact &&= isExact;
		return cost;
	}

	/** The same where nothing is known of it yet. */
	private play(made: number, depth: number, ahead: number, most: number, heaviest: number): number {
		const level = this.level(depth);
		const before = this.level(depth - 1);
		if (this.isWide) keepAll(level, before);
		else dropFaint(level, before);
		this.looked += (level.size + FIXED_CELLS) * before.checksSize;
		if (this.looked > this.limit) return Number.NaN;
		const best = this.list(made, level, before);
		if (best < 0) return this.end(level.chance * (1 - heaviest));
		if (ahead === 0 || level.checksSize === 1) {
			if (level.checksSize > 1) this.isExact = false;
			this.playedBits += level.chance * this.best.rate * this.best.seconds;
			this.playedSeconds += level.chance * this.best.seconds;
			return this.make(best, depth, 0, most);
		}
		return this.tryAll(depth, ahead, most);
	}

	/** The best of all ways to go on, those first that tell most a second. */
	private tryAll(depth: number, ahead: number, most: number): number {
		const level = this.level(depth);
		const { checks, rates, spent, chance } = level;
		let least = most;
		let best: Played | null = null;
		let isExact = true;
		for (let left = level.checksSize; left > 0; left--) {
			let at = 0;
			for (let i = 1; i < left; i++) if ((rates[i] as number) > (rates[at] as number)) at = i;
			const check = checks[at] as number;
			const least1 = chance * (spent[at] as number);
			// those tried stand behind those left: the next level takes them all
			swap(checks, at, left - 1);
			swap(rates, at, left - 1);
			swap(spent, at, left - 1);
			if (least1 >= least) continue;
			this.begin();
			const cost = this.make(check, depth, ahead - 1, least);
			if (Number.isNaN(cost)) return cost;
			if (!this.isExact) isExact = false;
			if (cost >= least) continue;
			least = cost;
			best = { cost, regret: this.regret, guessed: this.guessed, isExact };
		}
		this.regret = best?.regret ?? 0;
		this.guessed = best?.guessed ?? 0;
		this.isExact = isExact;
		return best ? least : Number.POSITIVE_INFINITY;
	}

	/** Lists the checks that tell something at a level, those that led here left out; where the best stands, -1 for none. */
	private list(made: number, level: PlayLevel, before: PlayLevel): number {
		const { scorer, search, best } = this;
		scorer.weights = level.weights;
		scorer.lay(level.near, 0, nearOf(level));
		const { weight } = scorer;
		best.clear();
		let kept = 0;
		level.told = 0;
		level.takes = 0;
		for (let i = 0; i < before.checksSize; i++) {
			const check = before.checks[i] as number;
			if (check === made) continue; // asked again, it would repeat its error
			const error = this.errors[check] as number;
			const told = scorer.information(check, error) / weight;
			const isIdle = told < LEAST_TOLD;
			// it may tell something later, which is minded where everything is followed
			if (isIdle && !(this.isWide && scorer.parts)) continue;
			const spent = scorer.spent(check, secondsFrom(search.seconds, level.here, check), error) / weight;
			level.checks[kept] = check;
			level.rates[kept] = told / spent;
			level.spent[kept++] = spent;
			level.told += told;
			level.takes += spent;
			if (!isIdle) best.offer(check, told, spent);
		}
		level.checksSize = kept;
		return best.check;
	}

	/** What a branch costs that is not played. */
	private guess(level: PlayLevel, before: PlayLevel, entropy: number, heaviest: number): number {
		const needed = Math.max(0, entropy - this.bitsLeft);
		const share = needed > 0 ? Math.min(1, before.told / needed) : 1;
		const more = level.chance * Math.min(before.takes, (share * needed) / this.yardstick);
		this.guessed += more;
		this.isExact = false;
		const settled = (1 - this.search.settled) / 2;
		const lost = this.end(level.chance * (share * settled + (1 - share) * (1 - heaviest)));
		this.guessed += lost;
		return more + lost;
	}

	/** What it costs to end on a wrong repair with this chance. */
	private end(wrong: number): number {
		const lost = wrong * this.wrongSeconds;
		this.regret += lost;
		return lost;
	}
}
