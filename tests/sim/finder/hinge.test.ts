import { describe, expect, it } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { ELSE, type Finder, finderOn, isRepair, openOutcomes } from '../../../sim/finder/index.ts';
import { textTriedBy } from '../../../sim/finder/tried.ts';
import { textOf } from './gig.ts';

// without the look along the row, which leaves too few walks that one wrong answer fools
const bench = openOutcomes(bundledRig('four-in-line'), { kind: 'no-answer', fixture: 'wash-2' }, { edition: 2 });

/** Every so many of the candidates, from one on: each takes a walk. */
const oneIn = (many: number, from: number) => [...bench.candidates.keys()].filter((at) => at % many === from);

/** Walks to a verdict on a candidate's own column, the answer numbered `slip` being another than it shows. */
function walked(at: number, slip: number): { finder: Finder; slipped: boolean } {
	const finder = finderOn(bench);
	let n = 0;
	let slipped = false;
	for (let next = finder.next(); next && n < 60; next = finder.next()) {
		const row = bench.checks.findIndex(({ id }) => id === next.check.id);
		const shows = bench.outcomes[row]?.[at] ?? '';
		const wrong = next.outcomes.find(({ id }) => id !== shows)?.id ?? shows;
		// a repair that was made is seen to help or not: nobody is wrong there
		const isSlip = n++ === slip && !isRepair(next.check) && wrong !== shows;
		slipped ||= isSlip;
		finder.answer(next.check.id, isSlip ? wrong : shows);
	}
	return { finder, slipped };
}

const repairsOf = (finder: Finder): string[] => (finder.verdict()?.repairs ?? []).map(({ check }) => check);

describe('what a verdict hangs on', () => {
	it('is told wherever one wrong answer has led to another repair than the true one', () => {
		let fooled = 0;
		// few walks go astray: some of those that do, among others
		for (const [slip, sample] of [
			[2, oneIn(12, 11)],
			[3, oneIn(4, 0)],
			[5, oneIn(12, 9)],
		] as const) {
			for (const at of sample) {
				const { faults, repair } = bench.candidates[at] ?? { faults: [], repair: '' };
				const { finder, slipped } = walked(at, slip);
				const verdict = finder.verdict();
				if (!slipped || !verdict || verdict.confirmed || verdict.because === 'unknown') continue;
				if (repairsOf(finder).some((id) => textTriedBy(id) === repair)) continue;
				fooled++;
				const hinge = finder.hinge();
				expect(hinge, `${textOf(faults)} at ${slip}`).not.toBeNull();
				expect(hinge?.suspect.against).toHaveLength(1);
			}
		}
		expect(fooled).toBeGreaterThan(2);
	});

	it('names a check that truly parts the two, and is not one that was answered', () => {
		let settled = 0;
		for (const at of oneIn(2, 1)) {
			const { finder } = walked(at, -1);
			const hinge = finder.hinge();
			if (!hinge?.settle) continue;
			settled++;
			const { check, here, there } = hinge.settle;
			expect(finder.steps.map((step) => step.check)).not.toContain(check);
			expect(here).not.toContain(there);
			const row = bench.outcomes[bench.checks.findIndex(({ id }) => id === check)] ?? [];
			const shown = (id: string) =>
				bench.candidates.flatMap(({ faults }, n) => (textOf(faults) === id ? [row[n]] : []));
			expect(new Set(shown(hinge.suspect.id))).toEqual(new Set([there]));
			for (const { id } of finder.verdict()?.suspects ?? [])
				for (const outcome of shown(id)) expect(here).toContain(outcome);
		}
		expect(settled).toBeGreaterThan(2);
	});

	it('is nothing before a verdict, after a repair that helped, and where nothing known fits', () => {
		const finder = finderOn(bench);
		expect(finder.hinge()).toBeNull();
		const { finder: ended } = walked(0, -1);
		const [repair] = repairsOf(ended);
		expect(repair).toBeDefined();
		ended.answer(repair ?? '', 'cleared');
		expect(ended.verdict()?.because).toBe('mended');
		expect(ended.hinge()).toBeNull();
		const lost = finderOn(bench);
		for (let at = 0; at < 60 && lost.verdict()?.because !== 'unknown'; at++) {
			const next = lost.next();
			const [repairOf] = repairsOf(lost);
			const id = next?.check.id ?? repairOf ?? '';
			lost.answer(id, textTriedBy(id) ? 'still' : ELSE);
		}
		expect(lost.verdict()?.because).toBe('unknown');
		expect(lost.hinge()).toBeNull();
	});
});
