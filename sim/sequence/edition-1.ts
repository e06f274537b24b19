import { rankingFor, TEN_MINUTES, USUAL_CELLS } from './ask.ts';
import { Scorer } from './gain.ts';
import type { NextStep } from './plan.ts';
import { BestCheck, type RankedCheck } from './rank.ts';
import { dropFaint, entropyAt, LEAST_TOLD, layAnswer, layFirst, type SoftQuestion, standingOf } from './soft-level.ts';
import type { TableSearch } from './table.ts';
import { type AskOptions, secondsFrom } from './types.ts';

/** How many of the best checks are played to the end. */
const WIDTH = 8;
/** Branches less likely than this are guessed from their entropy: the finest grain that the cells allow. */
const BRANCHES = [0.02, 0.08, 0.32];

/** The checks still to come tell less a second than the one just made: measured so that `expected` comes true on average. */
const SLOWER = 1.5;

/** Where a line of play stands after so many checks: working space, laid in anew for each answer. */
interface PlayLevel {
	/** By suspect; those of `suspects` sum to 1. */
	readonly weights: Float64Array;
	/** The first `size` of them are in question. */
	readonly suspects: Int32Array;
	size: number;
	/** The first `checksSize` of them may still be made. */
	readonly checks: Int32Array;
	checksSize: number;
	/** Chance of being here. */
	chance: number;
	/** The place where the tech stands. */
	here: number;
}

/**
 * Plays a check and what follows to the end when answers may be wrong: every answer that may come is followed, right
 * ones and wrong ones, weights are shifted and never struck out, and the next check is the one with the most
 * information a second. A branch that is hardly likely is guessed from its entropy. It keeps its working space.
 */
class FirstPlayer {
	/** Cells of the outcome table looked at so far. */
	looked = 0;
	/** Cells that may be looked at before a line of play is given up. */
	limit = Number.POSITIVE_INFINITY;
	/** A branch less likely than this is not played but guessed. */
	branch = 0.02;
	/** Seconds lost by ending on a wrong repair. */
	wrongSeconds = 0;
	/** The part of the cost last told that stands for ending on a wrong repair. */
	regret = 0;

	private readonly search: TableSearch;
	private readonly errors: ArrayLike<number>;
	private readonly scorer: Scorer;
	private readonly best = new BestCheck();
	private readonly levels: PlayLevel[] = [];

	constructor(search: TableSearch, errors: ArrayLike<number>) {
		this.search = search;
		this.errors = errors;
		this.scorer = new Scorer(search);
	}

	/**
	 * Expected seconds from making `check` to the end, those lost by ending on a wrong repair included.
	 * @param question who and what it is about, `check` among it, and where the tech stands.
	 * @param rate bits a second of `check`, to guess by.
	 * @param most the line is given up, as infinite, once it costs this much.
	 * @returns NaN where the limit of cells was passed.
	 */
	cost(check: number, question: SoftQuestion, rate: number, most: number): number {
		this.regret = 0;
		layFirst(this.level(0), this.search.weights, question);
		return this.make(check, 0, rate, most);
	}

	private level(depth: number): PlayLevel {
		const { suspects, checks } = this.search.table;
		this.levels[depth] ??= {
			weights: new Float64Array(suspects),
			suspects: new Int32Array(suspects),
			size: 0,
			checks: new Int32Array(checks),
			checksSize: 0,
			chance: 0,
			here: 0,
		};
		return this.levels[depth];
	}

	/** Makes a check at a level and follows each answer. */
	private make(check: number, depth: number, rate: number, most: number): number {
		const { table, seconds } = this.search;
		const { suspects, size, chance, here } = this.level(depth);
		const count = table.counts[check] as number;
		const level = this.level(depth + 1);
		const next = level.weights;
		let total = chance * secondsFrom(seconds, here, check);
		for (let answer = 0; answer < count; answer++) {
			const sum = layAnswer(next, this.level(depth), this.search, check, answer, this.errors);
			if (sum <= 0) continue;
			if (answer === seconds.refundOutcome[check]) {
				total -= chance * sum * (seconds.refund[check] as number); // repaired: nothing follows
				continue;
			}
			for (let i = 0; i < size; i++) {
				const suspect = suspects[i] as number;
				next[suspect] = (next[suspect] as number) / sum;
			}
			level.chance = chance * sum;
			level.here = seconds.place[check] as number;
			total += this.goOn(check, depth + 1, rate);
			if (Number.isNaN(total)) return total;
			if (total >= most) return Number.POSITIVE_INFINITY;
		}
		return total;
	}

	/** Goes on at a level whose weights have just been laid in, `made` being the check that led to it. */
	private goOn(made: number, depth: number, rate: number): number {
		const { settled } = this.search;
		const level = this.level(depth);
		const before = this.level(depth - 1);
		const { chance } = level;
		const { heaviest, entropy } = standingOf(level, before, this.search.repairs);
		if (heaviest >= settled) return this.end(chance, 1 - heaviest);
		if (chance < this.branch) {
			const more = rate > 0 ? (SLOWER * Math.max(0, entropy - entropyAt(settled))) / rate : 0;
			return chance * more + this.end(chance, (1 - settled) / 2);
		}
		dropFaint(level, before);
		this.looked += level.size * before.checksSize;
		if (this.looked > this.limit) return Number.NaN;
		const { scorer, best } = this;
		scorer.weights = level.weights;
		scorer.lay(level.suspects, 0, level.size);
		best.clear();
		let left = 0;
		for (let i = 0; i < before.checksSize; i++) {
			const check = before.checks[i] as number;
			if (check === made) continue; // asked again, it would repeat its error
			const error = this.errors[check] as number;
			const told = scorer.information(check, error);
			if (told < LEAST_TOLD) continue;
			level.checks[left++] = check;
			best.offer(check, told, scorer.spent(check, secondsFrom(this.search.seconds, level.here, check), error));
		}
		level.checksSize = left;
		if (best.check < 0) return this.end(chance, 1 - heaviest);
		return this.make(best.check, depth, best.rate, Number.POSITIVE_INFINITY);
	}

	/** What it costs to end here, with this chance of being here and of being wrong. */
	private end(chance: number, wrong: number): number {
		const lost = chance * wrong * this.wrongSeconds;
		this.regret += lost;
		return lost;
	}
}

/**
 * The next check as the first edition chose it, which quizzes set before December 2026 are set from for good. It prices a branch that
 * it doesn't play by the rate of whichever check is being compared: `askNext` is better.
 * @returns and throws as `askNext`
 */
export function askFirstEdition(search: TableSearch, options: AskOptions): NextStep | null {
	const { errors, cells = USUAL_CELLS, wrongSeconds = TEN_MINUTES } = options;
	const asked = rankingFor(search, options, false);
	if (!asked) return null;
	const { ranked, question } = asked;
	const first = ranked[0] as RankedCheck;
	const player = new FirstPlayer(search, errors);
	player.wrongSeconds = wrongSeconds;
	const play = (item: RankedCheck, most: number) => player.cost(item.check, question, item.rate, most);
	let check = first.check;
	let least = Number.NaN;
	for (const branch of BRANCHES) {
		player.branch = branch;
		player.limit = player.looked + (cells - player.looked) / 4;
		least = play(first, Number.POSITIVE_INFINITY);
		if (!Number.isNaN(least)) break;
	}
	let { regret } = player;
	player.limit = cells;
	if (!Number.isNaN(least)) {
		for (const item of ranked.slice(1, WIDTH)) {
			const cost = play(item, least);
			if (Number.isNaN(cost)) break;
			if (cost >= least * (1 - 1e-9)) continue;
			least = cost;
			regret = player.regret;
			check = item.check;
		}
	}
	const isDone = !Number.isNaN(least);
	const looked = asked.looked + player.looked;
	return { check, expected: isDone ? least - regret : null, by: isDone ? 'played' : 'ranked', ranked, looked };
}
