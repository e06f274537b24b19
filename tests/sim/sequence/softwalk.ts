import { makeRandom, type Random } from '../../../shared/random/index.ts';
import {
	bestCheck,
	makeOutcomeTable,
	makeSeconds,
	numberRepairs,
	outcomesOf,
	rankChecks,
	sharesByRepair,
	suspectsByRepair,
	type TableSearch,
	type TestProblem,
	updateWeights,
} from '../../../sim/sequence/index.ts';

/** A search over a problem, and how often each check is answered wrongly: `error`, and .01 where it is a repair. */
export function searchOf(problem: TestProblem, settled: number, error: number) {
	const total = problem.weights.reduce((sum, weight) => sum + weight, 0);
	const table = makeOutcomeTable(problem.outcomes, problem.weights.length);
	const refundOutcome = Int32Array.from(problem.costs, (_, check) => {
		const outcome = problem.refunds?.[check]?.outcome;
		return outcome === undefined ? -1 : (table.labels[check]?.indexOf(outcome) as number);
	});
	const search: TableSearch = {
		table,
		weights: Float64Array.from(problem.weights, (weight) => weight / total),
		repairs: numberRepairs(problem.repairs ?? problem.weights.map((_, i) => i)),
		seconds: makeSeconds(problem.costs, {
			refund: Float64Array.from(problem.costs, (_, check) => problem.refunds?.[check]?.seconds ?? 0),
			refundOutcome,
		}),
		settled,
	};
	return { search, errors: Float64Array.from(refundOutcome, (outcome) => (outcome >= 0 ? 0.01 : error)) };
}

/** How the next check is chosen: by `bestCheck`, or by nothing but information a second. */
export type Chooser = 'best' | 'gain';

function choose(
	chooser: Chooser,
	search: TableSearch,
	errors: Float64Array,
	excluded: readonly number[],
): number | null {
	if (chooser === 'best') return bestCheck(search, { errors, excluded })?.check ?? null;
	if (sharesByRepair(search).some((share) => share >= search.settled)) return null;
	const checks = Int32Array.from(errors.keys()).filter((check) => !excluded.includes(check));
	const first = rankChecks(search, suspectsByRepair(search), checks, { errors })[0];
	return first && first.gain >= 1e-6 ? first.check : null;
}

/** One walk: the checks made, net seconds, the repair it ended on and whether that is the right one. */
export interface Walk {
	readonly made: readonly number[];
	readonly seconds: number;
	readonly right: boolean;
	/** The share of the weight that the repair ended on holds. */
	readonly share: number;
}

/**
 * Walks from the complaint to the verdict. `wrong(step, check)` says whether an answer is wrong; which wrong one it is
 * hangs on the random stream. A repair that clears the fault ends the walk.
 */
export function softWalk(
	start: TableSearch,
	errors: Float64Array,
	truth: number,
	chooser: Chooser,
	random: Random,
	wrong: (step: number, check: number) => boolean,
): Walk {
	const { table, seconds, repairs } = start;
	let search = start;
	let spent = 0;
	const made: number[] = [];
	for (;;) {
		const check = choose(chooser, search, errors, made);
		if (check === null) {
			const shares = sharesByRepair(search);
			const share = Math.max(...shares);
			return { made, seconds: spent, right: shares.indexOf(share) === repairs[truth], share };
		}
		const count = table.counts[check] as number;
		const right = outcomesOf(table, check)[truth] as number;
		const slip = count > 1 && wrong(made.length, check);
		const answer = slip ? (right + random.int(1, count - 1)) % count : right;
		spent += seconds.base[check] as number;
		made.push(check);
		if (seconds.refundOutcome[check] === right) {
			// repaired, whatever was thought to be seen
			return { made, seconds: spent - (seconds.refund[check] as number), right: true, share: 1 };
		}
		const error = errors[check] as number;
		search = { ...search, weights: updateWeights(search.weights, outcomesOf(table, check), answer, error, count) };
	}
}

/** Walks many problems and sums up. `slips`: never wrong, wrong by chance at each check's rate, or once in the first six. */
export function manyWalks(
	problems: readonly TestProblem[],
	chooser: Chooser,
	slips: 'none' | 'chance' | 'one',
	settled = 0.95,
) {
	let seconds = 0;
	let right = 0;
	let checks = 0;
	problems.forEach((problem, i) => {
		const { search, errors } = searchOf(problem, settled, 0.05);
		const random = makeRandom(i).fork(slips);
		let rest = random.next();
		const truth = search.weights.findIndex((weight) => {
			rest -= weight;
			return rest <= 0;
		});
		const at = random.int(0, 5);
		const wrong = (step: number, check: number) => {
			if (slips === 'chance') return random.fork(`slip ${check}`).chance(errors[check] as number);
			return slips === 'one' && step === at && (errors[check] as number) > 0.01;
		};
		const walk = softWalk(search, errors, truth, chooser, random.fork('which'), wrong);
		seconds += walk.seconds;
		right += walk.right ? 1 : 0;
		checks += walk.made.length;
	});
	const n = problems.length;
	return { seconds: seconds / n, right: right / n, checks: checks / n };
}
