import { InputError, requireNumber, shown } from '../../shared/error/index.ts';
import { type NextStep, Planner } from './plan.ts';
import { type RankedCheck, rankChecks } from './rank.ts';
import { FAINT, LEAST_TOLD, SoftPlayer } from './soft.ts';
import { rowsOf, suspectsByRepair, type TableSearch } from './table.ts';
import type { AskOptions } from './types.ts';
import { outcomesOf, sharesByRepair } from './weights.ts';

/** Cells looked at for one check: 5 to 10 ms on a desk machine of 2020 (tests/speed measures it). */
const USUAL_CELLS = 1_000_000;

const TEN_MINUTES = 600;
/** How many of the best checks are played to the end. */
const WIDTH = 8;
/** Branches less likely than this are guessed from their entropy: the finest grain that the cells allow. */
const BRANCHES = [0.02, 0.08, 0.32];

/** Whether the search is over: one repair holds the share that settles it. */
const isSettled = (search: TableSearch): boolean => sharesByRepair(search).some((share) => share >= search.settled);

/** The checks that may be made. */
function allowed(search: TableSearch, { excluded = [] }: AskOptions): Int32Array {
	const barred = new Set(excluded);
	return Int32Array.from(Array.from(search.seconds.base.keys()).filter((check) => !barred.has(check)));
}

/**
 * The next check for a tech whose answers may be wrong.
 *
 * The best checks by information a second are each played to the end over the answers that may come, right and wrong, with
 * weights shifted and never struck out; the one with the fewest expected seconds, those lost by ending on a wrong repair
 * included, is named. The same search always
 * gives the same check, on every machine: work is counted in cells, not in time.
 *
 * @returns null where the search is over: one repair holds the share `search.settled`, or no check left tells anything.
 * @throws InputError `sequence.lengths`, `sequence.error-rate`, `sequence.weights`, `sequence.cost`.
 */
export function askNext(search: TableSearch, options: AskOptions): NextStep | null {
	const { errors, here = 0, cells = USUAL_CELLS, wrongSeconds = TEN_MINUTES } = options;
	requireAsking(search, options);
	if (isSettled(search)) return null;
	const { alike } = rowsOf(search.table, search.repairs);
	// side by side, those that are alike are scored as one
	const sideBySide = (a: number, b: number): number => (alike[a] as number) - (alike[b] as number) || a - b;
	const checks = allowed(search, options).sort(sideBySide);
	let heaviest = 0;
	for (const weight of search.weights) heaviest = Math.max(heaviest, weight);
	const inPlay = [...search.weights.keys()].filter(
		(suspect) => (search.weights[suspect] as number) >= heaviest * FAINT,
	);
	const suspects = suspectsByRepair(search, inPlay);
	const ranked = rankChecks(search, suspects, checks, { here, errors }).filter((item) => item.gain >= LEAST_TOLD);
	const first = ranked[0];
	if (first === undefined) return null;
	const useful = Int32Array.from(ranked, (item) => item.check).sort(sideBySide);
	const player = new SoftPlayer(search, errors);
	player.limit = cells;
	player.wrongSeconds = wrongSeconds;
	const play = (item: RankedCheck, most: number) =>
		player.cost(item.check, { suspects, checks: useful, here }, item.rate, most);
	let check = first.check;
	let least = Number.NaN;
	let regret = 0;
	for (const branch of BRANCHES) {
		player.branch = branch;
		player.limit = player.looked + (cells - player.looked) / 4;
		least = play(first, Number.POSITIVE_INFINITY);
		if (!Number.isNaN(least)) break;
	}
	regret = player.regret;
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
	const done = !Number.isNaN(least);
	const looked = checks.length * suspects.length + player.looked;
	return { check, expected: done ? least - regret : null, by: done ? 'played' : 'ranked', ranked, looked };
}

/** Whether every suspect predicts something of a check. */
function predictsAll({ table }: TableSearch, check: number): boolean {
	return outcomesOf(table, check).every((outcome) => outcome !== table.counts[check]);
}

/**
 * The next check, whether answers may be wrong or not: where none ever is, and every suspect predicts every answer, by the planner
 * of `sequence`, which is exact with few suspects left; otherwise by `askNext`.
 * @returns null where the search is over: one repair holds the share `search.settled`, or no check left tells anything.
 * @throws InputError as `askNext`.
 */
export function bestCheck(search: TableSearch, options: AskOptions): NextStep | null {
	const { errors, here = 0, cells = USUAL_CELLS } = options;
	requireAsking(search, options);
	if (isSettled(search)) return null;
	const checks = allowed(search, options);
	if (checks.some((check) => errors[check] !== 0 || !predictsAll(search, check))) return askNext(search, options);
	const inPlay = [...search.weights.keys()].filter((suspect) => (search.weights[suspect] as number) > 0);
	const limits = { exactAt: 24, tries: cells / 20, width: 14, leafAt: 8, cells };
	return new Planner(search).plan(suspectsByRepair(search, inPlay), checks, here, limits);
}

/** Holds what is asked to what it must be. @throws InputError as `askNext`. */
function requireAsking(search: TableSearch, { errors, wrongSeconds = 0 }: AskOptions): void {
	const price = { lo: 0, hi: Number.MAX_VALUE, code: 'sequence.cost', path: 'wrongSeconds', of: 'wrong-end' } as const;
	requireNumber(wrongSeconds, price);
	const { table, weights, repairs, seconds } = search;
	const lengths: [string, number, number][] = [
		['weights', weights.length, table.suspects],
		['repairs', repairs.length, table.suspects],
		['seconds.base', seconds.base.length, table.checks],
		['errors', errors.length, table.checks],
	];
	for (const [path, found, wanted] of lengths) {
		if (found === wanted) continue;
		throw new InputError('sequence.lengths', path, {
			expected: 'length',
			of: 'asked',
			length: wanted,
			found: shown(found),
		});
	}
	for (let check = 0; check < errors.length; check++) {
		const path = `errors[${check}]`;
		requireNumber(errors[check] as number, {
			lo: 0,
			hi: 0.5,
			code: 'sequence.error-rate',
			path,
			of: 'error-rate',
		});
	}
	const sum = weights.reduce((total, weight) => total + (weight >= 0 ? weight : Number.NaN), 0);
	if (!(sum > 0 && Number.isFinite(sum))) {
		throw new InputError(
			'sequence.weights',
			'weights',
			Number.isNaN(sum) ? { trouble: 'weight-below-0' } : { trouble: 'weights-sum', found: shown(sum) },
		);
	}
}
