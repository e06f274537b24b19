import { describe, expect, test } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { type Finder, finderOn, openOutcomes, type RigOutcomes } from '../../../sim/finder/index.ts';

// Where a walk ends and what is said then, on the very edge of each number that decides it: ours, no source. The suspects are those of a real
// rig, with weights of the test's own.

const whole = openOutcomes(bundledRig('four-in-line'), { kind: 'dark', fixture: 'wash-3' });

/** The finder with these suspects alone, by weight, and with such checks. */
function among(weights: Readonly<Record<string, number>>, wanted: (kind: string) => boolean = () => true): Finder {
	const kept = Object.entries(weights).map(([fault, weight]) => {
		const at = whole.candidates.findIndex(({ faults }) => faults[0]?.fault === fault && faults[0].place === 'wash-3');
		const candidate = whole.candidates[at];
		if (!candidate) throw new Error(`no ${fault} here`);
		return { at, candidate: { ...candidate, weight } };
	});
	const checks = [...whole.checks.entries()].filter(([, { kind }]) => wanted(kind));
	const bench: RigOutcomes = {
		...whole,
		candidates: kept.map(({ candidate }) => candidate),
		checks: checks.map(([, check]) => check),
		outcomes: checks.map(([row]) => kept.map(({ at }) => whole.outcomes[row]?.[at] ?? '')),
	};
	return finderOn(bench);
}

const noChecks = (): boolean => false;
const onlyMends = (kind: string): boolean => kind.startsWith('mend-');
const named = (finder: Finder): string[] => finder.verdict()?.suspects.map(({ id }) => id.split('@')[0] ?? '') ?? [];

describe('a verdict', () => {
	test('comes once one repair holds 95 in 100 of what is known, and no sooner', () => {
		expect(among({ 'switched-off': 0.9501, 'battery-flat': 0.0499 }).verdict()?.because).toBe('sure');
		expect(among({ 'switched-off': 0.9499, 'battery-flat': 0.0501 }).verdict()).toBeNull();
	});

	test('takes suspects that one repair clears for one', () => {
		expect(among({ 'battery-flat': 0.5, 'switched-off': 0.5 }).verdict()).toBeNull();
		const finder = among({ 'levels-down': 0.5, 'ultraviolet-alone': 0.46, 'switched-off': 0.04 });
		expect(finder.verdict()?.because).toBe('sure');
	});

	test('names those with a twentieth of the heaviest, and none below', () => {
		const finder = among({ 'switched-off': 1, 'battery-flat': 0.0501, 'lens-covered': 0.0499 }, noChecks);
		expect(named(finder)).toEqual(['switched-off', 'battery-flat']);
	});

	test('comes where no check is left to tell more, with the repairs by weight over seconds', () => {
		const finder = among({ 'battery-flat': 0.8, 'switched-off': 0.2 }, noChecks);
		const verdict = finder.verdict();
		expect(finder.next()).toBeNull();
		expect(verdict).toMatchObject({ because: 'no-check-left', confirmed: false, near: [] });
		// a switch takes 5 s and a battery 90: what is four times as rare comes first
		expect(verdict?.repairs.map(({ check }) => check)).toEqual(['mend-switch-on@wash-3', 'mend-fresh-battery@wash-3']);
		const rare = among({ 'battery-flat': 0.96, 'switched-off': 0.04 }, noChecks).verdict();
		expect(rare?.repairs[0]?.check).toBe('mend-fresh-battery@wash-3');
	});

	test('is confirmed by the repair that helps, and a repair that does not help rules its suspect out', () => {
		const helped = among({ 'battery-flat': 0.5, 'switched-off': 0.5 }, onlyMends);
		helped.answer('mend-switch-on@wash-3', 'cleared');
		expect(helped.verdict()).toMatchObject({ because: 'mended', confirmed: true });
		expect(named(helped)).toEqual(['switched-off']);
		const other = among({ 'battery-flat': 0.5, 'switched-off': 0.5 }, onlyMends);
		other.answer('mend-switch-on@wash-3', 'still');
		expect(named(other)).toContain('battery-flat');
		expect(named(other)).not.toContain('switched-off');
		expect(other.suspects().find(({ id }) => id.startsWith('switched-off'))?.weight).toBeLessThan(1e-4);
	});

	test('says that nothing known fits once all that is known is ruled out', () => {
		const finder = among({ 'battery-flat': 0.5, 'switched-off': 0.5 }, onlyMends);
		finder.answer('mend-switch-on@wash-3', 'still');
		finder.answer('mend-fresh-battery@wash-3', 'still');
		expect(finder.verdict()).toMatchObject({ because: 'unknown', confirmed: false, repairs: [] });
		expect(finder.verdict()?.suspects.map(({ id }) => id)).toEqual(['unknown']);
		expect(finder.verdict()?.near.map(({ place }) => place)).toEqual(['wash-3']);
	});
});
