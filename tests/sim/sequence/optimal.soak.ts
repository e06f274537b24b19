import { describe, expect, it } from 'vitest';
import type { TestProblem } from '../../../sim/sequence/index.ts';
import { randomProblem, rigLikeProblem } from './problems.ts';
import { ENTRIES, type Entry, rowsOf, standings } from './standings.ts';

const all = Object.keys(ENTRIES) as Entry[];
const unsolved: readonly Entry[] = all.filter((entry) => entry !== 'exact');

function many(count: number, make: (seed: number) => TestProblem): TestProblem[] {
	return Array.from({ length: count }, (_, seed) => make(seed));
}

const rounds: [string, TestProblem[], readonly Entry[], { mean: number; worst: number }][] = [
	[
		'random, 10 to 14 suspects, 14 checks',
		many(300, (s) => randomProblem(s, 10 + (s % 5))),
		all,
		{ mean: 1.002, worst: 1.02 },
	],
	[
		'random, 18 to 22 suspects, 14 checks',
		many(100, (s) => randomProblem(s, 18 + (s % 5))),
		all,
		{ mean: 1.01, worst: 1.01 },
	],
	['rig-like, 16 suspects, 18 checks', many(60, (s) => rigLikeProblem(s, 16, 18)), all, { mean: 1.002, worst: 1.02 }],
	[
		'random, 40 to 60 suspects, 14 checks',
		many(40, (s) => randomProblem(s, 40 + (s % 21))),
		unsolved,
		{ mean: 1.005, worst: 1.05 },
	],
	[
		'rig-like, 40 to 60 suspects, 14 checks',
		many(40, (s) => rigLikeProblem(s, 40 + (s % 21), 14)),
		unsolved,
		{ mean: 1.005, worst: 1.05 },
	],
];

describe('expected cost against the long search, which is exact', () => {
	it.each(rounds)('%s', (name, problems, entries, bar) => {
		const table = standings(problems, entries);
		console.log(`${name}, ${problems.length} problems: expected cost over the optimum`);
		console.table(rowsOf(table));
		expect(table.default.mean).toBeLessThanOrEqual(bar.mean);
		expect(table.default.worst).toBeLessThanOrEqual(bar.worst);
		expect(table['gain a second'].mean).toBeGreaterThan(table.default.mean);
	});
});
