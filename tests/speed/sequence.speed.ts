import { expect, it } from 'vitest';
import { makeRandom } from '../../shared/random/index.ts';
import { bestCheck, outcomesOf, sequence, updateWeights } from '../../sim/sequence/index.ts';
import { randomProblem, rigLikeProblem, withMendAndSee } from '../sim/sequence/problems.ts';
import { searchOf } from '../sim/sequence/softwalk.ts';

/** The bar, ms: the next check with 1,000 suspects and 300 checks, 95th of 100. */
const BAR = 16;

function timed(act: () => unknown): number {
	const start = performance.now();
	act();
	return performance.now() - start;
}

function spread(times: number[]) {
	const sorted = times.sort((a, b) => a - b);
	const at = (share: number) =>
		(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] as number).toFixed(2);
	return { 'median ms': at(0.5), '95th of 100 ms': at(0.95), 'worst ms': at(1) };
}

it('the next check, on the walk of one suspect after another', () => {
	const rows: Record<string, unknown>[] = [];
	for (const [suspects, checks, repairs] of [
		[30, 60, true],
		[120, 90, true],
		[300, 150, false],
		[1000, 300, false],
	] as const) {
		for (const error of [0.05, 0]) {
			const times: number[] = [];
			const firsts: number[] = [];
			const ways = { exact: 0, played: 0, ranked: 0 };
			for (let seed = 0; times.length < 100; seed++) {
				const bare = rigLikeProblem(seed % 5, suspects, checks);
				const problem = repairs ? withMendAndSee(bare, () => 30) : bare;
				const start = searchOf(problem, 0.95, error);
				const errors = error === 0 ? new Float64Array(problem.costs.length) : start.errors;
				const truth = makeRandom(seed).int(0, suspects - 1);
				const excluded: number[] = [];
				let { search } = start;
				for (;;) {
					let plan: ReturnType<typeof bestCheck> = null;
					const took = timed(() => {
						plan = bestCheck(search, { errors, excluded });
					});
					const found = plan as ReturnType<typeof bestCheck>;
					if (found === null) break;
					if (seed >= 2) {
						times.push(took);
						if (excluded.length === 0) firsts.push(took);
					}
					ways[found.by]++;
					excluded.push(found.check);
					const row = outcomesOf(search.table, found.check);
					const count = search.table.counts[found.check] as number;
					const weights = updateWeights(
						search.weights,
						row,
						row[truth] as number,
						errors[found.check] as number,
						count,
					);
					search = { ...search, weights };
				}
			}
			rows.push({
				suspects,
				checks,
				error,
				repairs,
				...spread(times.slice(0, 100)),
				'first ms': spread(firsts)['median ms'],
				...ways,
			});
		}
	}
	console.log(`bestCheck; the bar is ${BAR} ms for the 95th of 100 at 1,000 suspects and 300 checks`);
	console.table(rows);
	expect(rows).toHaveLength(8);
});

it('whole trees', () => {
	const rows = (
		[
			['random', 14, 14],
			['random', 22, 14],
			['random', 30, 60],
			['rig-like', 30, 60],
			['rig-like', 60, 60],
			['rig-like', 120, 90],
			['rig-like', 300, 150],
		] as const
	).map(([kind, suspects, checks]) => {
		const times = Array.from({ length: 5 }, (_, seed) => {
			const problem = (kind === 'random' ? randomProblem : rigLikeProblem)(seed, suspects, checks);
			return timed(() => sequence(problem));
		});
		return { kind, suspects, checks, ...spread(times) };
	});
	console.table(rows);
	expect(rows).toHaveLength(7);
});
