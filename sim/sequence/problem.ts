import { InputError, shown } from '../../shared/error/index.ts';
import { numberMends, type Search } from './search.ts';
import { makeSeconds } from './seconds.ts';
import { makeOutcomeTable, type OutcomeTable } from './table.ts';
import type { Places, Refund, TestProblem } from './types.ts';

function nonsense(code: string, path: string, sentence: string): never {
	throw new InputError(`sequence.${code}`, path, sentence);
}

function requireList(list: unknown, path: string, what: string, length?: number): void {
	if (!Array.isArray(list)) nonsense('list', path, `${what} are a list; found ${shown(list)}.`);
	if (length !== undefined && list.length !== length) {
		nonsense('lengths', path, `${what} are ${length}, one for each; found ${list.length}. Give each its own.`);
	}
}

function requireEach(list: readonly number[], path: string, code: string, what: string): void {
	list.forEach((value, i) => {
		if (!(Number.isFinite(value) && value >= 0)) {
			nonsense(code, `${path}[${i}]`, `${what} is a finite number, 0 or more; found ${shown(value)}.`);
		}
	});
}

function checkRefunds(refunds: readonly (Refund | null)[], costs: readonly number[], table: OutcomeTable) {
	requireList(refunds, 'refunds', 'Refunds', costs.length);
	const refund = new Float64Array(costs.length);
	const refundOutcome = new Int32Array(costs.length).fill(-1);
	refunds.forEach((given, check) => {
		if (given === null) return;
		const most = costs[check] as number;
		if (!(given.seconds >= 0 && given.seconds <= most)) {
			nonsense(
				'refund',
				`refunds[${check}].seconds`,
				`What an outcome gives back is 0 to the check's own cost of ${most}; found ${shown(given.seconds)}.`,
			);
		}
		refund[check] = given.seconds;
		refundOutcome[check] = (table.labels[check] ?? []).indexOf(given.outcome);
	});
	return { refund, refundOutcome };
}

function checkPlaces({ at, of, walk }: Places, checks: number) {
	requireList(walk, 'places.walk', 'Walks');
	const places = walk.length;
	const requirePlace = (place: number, path: string) => {
		if (!(Number.isInteger(place) && place >= 0 && place < places)) {
			nonsense('place', path, `A place is a whole number from 0 to ${places - 1}; found ${shown(place)}.`);
		}
	};
	requirePlace(at, 'places.at');
	requireList(of, 'places.of', 'Places of checks', checks);
	for (const [check, place] of of.entries()) requirePlace(place, `places.of[${check}]`);
	walk.forEach((row, from) => {
		requireList(row, `places.walk[${from}]`, 'Walks from a place', places);
		requireEach(row, `places.walk[${from}]`, 'walk', 'A walk');
	});
	return { place: Int32Array.from(of), places, walk: Float64Array.from(walk.flat()) };
}

/**
 * Holds a problem to what it must be and packs it for the choosers; weights come out summing to 1.
 * @throws InputError codes `sequence.list`, `.lengths`, `.suspects`, `.weight`, `.weights`, `.cost`, `.outcomes`,
 * `.refund`, `.place`, `.walk`, each with the path of what is wrong.
 */
export function checkProblem(problem: TestProblem): Search {
	if (typeof problem !== 'object' || problem === null) {
		nonsense('list', '', `A problem has weights, costs and outcomes; found ${shown(problem)}.`);
	}
	const { weights, costs, outcomes, mends, refunds, places } = problem;
	requireList(weights, 'weights', 'Weights');
	if (weights.length === 0) nonsense('suspects', 'weights', 'A problem has at least one suspect; found none.');
	requireEach(weights, 'weights', 'weight', 'A weight');
	const total = weights.reduce((sum, weight) => sum + weight, 0);
	if (!(total > 0 && Number.isFinite(total))) {
		nonsense('weights', 'weights', `Weights sum to a finite number above 0; these sum to ${total}.`);
	}
	requireList(outcomes, 'outcomes', 'Outcomes');
	requireList(costs, 'costs', 'Costs', outcomes.length);
	requireEach(costs, 'costs', 'cost', 'A cost');
	outcomes.forEach((row, check) => {
		requireList(row, `outcomes[${check}]`, 'Outcomes of a check', weights.length);
		row.forEach((outcome, suspect) => {
			if (typeof outcome === 'string' || Number.isFinite(outcome)) return;
			const path = `outcomes[${check}][${suspect}]`;
			nonsense('outcomes', path, `An outcome is a text or a finite number; found ${shown(outcome)}.`);
		});
	});
	if (mends !== undefined) requireList(mends, 'mends', 'Mends', weights.length);
	const table = makeOutcomeTable(outcomes, weights.length);
	return {
		table,
		weights: Float64Array.from(weights, (weight) => weight / total),
		mends: mends ? numberMends(mends) : Int32Array.from(weights, (_, suspect) => suspect),
		seconds: makeSeconds(costs, {
			...(refunds ? checkRefunds(refunds, costs, table) : {}),
			...(places ? checkPlaces(places, costs.length) : {}),
		}),
		settled: 1,
	};
}
