import { expect, it } from 'vitest';
import { rigLikeProblem, withMendAndSee } from './problems.ts';
import { type Chooser, manyWalks } from './softwalk.ts';

const WALKS = 2000;
const PRICE = 600;

const sets = {
	'30 suspects, 50 checks': Array.from({ length: WALKS }, (_, i) => rigLikeProblem(i % 250, 30, 50)),
	'30 suspects, 50 checks and their repairs': Array.from({ length: WALKS }, (_, i) =>
		withMendAndSee(rigLikeProblem(i % 250, 30, 50), (repair) => 15 + (`${repair}`.length % 5) * 20),
	),
};

/*
 * Seconds and rightness can be traded for each other, so the two choosers are held against each other by seconds plus
 * ten minutes for each walk that ends on a wrong repair: the price that bestCheck itself goes by.
 */
it.each(Object.entries(sets))('walks with answers wrong one time in twenty: %s', (name, problems) => {
	const rows: Record<string, Record<string, string>> = {};
	const priced: Record<string, number> = {};
	for (const slips of ['none', 'chance', 'one'] as const) {
		for (const chooser of ['gain', 'best'] satisfies Chooser[]) {
			const { seconds, right, checks } = manyWalks(problems, chooser, slips);
			priced[`${slips} ${chooser}`] = seconds + PRICE * (1 - right);
			rows[
				`${{ none: 'no wrong answer', chance: 'wrong by chance', one: 'one wrong of the first six' }[slips]}, ${chooser}`
			] = {
				seconds: seconds.toFixed(1),
				right: `${(100 * right).toFixed(1)} %`,
				checks: checks.toFixed(2),
				'priced seconds': (seconds + PRICE * (1 - right)).toFixed(1),
			};
		}
	}
	console.log(`${name}: ${WALKS} walks, settled at .95`);
	console.table(rows);
	expect(priced['chance best']).toBeLessThan(priced['chance gain'] as number);
});
