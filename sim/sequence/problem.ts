import { type ErrorFacts, InputError, requireWhole, shown } from '../../shared/error/index.ts';
import { makeOutcomeTable, numberRepairs, type OutcomeTable, type TableSearch } from './table.ts';
import { makeSeconds, type Places, type Refund, type TestProblem } from './types.ts';

type ListOf = Extract<ErrorFacts['sequence.list'], { readonly of: string }>['of'];

function requireList(list: unknown, path: string, of: ListOf, length?: number): void {
	if (!Array.isArray(list)) throw new InputError('sequence.list', path, { expected: 'list', of, found: shown(list) });
	if (length !== undefined && list.length !== length)
		throw new InputError('sequence.lengths', path, { expected: 'length', of, length, found: shown(list.length) });
}

function requireEach(list: readonly number[], path: string, of: 'weight' | 'cost' | 'walk'): void {
	list.forEach((value, i) => {
		if (Number.isFinite(value) && value >= 0) return;
		const facts = { expected: 'from-0', of, found: shown(value) } as const;
		throw new InputError<`sequence.${typeof of}`>(
			`sequence.${of}`,
			`${path}[${i}]`,
			facts as ErrorFacts[`sequence.${typeof of}`],
		);
	});
}

function checkRefunds(refunds: readonly (Refund | null)[], costs: readonly number[], table: OutcomeTable) {
	requireList(refunds, 'refunds', 'refunds', costs.length);
	const refund = new Float64Array(costs.length);
	const refundOutcome = new Int32Array(costs.length).fill(-1);
	refunds.forEach((given, check) => {
		if (given === null) return;
		const most = costs[check] as number;
		if (!(given.seconds >= 0 && given.seconds <= most)) {
			throw new InputError('sequence.refund', `refunds[${check}].seconds`, {
				expected: 'refund',
				hi: most,
				found: shown(given.seconds),
			});
		}
		refund[check] = given.seconds;
		refundOutcome[check] = (table.labels[check] ?? []).indexOf(given.outcome);
	});
	return { refund, refundOutcome };
}

function checkPlaces({ at, of, walk }: Places, checks: number) {
	requireList(walk, 'places.walk', 'walks');
	const places = walk.length;
	const requirePlace = (place: number, path: string) =>
		requireWhole(place, { lo: 0, hi: places - 1, code: 'sequence.place', path, of: 'place' });
	requirePlace(at, 'places.at');
	requireList(of, 'places.of', 'places', checks);
	for (const [check, place] of of.entries()) requirePlace(place, `places.of[${check}]`);
	walk.forEach((row, from) => {
		requireList(row, `places.walk[${from}]`, 'walk-row', places);
		requireEach(row, `places.walk[${from}]`, 'walk');
	});
	return { place: Int32Array.from(of), places, walk: Float64Array.from(walk.flat()) };
}

/**
 * Holds a problem to what it must be and packs it for the choosers; weights come out summing to 1.
 * @throws InputError codes `sequence.list`, `.lengths`, `.suspects`, `.weight`, `.weights`, `.cost`, `.outcomes`,
 * `.refund`, `.place`, `.walk`, each with the path of what is wrong.
 */
export function checkProblem(problem: TestProblem): TableSearch {
	if (typeof problem !== 'object' || problem === null) {
		throw new InputError('sequence.list', '', { expected: 'problem', found: shown(problem) });
	}
	const { weights, costs, outcomes, repairs, refunds, places } = problem;
	requireList(weights, 'weights', 'weights');
	if (weights.length === 0) throw new InputError('sequence.suspects', 'weights', { trouble: 'no-suspects' });
	requireEach(weights, 'weights', 'weight');
	const total = weights.reduce((sum, weight) => sum + weight, 0);
	if (!(total > 0 && Number.isFinite(total))) {
		throw new InputError('sequence.weights', 'weights', { trouble: 'weights-sum', found: shown(total) });
	}
	requireList(outcomes, 'outcomes', 'outcomes');
	requireList(costs, 'costs', 'costs', outcomes.length);
	requireEach(costs, 'costs', 'cost');
	outcomes.forEach((row, check) => {
		requireList(row, `outcomes[${check}]`, 'row', weights.length);
		row.forEach((outcome, suspect) => {
			if (typeof outcome === 'string' || Number.isFinite(outcome)) return;
			const path = `outcomes[${check}][${suspect}]`;
			throw new InputError('sequence.outcomes', path, {
				expected: 'text-or-finite-number',
				found: shown(outcome),
			});
		});
	});
	if (repairs !== undefined) requireList(repairs, 'repairs', 'repairs', weights.length);
	const table = makeOutcomeTable(outcomes, weights.length);
	return {
		table,
		weights: Float64Array.from(weights, (weight) => weight / total),
		repairs: repairs ? numberRepairs(repairs) : Int32Array.from(weights, (_, suspect) => suspect),
		seconds: makeSeconds(costs, {
			...(refunds ? checkRefunds(refunds, costs, table) : {}),
			...(places ? checkPlaces(places, costs.length) : {}),
		}),
		settled: 1,
	};
}
