import { hash01 } from '../../shared/random/index.ts';
import { cutSmall } from './bound.ts';
import { solveExactly } from './exact.ts';
import type { Scorer } from './gain.ts';
import { BestCheck } from './rank.ts';
import type { TableSearch } from './table.ts';
import { secondsFrom } from './types.ts';

/** Sums of marks stay whole numbers below this. */
export const MARKS = 2 ** 52;

/** For how many checks of a line of play two are tried. */
const BOTH = 2;

/** A mark for each suspect. The sum of its marks, modulo 2^52, stands for a set; two sets share one by no more than chance. */
function marksFor(suspects: number): Float64Array {
	return Float64Array.from(
		{ length: suspects },
		(_, suspect) => Math.floor(hash01(suspect, 1) * 2 ** 26) * 2 ** 26 + Math.floor(hash01(suspect, 2) * 2 ** 26),
	);
}

/** A part of the work: suspects `from` up to `to` of the list, and the checks that may still part them, in the stack. */
interface PlayStretch {
	readonly from: number;
	readonly to: number;
	readonly checksFrom: number;
	readonly checksTo: number;
	/** For so many checks yet, the one that leaves least is tried beside the one that tells most. */
	readonly both: number;
}

/**
 * Plays a check and what follows to the end, by information a second and exactly once few suspects are left, to learn
 * what it costs. It keeps its working space between calls.
 */
export class Player {
	/** Cells of the outcome table looked at so far; set it to 0 to start afresh. */
	looked = 0;
	/** Cells that may be looked at before a line of play is given up. */
	limit = Number.POSITIVE_INFINITY;
	/** With this many suspects left or fewer, a line of play is solved exactly. */
	leafAt = 8;

	private readonly search: TableSearch;
	private readonly scorer: Scorer;
	private readonly best = new BestCheck();
	private readonly other = new BestCheck();
	/** The suspects, each stretch of them ordered by outcome as the line of play goes on. */
	private readonly work: Int32Array;
	private readonly spare: Int32Array;
	/** For each level of play, the checks that still part somebody. */
	private stack: Int32Array;
	/** Costs of stretches already played, by their marks: different first checks often lead to the same few. */
	private readonly known = new Map<number, number>();
	private readonly marks: Float64Array;

	constructor(search: TableSearch, scorer: Scorer) {
		this.search = search;
		this.scorer = scorer;
		this.work = new Int32Array(search.table.suspects);
		this.spare = new Int32Array(search.table.suspects);
		this.stack = new Int32Array(4 * search.table.checks + 16);
		this.marks = marksFor(search.table.suspects);
	}

	/** Forgets what was played, as it must when the weights or the checks allowed change. */
	forget(): void {
		this.known.clear();
		this.looked = 0;
	}

	/**
	 * Seconds times weight from making `check` to the end.
	 * @param suspects those left, those with one repair side by side.
	 * @param checks those that may be made.
	 * @param most the line is given up, as infinite, once it costs this much.
	 * @returns NaN where `limit` was passed.
	 */
	cost(check: number, suspects: Int32Array, checks: Int32Array, here: number, most: number): number {
		return this.make(check, this.begin(suspects, checks), here, most);
	}

	/** Seconds times weight from here to the end, the next check chosen by information a second; NaN past `limit`. */
	costToGo(suspects: Int32Array, checks: Int32Array, here: number): number {
		return this.goOn(this.begin(suspects, checks), here);
	}

	private begin(suspects: Int32Array, checks: Int32Array): PlayStretch {
		this.work.set(suspects);
		this.reserve(checks.length);
		this.stack.set(checks);
		return { from: 0, to: suspects.length, checksFrom: 0, checksTo: checks.length, both: BOTH };
	}

	private reserve(room: number): void {
		if (room <= this.stack.length) return;
		const more = new Int32Array(2 * room);
		more.set(this.stack);
		this.stack = more;
	}

	/** Makes a check over a stretch of suspects, then goes on with each part. */
	private make(check: number, stretch: PlayStretch, here: number, most: number): number {
		const { seconds } = this.search;
		const { from, to, checksFrom, checksTo, both } = stretch;
		const place = seconds.place[check] as number;
		this.scorer.lay(this.work, from, to);
		this.scorer.information(check);
		let total = this.scorer.spent(check, secondsFrom(seconds, here, check));
		let start = from;
		for (const end of this.partition(check, from, to)) {
			total += this.goOn({ from: start, to: end, checksFrom, checksTo, both }, place);
			if (Number.isNaN(total)) return total;
			if (total >= most) return Number.POSITIVE_INFINITY;
			start = end;
		}
		return total;
	}

	/** Orders a stretch by outcome, keeping the order within each; returns where each outcome ends. */
	private partition(check: number, from: number, to: number): number[] {
		const { table } = this.search;
		const { work, spare } = this;
		const row = check * table.suspects;
		const ends: number[] = [];
		let filled = from;
		let left = to - from;
		for (let i = 0; i < left; i++) spare[i] = work[from + i] as number;
		while (left > 0) {
			const outcome = table.cells[row + (spare[0] as number)];
			let kept = 0;
			for (let i = 0; i < left; i++) {
				const suspect = spare[i] as number;
				if (table.cells[row + suspect] === outcome) work[filled++] = suspect;
				else spare[kept++] = suspect;
			}
			left = kept;
			ends.push(filled);
		}
		return ends;
	}

	/** Whether the search ends with these: one repair left, or one that holds the share that settles it. */
	private ends(from: number, to: number): boolean {
		const { repairs, weights, settled } = this.search;
		const { work } = this;
		const first = repairs[work[from] as number];
		let at = from + 1;
		while (at < to && repairs[work[at] as number] === first) at++;
		if (at === to) return true;
		if (settled >= 1) return false;
		let total = 0;
		let run = 0;
		let heaviest = 0;
		for (let i = from; i < to; i++) {
			const weight = weights[work[i] as number] as number;
			const same = i > from && repairs[work[i] as number] === repairs[work[i - 1] as number];
			total += weight;
			run = same ? run + weight : weight;
			if (run > heaviest) heaviest = run;
		}
		return heaviest >= settled * total;
	}

	private goOn(stretch: PlayStretch, here: number): number {
		const { from, to } = stretch;
		if (to - from === 1 || this.ends(from, to)) return 0;
		const { marks, work, known } = this;
		let mark = here;
		for (let at = from; at < to; at++) {
			mark += marks[work[at] as number] as number;
			if (mark >= MARKS) mark -= MARKS;
		}
		const before = known.get(mark);
		if (before !== undefined) return before;
		const cost = to - from <= this.leafAt ? this.solve(stretch, here) : this.choose(stretch, here);
		if (!Number.isNaN(cost)) known.set(mark, cost);
		return cost;
	}

	/** Makes the check with the most information a second over a stretch, or at first the one that leaves least where that is better, and plays on. */
	private choose({ from, to, checksFrom, checksTo, both }: PlayStretch, here: number): number {
		const { scorer, search, work, best, other } = this;
		this.looked += (to - from) * (checksTo - checksFrom);
		if (this.looked > this.limit) return Number.NaN;
		this.reserve(checksTo + checksTo - checksFrom);
		const { stack } = this;
		scorer.lay(work, from, to);
		let top = checksTo;
		best.clear();
		other.clear();
		for (let i = checksFrom; i < checksTo; i++) {
			const check = stack[i] as number;
			const told = scorer.information(check);
			if (!scorer.parts) continue;
			stack[top++] = check;
			const spent = scorer.spent(check, secondsFrom(search.seconds, here, check));
			best.offer(check, told, spent);
			other.offer(check, scorer.shed(), spent);
		}
		if (best.check < 0) return 0;
		const next = { from, to, checksFrom: checksTo, checksTo: top, both: Math.max(0, both - 1) };
		const [first, second] = [best.check, other.check];
		if (second === first || both === 0) return this.make(first, next, here, Number.POSITIVE_INFINITY);
		const before = work.slice(from, to);
		const cost = this.make(first, next, here, Number.POSITIVE_INFINITY);
		if (Number.isNaN(cost)) return cost;
		work.set(before, from);
		return Math.min(cost, this.make(second, next, here, cost));
	}

	private solve({ from, to, checksFrom, checksTo }: PlayStretch, here: number): number {
		const checks = this.stack.slice(checksFrom, checksTo);
		const small = cutSmall(this.search, this.work.slice(from, to), checks);
		const exact = solveExactly(small);
		const cost = exact.cost(2 ** small.n - 1, here);
		this.looked += (to - from) * checks.length + exact.looked;
		return this.looked > this.limit ? Number.NaN : cost;
	}
}
