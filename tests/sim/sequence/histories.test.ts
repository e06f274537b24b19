import { describe, expect, it } from 'vitest';
import { askNext, rankChecks, suspectsByRepair, type TestProblem } from '../../../sim/sequence/index.ts';
import { runs } from '../../runs.ts';
import { type Asked, type NextCheck, overHistories } from './histories.ts';
import { randomProblem, rigLikeProblem, withMendAndSee } from './problems.ts';
import { searchOf } from './softwalk.ts';

/** Seconds that a wrong end is taken to cost, as `askNext` has it. */
const WRONG_SECONDS = 600;

const byGain =
	({ search, errors }: Asked): NextCheck =>
	(weights, asked) => {
		const checks = Int32Array.from(Array.from(errors).keys()).filter((check) => !asked.includes(check));
		const now = { ...search, weights };
		const first = rankChecks(now, suspectsByRepair(now), checks, { errors })[0];
		return first && first.gain >= 1e-6 ? first.check : null;
	};

const byAsking =
	({ search, errors }: Asked): NextCheck =>
	(weights, excluded) =>
		askNext({ ...search, weights }, { errors, excluded })?.check ?? null;

const mean = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0) / list.length;

/** Costs over the least there is, of plain gain a second and of `askNext`. */
function against(problems: readonly TestProblem[], error: number) {
	const gain: number[] = [];
	const asked: number[] = [];
	for (const problem of problems) {
		const ground: Asked = { ...searchOf(problem, 0.95, error), wrongSeconds: WRONG_SECONDS };
		const least = overHistories(ground);
		gain.push(overHistories(ground, byGain(ground)) / least);
		asked.push(overHistories(ground, byAsking(ground)) / least);
	}
	return { gain: mean(gain), asked: mean(asked), worst: Math.max(...asked), best: Math.min(...gain, ...asked) };
}

const many = (make: (seed: number) => TestProblem): TestProblem[] =>
	Array.from({ length: runs(8, 20) }, (_, seed) => make(seed));

const sets: readonly [string, TestProblem[]][] = [
	['random, 7 suspects and 6 checks', many((seed) => randomProblem(seed, 7, 6))],
	['rig-like, 8 suspects and 6 checks', many((seed) => rigLikeProblem(seed, 8, 6))],
	[
		'rig-like, 5 suspects, 2 checks and their repairs',
		many((seed) => withMendAndSee(rigLikeProblem(seed, 5, 2), (repair) => 15 + (`${repair}`.length % 5) * 20)),
	],
];

describe('over every history of answers, right and wrong', () => {
	it.each(sets.flatMap(([name, problems]) => [0.02, 0.05, 0.15].map((error) => [name, error, problems] as const)))(
		'%s, %d of them wrong: within 1.01 of the least there is, at worst 1.1, and no dearer than gain a second',
		(name, error, problems) => {
			const { gain, asked, worst, best } = against(problems, error);
			console.log(
				`${name}, ${error}: gain a second ${gain.toFixed(4)}, asked ${asked.toFixed(4)}, worst ${worst.toFixed(3)}`,
			);
			expect(best).toBeGreaterThan(1 - 1e-9);
			expect(asked).toBeLessThanOrEqual(gain + 1e-9);
			expect(asked).toBeLessThanOrEqual(1.01);
			expect(worst).toBeLessThanOrEqual(1.1);
		},
	);

	it('costs what can be told by hand', () => {
		// two suspects, .5 each; an answer at an error of .1 leaves .9, under .95: both checks are made, whichever way the first went
		const twice: TestProblem = {
			weights: [1, 1],
			costs: [30, 20],
			outcomes: [
				[0, 1],
				[0, 1],
			],
		};
		const { search, errors } = searchOf(twice, 0.95, 0.1);
		// agreeing answers end at 1/82 wrong, which happens 82 times in 100; else nobody is likelier: .18 x .5
		expect(overHistories({ search, errors, wrongSeconds: 0 })).toBeCloseTo(50, 9);
		expect(overHistories({ search, errors, wrongSeconds: 100 })).toBeCloseTo(50 + 100 * (0.01 + 0.09), 9);
		// at .04 one answer settles it: the cheaper
		const surer = searchOf(twice, 0.95, 0.04);
		expect(overHistories({ ...surer, wrongSeconds: 100 })).toBeCloseTo(20 + 4, 9);
		expect(overHistories({ ...surer, wrongSeconds: 100 }, () => 0)).toBeCloseTo(30 + 4, 9);
	});
});
