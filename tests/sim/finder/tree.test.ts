import { describe, expect, test } from 'vitest';
import { bundledRig, RIG_IDS } from '../../../shared/sheet/index.ts';
import {
	type FaultTree,
	faultTree,
	finderOn,
	hiddenRig,
	makeFaultDrill,
	openOutcomes,
	reviewWalk,
	type WalkAnswer,
} from '../../../sim/finder/index.ts';
import { runs } from '../../runs.ts';
import { textOf, walkGig } from './gig.ts';

const SCENES = [
	['one-wash', 'dark', 'wash-1'],
	['four-in-line', 'dark', 'wash-3'],
	['leader-and-three', 'follower-silent', 'wash-3'],
	['two-universes', 'dark', 'bar-4'],
	['mixed-panels', 'flicker', 'old-2'],
] as const;

/** Every end of a tree, with the answers that lead there. */
function endsOf(
	tree: FaultTree,
	way: readonly (readonly [check: string, outcome: string])[] = [],
): { way: typeof way; end: Extract<FaultTree, { kind: 'end' }> }[] {
	if (tree.kind === 'end') return [{ way, end: tree }];
	return tree.branches.flatMap((branch) => endsOf(branch.tree, [...way, [tree.check.id, branch.outcome]]));
}

describe.each(SCENES)('the printed tree of %s, %s at %s', (rig, kind, fixture) => {
	const bench = openOutcomes(bundledRig(rig), { kind, fixture });
	const printed = faultTree(bench, 0);
	const ends = endsOf(printed.tree);

	test('leads each suspect to one end that names it and its mend', () => {
		expect(ends.length).toBe(printed.ends);
		for (const [at, candidate] of bench.candidates.entries()) {
			const mine = ends.filter(({ way }) =>
				way.every(
					([check, outcome]) => bench.outcomes[bench.checks.findIndex(({ id }) => id === check)]?.[at] === outcome,
				),
			);
			expect(mine).toHaveLength(1);
			const end = mine[0]?.end;
			expect(end?.suspects.map(({ id }) => id)).toContain(textOf(candidate.faults));
			expect(end?.repairs.map(({ id, place }) => `${id}@${place}`)).toContain(candidate.repair);
		}
	});

	test('asks nothing twice on a way, and every answer leads on', () => {
		for (const { way, end } of ends) {
			expect(new Set(way.map(([check]) => check)).size).toBe(way.length);
			expect(end.suspects.length).toBeGreaterThan(0);
			expect(end.repairs.length).toBeGreaterThan(0);
		}
	});

	test('a page’s worth leaves light ends together and loses nobody', () => {
		const page = faultTree(bench, 0.03);
		expect(page.ends).toBeLessThanOrEqual(printed.ends);
		const ends = endsOf(page.tree).map(({ end }) => end.suspects.map(({ id }) => id));
		// one that came while the rig ran may stand at another end than the same one from before, and at each end once
		for (const ids of ends) expect(new Set(ids).size).toBe(ids.length);
		expect(new Set(ends.flat())).toEqual(new Set(bench.candidates.map(({ faults }) => textOf(faults))));
	});
});

describe('a fault drill', () => {
	const seeds = Array.from({ length: runs(3, 40) }, (_, i) => i + 1);

	test('hides the same for the same seed, and is solved by its own finder', () => {
		for (const rig of RIG_IDS.filter((id) => id !== 'long-line')) {
			for (const seed of seeds) {
				const drill = makeFaultDrill(rig, seed);
				expect(makeFaultDrill(rig, seed)).toEqual(drill);
				expect(JSON.parse(JSON.stringify(drill))).toEqual(drill);
				const bench = openOutcomes(drill.sheet, drill.complaint);
				const walked = walkGig(bench, hiddenRig(drill));
				expect(
					walked.verdict?.suspects.map(({ id }) => id),
					`${rig} ${seed}`,
				).toContain(textOf(drill.faults));
			}
		}
	});

	test('two faults are two that both show the complaint', () => {
		const drill = makeFaultDrill('four-in-line', 3, 2);
		expect(drill.faults).toHaveLength(2);
		const walked = walkGig(openOutcomes(drill.sheet, drill.complaint), hiddenRig(drill));
		expect(walked.cleared).toBe(true);
		expect(walked.mended.length).toBeGreaterThanOrEqual(2);
	});
});

describe('a walk gone through again', () => {
	const drill = makeFaultDrill('four-in-line', 7);
	const bench = openOutcomes(drill.sheet, drill.complaint);
	const rig = hiddenRig(drill);
	const answer = (id: string): WalkAnswer => ({
		did: 'answer',
		check: id,
		outcome: bench.checks.find((check) => check.id === id)?.read(rig) ?? '',
	});

	test('the finder’s own walk is best at every step', () => {
		const finder = finderOn(bench);
		for (let next = finder.next(); next; next = finder.next()) finder.answer(next.check.id, next.check.read(rig));
		const review = reviewWalk(bench, finder.steps);
		expect(review.map(({ judged }) => judged)).toEqual(finder.steps.map(() => 'best'));
		for (const { seconds } of review) expect(seconds).toBeGreaterThan(0);
	});

	test('a swap before any look is premature, and a look asked of what is known is redundant', () => {
		const swap =
			bench.checks.find(({ kind }) => kind === 'mend-swap-fixture') ?? bench.checks.find(({ sort }) => sort === 'swap');
		if (!swap) throw new Error('nothing to swap');
		expect(reviewWalk(bench, [answer(swap.id)])[0]?.judged).toBe('premature');
		const looks = bench.checks.filter(({ sort }) => sort === 'look').map(({ id }) => answer(id));
		expect(reviewWalk(bench, looks).map(({ judged }) => judged)).toContain('redundant');
	});
});
