import { InputError, requireNumber, shown } from '../../shared/error/index.ts';
import { type NextStep, Planner } from './plan.ts';
import { isFew, playOut } from './play-out.ts';
import { type RankedCheck, rankChecks } from './rank.ts';
import { SoftPlayer } from './soft.ts';
import type { SoftQuestion } from './soft-level.ts';
import { FAINT, LEAST_TOLD } from './soft-level.ts';
import { rowsOf, suspectsByRepair, type TableSearch } from './table.ts';
import type { AskOptions } from './types.ts';
import { outcomesOf, sharesByRepair } from './weights.ts';

/** Cells looked at for one check: 5 to 10 ms on a desk machine of 2020 (tests/speed measures it). */
export const USUAL_CELLS = 1_000_000;

/** What ending on a wrong repair is taken to cost, seconds. */
export const TEN_MINUTES = 600;

/** Whether the search is over: one repair holds the share that settles it. */
const isSettled = (search: TableSearch): boolean => sharesByRepair(search).some((share) => share >= search.settled);

/** The checks that may be made. */
function allowed(search: TableSearch, { excluded = [] }: AskOptions): Int32Array {
	const barred = new Set(excluded);
	return Int32Array.from(Array.from(search.seconds.base.keys()).filter((check) => !barred.has(check)));
}

/** What there is to choose from: the checks that tell something, best first by bits a second; never none. */
interface AskRanking {
	readonly ranked: readonly RankedCheck[];
	readonly question: SoftQuestion;
	/** Cells looked at. */
	readonly looked: number;
}

/**
 * @param isWide where few are left, takes along who is hardly likely and what tells nothing yet
 * @returns null where the search is over
 * @throws InputError as `askNext`
 */
export function rankingFor(search: TableSearch, options: AskOptions, isWide = true): AskRanking | null {
	const { errors, here = 0 } = options;
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
	if (ranked.length === 0) return null;
	const everyone = suspectsByRepair(search);
	const looked = checks.length * suspects.length;
	if (isWide && isFew({ suspects: everyone, checks }))
		return { ranked, question: { suspects: everyone, checks, here }, looked };
	const useful = Int32Array.from(ranked, (item) => item.check).sort(sideBySide);
	return { ranked, question: { suspects, checks: useful, here }, looked };
}

/**
 * The next check for a tech whose answers may be wrong.
 *
 * The best checks by information a second are each played to the end over the answers that may come, right and wrong, with weights
 * shifted and never struck out; the one with the fewest expected seconds, those lost by ending on a wrong repair included, is named.
 * Where few suspects and checks are left every answer is followed, and further ways to go on are tried as long as the cells last.
 * What is guessed goes by one rate, and the first by information a second is left only for one that is better by more than
 * the guess may err. The same search always gives the same check, on every machine: work is counted in cells, not in time.
 *
 * @returns null where the search is over: one repair holds the share `search.settled`, or no check left tells anything.
 * @throws InputError `sequence.lengths`, `sequence.error-rate`, `sequence.weights`, `sequence.cost`.
 */
export function askNext(search: TableSearch, options: AskOptions): NextStep | null {
	const { errors, cells = USUAL_CELLS, wrongSeconds = TEN_MINUTES } = options;
	const asked = rankingFor(search, options);
	if (!asked) return null;
	const { ranked, question } = asked;
	const player = new SoftPlayer(search, errors);
	player.wrongSeconds = wrongSeconds;
	player.isWide = isFew(question);
	const best = playOut(player, ranked, question, cells);
	const looked = asked.looked + player.looked;
	if (!best) return { check: (ranked[0] as RankedCheck).check, expected: null, by: 'ranked', ranked, looked };
	const { check, cost, regret, isExact } = best;
	return { check, expected: cost - regret, by: isExact ? 'exact' : 'played', ranked, looked };
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
