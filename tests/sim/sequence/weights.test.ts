import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import {
	entropyOf,
	makeOutcomeTable,
	orderRepairs,
	sharesByRepair,
	splitBy,
	updateWeights,
} from '../../../sim/sequence/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';

const some = { numRuns: runs(300) };

/** Weights, what each suspect predicts of two checks of four outcomes (4: nothing), answers and error rates. */
const twoAnswers = fc.integer({ min: 1, max: 12 }).chain((n) => {
	const row = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: n, maxLength: n });
	const answer = fc.oneof(fc.integer({ min: 0, max: 3 }), fc.constant('unknown' as const));
	const error = between(1e-6, 0.5);
	return fc.record({
		weights: fc.array(between(1e-6, 1), { minLength: n, maxLength: n }),
		rows: fc.tuple(row, row),
		answers: fc.tuple(answer, answer),
		errors: fc.tuple(error, error),
	});
});

const near = (a: Float64Array, b: Float64Array) => a.every((x, i) => Math.abs(x - (b[i] as number)) < 1e-12);

function refusal(act: () => unknown): [string, string, string] {
	try {
		act();
	} catch (error) {
		if (error instanceof InputError) return [error.code, error.path, errorText(error)];
	}
	throw new Error('nothing was refused');
}

describe('weights after an answer', () => {
	it('sum to 1, strike nobody out and leave the old ones alone', () => {
		fc.assert(
			fc.property(twoAnswers, ({ weights, rows, answers, errors }) => {
				const kept = [...weights];
				const after = updateWeights(weights, rows[0], answers[0], errors[0], 4);
				expect(weights).toEqual(kept);
				expect(after.every((weight) => weight > 0)).toBe(true);
				expect(after.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
			}),
			some,
		);
	});

	it('are the same whichever of two answers comes first', () => {
		fc.assert(
			fc.property(twoAnswers, ({ weights, rows, answers, errors }) => {
				const one = (w: ArrayLike<number>) => updateWeights(w, rows[0], answers[0], errors[0], 4);
				const two = (w: ArrayLike<number>) => updateWeights(w, rows[1], answers[1], errors[1], 4);
				return near(two(one(weights)), one(two(weights)));
			}),
			some,
		);
	});

	it("are Bayes' rule, worked out anew", () => {
		fc.assert(
			fc.property(twoAnswers, ({ weights, rows, answers, errors }) => {
				const answer = answers[0];
				if (answer === 'unknown') return true;
				const error = errors[0];
				const joint = weights.map((weight, i) => {
					const predicted = rows[0][i] as number;
					if (predicted === 4) return weight * 0.25;
					return weight * (predicted === answer ? 1 - error : error / 3);
				});
				const total = joint.reduce((sum, each) => sum + each, 0);
				const wanted = Float64Array.from(joint, (each) => each / total);
				return near(updateWeights(weights, rows[0], answer, error, 4), wanted);
			}),
			some,
		);
	});

	it('do not move on "unknown", nor on an answer that nobody predicts, nor on one that all predict', () => {
		expect([...updateWeights([1, 3], [0, 1], 'unknown', 0.05, 2)]).toEqual([0.25, 0.75]);
		expect([...updateWeights([1, 3], [0, 1], 2, 0.06, 4)]).toEqual([0.25, 0.75]);
		expect([...updateWeights([1, 3], [2, 2], 2, 0.06, 4)]).toEqual([0.25, 0.75]);
		expect([...updateWeights([1, 3], [4, 4], 2, 0.06, 4)]).toEqual([0.25, 0.75]);
	});

	it('strike out where answers are never wrong', () => {
		expect([...updateWeights([1, 1, 2], [0, 1, 1], 1, 0, 2)]).toEqual([0, 1 / 3, 2 / 3]);
	});

	it.each([
		[
			() => updateWeights([1, 1], [0], 0, 0.1, 2),
			'sequence.lengths',
			'outcomesOfCheck',
			/each of the 2 suspects; found 1/,
		],
		[() => updateWeights([1, 1], [0, 1], 0, 0.6, 2), 'sequence.error-rate', 'errorRate', /from 0 to 0.5; found 0.6/],
		[() => updateWeights([1, 1], [0, 1], 2, 0.1, 2), 'sequence.answer', 'answer', /from 0 to 1; found 2/],
		[() => updateWeights([0, 0], [0, 1], 1, 0.1, 2), 'sequence.weights', 'weights', /above 0; these sum to 0/],
		[
			() => updateWeights([1, 0], [0, 1], 1, 0, 2),
			'sequence.contradiction',
			'answer',
			/Take one back, or allow for wrong answers/,
		],
	])('are refused for nonsense (%#)', (act, code, path, sentence) => {
		const found = refusal(act);
		expect(found.slice(0, 2)).toEqual([code, path]);
		expect(found[2]).toMatch(sentence);
	});
});

describe('how a check splits', () => {
	const table = makeOutcomeTable([['a', 'b', null, 'b']], 4, [['c', 'a', 'b']]);

	it('gives each answer its share, answers nobody predicts too, and last the share that predicts nothing', () => {
		expect(table.labels).toEqual([['c', 'a', 'b']]);
		expect([...splitBy(table, [1, 2, 1, 4], 0)]).toEqual([0, 0.125, 0.75, 0.125]);
	});

	it('gives each repair its share', () => {
		const shares = sharesByRepair({ weights: Float64Array.of(1, 2, 5), repairs: Int32Array.of(1, 0, 1) });
		expect([...shares]).toEqual([0.25, 0.75]);
	});

	it('is measured in bits', () => {
		expect(entropyOf([1, 1, 1, 1])).toBeCloseTo(2, 12);
		expect(entropyOf([7])).toBe(0);
		expect(entropyOf([0.5, 0.25, 0.25])).toBeCloseTo(1.5, 12);
	});
});

describe('the order of repairs', () => {
	it('costs no more than any other order', () => {
		const repairs = fc.array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 0, max: 90 })), {
			minLength: 1,
			maxLength: 5,
		});
		const costOf = (order: readonly number[], list: readonly (readonly [number, number])[]) => {
			const total = list.reduce((sum, [weight]) => sum + weight, 0);
			let spent = 0;
			return order.reduce((sum, repair) => {
				const [weight, seconds] = list[repair] as readonly [number, number];
				spent += seconds;
				return sum + (weight / total) * spent;
			}, 0);
		};
		const orders = (left: readonly number[]): number[][] =>
			left.length === 0
				? [[]]
				: left.flatMap((one) => orders(left.filter((other) => other !== one)).map((rest) => [one, ...rest]));
		fc.assert(
			fc.property(repairs, (list) => {
				const { order, expected } = orderRepairs(
					list.map(([weight]) => weight),
					list.map(([, seconds]) => seconds),
				);
				const all = orders(list.map((_, i) => i)).map((each) => costOf(each, list));
				return Math.abs(expected - Math.min(...all)) < 1e-9 && Math.abs(expected - costOf(order, list)) < 1e-9;
			}),
			some,
		);
	});

	it.each([
		[() => orderRepairs([1, 2], [1]), 'sequence.lengths', 'seconds'],
		[() => orderRepairs([1, -2], [1, 1]), 'sequence.weight', 'weights[1]'],
		[() => orderRepairs([1, 2], [1, Number.NaN]), 'sequence.cost', 'seconds[1]'],
		[() => orderRepairs([0, 0], [1, 1]), 'sequence.weights', 'weights'],
	])('is refused for nonsense (%#)', (act, code, path) => {
		expect(refusal(act).slice(0, 2)).toEqual([code, path]);
	});
});
