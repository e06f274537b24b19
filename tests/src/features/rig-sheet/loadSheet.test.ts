import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { figureWords, loadWords, ruleWords } from '#words/plan/index.ts';
import {
	digestsOf,
	emptyPlan,
	figuresOf,
	isOfLoad,
	type Plan,
	type PlanRow,
	withRows,
} from '../../../../shared/plan/index.ts';
import { Figures } from '../../../../src/features/rig-sheet/Figures.tsx';
import { LineSheet } from '../../../../src/features/rig-sheet/LineSheet.tsx';
import { LoadSheet } from '../../../../src/features/rig-sheet/LoadSheet.tsx';
import { nameOf } from '../../../shared/plan/plans.ts';

const escaped = (text: string): string => renderToString(h('p', null, text)).slice(3, -4);

describe('what the load sheet says around its sums', () => {
	const loadText = (plan: Plan): string => renderToString(h(LoadSheet, { plan, digests: digestsOf(plan) }));
	const has = (plan: Plan, words: string): boolean => loadText(plan).includes(escaped(words));
	const wet = withRows(emptyPlan('Hung'), [{ profile: 'tallow-6', overhead: true }, { profile: 'tallow-6' }], nameOf);
	const mains = withRows(emptyPlan('Mains'), [{ profile: 'picket-8' }], nameOf);

	// symptom: with a battery light overhead the sum of weights stood there, and nothing said that its plug was in no sum
	it('names no circuit for battery lights: it says so, whatever else is on the sheet, until one of them has one', () => {
		expect(
			figuresOf(wet)
				.filter(({ id }) => isOfLoad(id))
				.map(({ id }) => id),
		).toEqual(['weight']);
		expect(has(wet, loadWords.countsAsBattery)).toBe(true);
		const [first, second] = wet.rows as [PlanRow, PlanRow];
		expect(has({ ...wet, rows: [first, { ...second, circuit: 'A' }] }, loadWords.countsAsBattery)).toBe(false);
		expect(has({ ...wet, rows: [...wet.rows, ...mains.rows] }, loadWords.countsAsBattery)).toBe(true);
		expect([has(mains, loadWords.countsAsBattery), has(emptyPlan('None'), loadWords.noLoad)]).toEqual([false, true]);
	});

	it('has a weight in pounds first at 120 V, and in kilograms alone elsewhere', () => {
		const at = (volts: number): string =>
			loadText({ ...wet, supply: { ...wet.supply, volts }, kilograms: { 'tallow-6': 45 } });
		expect(at(120)).toContain('<strong>99.2 lb (45.0 kg)</strong>');
		expect(at(230)).toContain('<strong>45.0 kg</strong>');
	});

	// symptom: 208 and 240 V of a hall in the US got the words of Europe, and nothing said so
	it('says at any voltage but 120 and 230 that the rules of the US are not in it', () => {
		const at = (volts: number): boolean => has({ ...mains, supply: { ...mains.supply, volts } }, ruleWords.notUs);
		expect([120, 208, 230, 240].map(at)).toEqual([false, true, false, true]);
	});

	it('says beside what a breaker has left that one plug takes less, while nobody gave the weakest link', () => {
		const says = (supply: Partial<Plan['supply']>): boolean =>
			has({ ...mains, supply: { ...mains.supply, ...supply } }, ruleWords.plugLess);
		expect([10, 13, 16, 20, 32].map((breaker) => says({ breaker }))).toEqual([false, false, true, false, true]);
		expect(says({ breaker: 32, link: 13 })).toBe(false);
		expect(says({ breaker: 32, volts: 120 })).toBe(false);
		const many = withRows(
			mains,
			Array.from({ length: 30 }, () => ({ profile: 'picket-8' })),
			nameOf,
		);
		const over = { ...many, supply: { ...many.supply, breaker: 16, powerFactor: 0.05 } };
		expect(has(over, ruleWords.plugLess)).toBe(false);
		expect(says({})).toBe(false);
	});
});

describe('a length of data cable', () => {
	it('says on the line plan and beside what to bring that depth is not in it', () => {
		const plan = withRows(emptyPlan('Deep'), [{ profile: 'picket-8' }, { profile: 'picket-8' }], nameOf);
		for (const html of [renderToString(h(LineSheet, { plan, digest: '' })), renderToString(h(Figures, { plan }))])
			expect(html).toContain(escaped(figureWords.depth));
	});
});
