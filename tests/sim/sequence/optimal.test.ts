import { expect, it } from 'vitest';
import { randomProblem, rigLikeProblem } from './problems.ts';
import { standings } from './standings.ts';

it('the default stands within 1.002 of the optimum on 60 random problems of 10 to 14 suspects, at worst 1.02', () => {
	const problems = Array.from({ length: 60 }, (_, seed) => randomProblem(seed, 10 + (seed % 5)));
	const table = standings(problems, ['exact', 'default', 'played, exact from 8 down', 'gain a second']);
	expect(table.exact.worst).toBeCloseTo(1, 12);
	for (const entry of ['default', 'played, exact from 8 down'] as const) {
		expect(table[entry].mean).toBeLessThanOrEqual(1.002);
		expect(table[entry].worst).toBeLessThanOrEqual(1.02);
	}
	expect(table['gain a second'].mean).toBeGreaterThan(table.default.mean);
});

it('within 1.01 of it with 18 to 22 suspects, and with 40, where it is no longer solved but played', () => {
	const some = [
		...Array.from({ length: 5 }, (_, seed) => randomProblem(seed, 18 + seed)),
		...Array.from({ length: 4 }, (_, seed) => randomProblem(seed, 40)),
		...Array.from({ length: 4 }, (_, seed) => rigLikeProblem(seed, 40, 12)),
	];
	const table = standings(some, ['default']);
	expect(table.default.worst).toBeLessThanOrEqual(1.01);
});
