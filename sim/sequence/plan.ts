import { cutSmall } from './bound.ts';
import { solveExactly } from './exact.ts';
import { Scorer } from './gain.ts';
import { Player } from './play.ts';
import { type RankedCheck, rankChecks } from './rank.ts';
import type { TableSearch } from './table.ts';

/** How far a planner looks. Work is counted in cells looked at, never in time: every machine asks the same questions. */
export interface PlanLimits {
	/** With this many suspects left or fewer, solve exactly; 1 to 30. */
	readonly exactAt: number;
	/** How many checks the exact solver tries before it gives way to play. */
	readonly tries: number;
	/** How many of the best checks are played to the end. */
	readonly width: number;
	/** With this many suspects left or fewer, a line of play is solved exactly. */
	readonly leafAt: number;
	/** Cells looked at before settling for the best so far. */
	readonly cells: number;
}

/** What to do next, and what is known of it. */
export interface NextStep {
	readonly check: number;
	/** Expected seconds from here to the end; null where no line of play was finished within the limits. */
	readonly expected: number | null;
	/** `exact`: nothing is better; `played`: the best of those played to the end; `ranked`: the most bits a second. */
	readonly by: 'exact' | 'played' | 'ranked';
	/** Every check that parts those left, by bits a second. */
	readonly ranked: readonly RankedCheck[];
	/** Cells looked at. */
	readonly looked: number;
}

/** Chooses checks for one search. It keeps its working space between calls. */
export class Planner {
	private readonly search: TableSearch;
	private readonly scorer: Scorer;
	private readonly player: Player;

	constructor(search: TableSearch) {
		this.search = search;
		this.scorer = new Scorer(search);
		this.player = new Player(search, this.scorer);
	}

	/** Every check that parts those left, best first (see `rankChecks`). */
	rank(suspects: Int32Array, checks: Int32Array, here: number): RankedCheck[] {
		return rankChecks(this.search, suspects, checks, { here, scorer: this.scorer });
	}

	/**
	 * Chooses the next check.
	 * @param suspects those left, those with one repair side by side.
	 * @returns null where no check parts them.
	 */
	plan(suspects: Int32Array, checks: Int32Array, here: number, limits: PlanLimits): NextStep | null {
		const ranked = this.rank(suspects, checks, here);
		const first = ranked[0];
		if (first === undefined) return null;
		const useful = Int32Array.from(ranked, (item) => item.check).sort();
		const weight = suspects.reduce((sum, suspect) => sum + (this.search.weights[suspect] as number), 0);
		const shareOf = (cost: number) => (weight > 0 ? cost / weight : 0);
		const looked = checks.length * suspects.length;
		if (suspects.length <= limits.exactAt) {
			const small = cutSmall(this.search, suspects, useful);
			const exact = solveExactly(small, limits.tries);
			const all = 2 ** small.n - 1;
			const check = exact.choice(all, here);
			if (!exact.over && check >= 0) {
				const expected = shareOf(exact.cost(all, here));
				return { check: small.checks[check] as number, expected, by: 'exact', ranked, looked: looked + exact.looked };
			}
		}
		const { check, least } = this.play(ranked, { suspects, checks: useful, here }, limits);
		const isDone = least < Number.POSITIVE_INFINITY;
		return {
			check,
			expected: isDone ? shareOf(least) : null,
			by: isDone ? 'played' : 'ranked',
			ranked,
			looked: this.player.looked,
		};
	}

	/** Plays the best ranked to the end; the one that costs least, and what it costs: infinite where none was finished. */
	private play(
		ranked: readonly RankedCheck[],
		from: { readonly suspects: Int32Array; readonly checks: Int32Array; readonly here: number },
		limits: PlanLimits,
	): { readonly check: number; readonly least: number } {
		const { player } = this;
		const { suspects, checks, here } = from;
		player.forget();
		player.looked = checks.length * suspects.length;
		player.limit = limits.cells;
		player.leafAt = limits.leafAt;
		let best = (ranked[0] as RankedCheck).check;
		let least = Number.POSITIVE_INFINITY;
		let tried = 0;
		let before: RankedCheck | null = null;
		for (const item of ranked) {
			if (tried === limits.width) break;
			// same bits for the same seconds: most likely the same parts
			const twin =
				before !== null &&
				Math.abs(item.rate - before.rate) < 1e-9 * item.rate &&
				Math.abs(item.gain - before.gain) <= 1e-9 * item.gain;
			before = item;
			if (twin) continue;
			tried++;
			const cost = player.cost(item.check, suspects, checks, here, least);
			if (Number.isNaN(cost)) break;
			if (cost >= least * (1 - 1e-9)) continue;
			least = cost;
			best = item.check;
		}
		return { check: best, least };
	}
}
