import fc from 'fast-check';
import type { TestProblem } from '../../../sim/sequence/index.ts';
import { between } from '../../between.ts';

/** What may be in a problem. */
export interface Shape {
	readonly suspects: number;
	readonly checks: number;
	/** Whether there may be repairs for several suspects, refunds, and places. */
	readonly extras: boolean;
}

const weight = between(0.01, 1);
const seconds = fc.integer({ min: 1, max: 180 });

/** Any sound problem up to a size; suspects alike to every check, and checks alike, come up often. */
export function anyProblem({ suspects, checks, extras }: Shape): fc.Arbitrary<TestProblem> {
	return fc.tuple(fc.integer({ min: 1, max: suspects }), fc.integer({ min: 0, max: checks })).chain(([n, m]) => {
		const row = fc.integer({ min: 1, max: 3 }).chain((most) => listOf(fc.integer({ min: 0, max: most }), n));
		const bare = {
			weights: listOf(weight, n),
			costs: listOf(seconds, m),
			outcomes: listOf(row, m),
		};
		if (!extras) return fc.record(bare);
		const place = fc.integer({ min: 0, max: 2 });
		return fc
			.record(
				{
					...bare,
					repairs: listOf(fc.integer({ min: 0, max: n }), n),
					back: listOf(fc.option(fc.tuple(fc.integer({ min: 0, max: 3 }), between(0, 1))), m),
					places: fc.record({
						at: place,
						of: listOf(place, m),
						walk: listOf(listOf(fc.integer({ min: 0, max: 60 }), 3), 3),
					}),
				},
				{ requiredKeys: ['weights', 'costs', 'outcomes'] },
			)
			.map(({ back, ...problem }) =>
				back === undefined
					? problem
					: {
							...problem,
							refunds: back.map(
								(each, check) => each && { outcome: each[0], seconds: each[1] * (problem.costs[check] as number) },
							),
						},
			);
	});
}

function listOf<T>(item: fc.Arbitrary<T>, length: number): fc.Arbitrary<T[]> {
	return fc.array(item, { minLength: length, maxLength: length });
}

/** The same problem with suspects and checks in other orders: `suspects[i]` is the old number of the new suspect i. */
export function reordered(problem: TestProblem, suspects: readonly number[], checks: readonly number[]): TestProblem {
	const at = <T>(list: readonly T[], order: readonly number[]) => order.map((i) => list[i] as T);
	return {
		weights: at(problem.weights, suspects),
		costs: at(problem.costs, checks),
		outcomes: at(problem.outcomes, checks).map((row) => at(row, suspects)),
		...(problem.repairs ? { repairs: at(problem.repairs, suspects) } : {}),
		...(problem.refunds ? { refunds: at(problem.refunds, checks) } : {}),
		...(problem.places ? { places: { ...problem.places, of: at(problem.places.of, checks) } } : {}),
	};
}
