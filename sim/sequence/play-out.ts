import type { RankedCheck } from './rank.ts';
import type { SoftPlayer } from './soft.ts';
import type { SoftQuestion } from './soft-level.ts';

/** How many of the best checks are played to the end where some branches are guessed. */
const WIDTH = 8;

/**
 * Branches less likely than `branch` are guessed: the finest grain that the cells allow, of those to be tried with so many suspects
 * times checks. 0: all are followed.
 */
const GRAINS: readonly { readonly branch: number; readonly upTo: number }[] = [
	{ branch: 0, upTo: 120 },
	{ branch: 0.0005, upTo: 400 },
	{ branch: 0.005, upTo: 1500 },
	{ branch: 0.02, upTo: Number.POSITIVE_INFINITY },
	{ branch: 0.08, upTo: Number.POSITIVE_INFINITY },
	{ branch: 0.32, upTo: Number.POSITIVE_INFINITY },
];

/** Up to this grain what is guessed is so little that more checks may be tried ahead. */
const FINE = 0.0005;

/** The checks of a branch that is guessed tell less a second than those played before it (ours; tests/sim/sequence measures what it does). */
const SLOWER = 1.5;

/** By what share of itself a guess may be off (ours; tests/sim/sequence measures what it does). */
const OFF_BY = 0.05;

/** What a line of play costs, and what of it is not played. */
interface PlayedLine {
	readonly check: number;
	readonly cost: number;
	readonly regret: number;
	readonly guessed: number;
	readonly isExact: boolean;
}

/** Plays one first check to the end; null where the cells ran out. */
function played(
	player: SoftPlayer,
	check: number,
	question: SoftQuestion,
	ahead: number,
	most = Number.POSITIVE_INFINITY,
): PlayedLine | null {
	const cost = player.cost(check, question, ahead, most);
	const { regret, guessed, isExact } = player;
	return Number.isNaN(cost) ? null : { check, cost, regret, guessed, isExact };
}

const sizeOf = ({ suspects, checks }: Pick<SoftQuestion, 'suspects' | 'checks'>): number =>
	suspects.length * checks.length;

/** Whether following all branches is tried, or nearly. */
export const isFew = (question: Pick<SoftQuestion, 'suspects' | 'checks'>): boolean =>
	sizeOf(question) <= (GRAINS[1]?.upTo ?? 0);

/** The line of the first check, at the finest grain at which it could be played. */
function playFirst(player: SoftPlayer, first: RankedCheck, question: SoftQuestion, cells: number): PlayedLine | null {
	const size = sizeOf(question);
	for (const { branch } of GRAINS.filter(({ upTo }) => size <= upTo)) {
		player.forget();
		player.branch = branch;
		player.limit = player.looked + (cells - player.looked) / 6;
		player.yardstick = first.rate / SLOWER;
		const line = played(player, first.check, question, 0);
		if (!line || line.guessed === 0 || player.playedBits === 0) {
			if (line) return line;
			continue;
		}
		// again, by what a second was found to be worth
		player.forget();
		player.limit = cells;
		player.yardstick = player.playedBits / player.playedSeconds / SLOWER;
		return played(player, first.check, question, 0);
	}
	return null;
}

/**
 * The best of the checks ranked, each played to the end. Where every branch can be followed, all are played again with one check more
 * tried ahead at each round, until nothing is left untried or the cells run out.
 * @param ranked best first by bits a second, never none
 * @param cells of the outcome table to look at
 * @returns null where not even the first could be played
 */
export function playOut(
	player: SoftPlayer,
	ranked: readonly RankedCheck[],
	question: SoftQuestion,
	cells: number,
): PlayedLine | null {
	const first = ranked[0] as RankedCheck;
	const base = playFirst(player, first, question, cells);
	if (!base) return null;
	player.limit = cells;
	const isWhole = player.branch <= FINE;
	const list = (isWhole ? ranked : ranked.slice(0, WIDTH)).map(({ check }) => check);
	let best = roundOf(player, list, question, 0, base).best;
	for (let ahead = 1; isWhole && !best.isExact && ahead < list.length; ahead++) {
		const again = played(player, best.check, question, ahead);
		if (!again) break;
		const others = list.filter((check) => check !== best.check);
		const round = roundOf(player, [best.check, ...others], question, ahead, again);
		best = round.best;
		if (!round.isDone) break;
	}
	return best;
}

/** Plays all but the first of a list, which was played. */
function roundOf(
	player: SoftPlayer,
	list: readonly number[],
	question: SoftQuestion,
	ahead: number,
	base: PlayedLine,
): { readonly best: PlayedLine; readonly isDone: boolean } {
	let best = base;
	let isExact = base.isExact;
	for (const check of list.slice(1)) {
		const line = played(player, check, question, ahead, best.cost);
		if (!line) return { best: { ...best, isExact: false }, isDone: false };
		isExact &&= line.isExact;
		if (line.cost + OFF_BY * (line.guessed + base.guessed) >= base.cost * (1 - 1e-9)) continue;
		if (line.cost < best.cost * (1 - 1e-9)) best = line;
	}
	return { best: { ...best, isExact }, isDone: true };
}
