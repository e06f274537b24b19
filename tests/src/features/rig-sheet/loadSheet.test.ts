import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
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
import { plugSays } from '../../../../src/features/rig-sheet/figureSays.ts';
import { LineSheet } from '../../../../src/features/rig-sheet/LineSheet.tsx';
import { LoadSheet } from '../../../../src/features/rig-sheet/LoadSheet.tsx';
import { Rules } from '../../../../src/features/rig-sheet/Rules.tsx';
import type { PlanStore } from '../../../../src/features/rig-sheet/store.ts';
import { nameOf } from '../../../shared/plan/plans.ts';

const escaped = (text: string): string => renderToString(h('p', null, text)).slice(3, -4);

describe('what the load sheet says around its sums', () => {
	const loadText = (plan: Plan): string => renderToString(h(LoadSheet, { plan, digests: digestsOf(plan) }));
	const has = (plan: Plan, words: string): boolean => loadText(plan).includes(escaped(words));
	const wet = withRows(emptyPlan('Hung'), [{ profile: 'tallow-6', overhead: true }, { profile: 'tallow-6' }], nameOf);
	const mains = withRows(emptyPlan('Mains'), [{ profile: 'picket-8' }], nameOf);

	// symptom: with a battery light overhead the sum of weights stood there, and nothing said that its plug was in no sum
	it('has a light that counts as on battery: load sheet and sums say so, until the last of them has a circuit', () => {
		expect(
			figuresOf(wet)
				.filter(({ id }) => isOfLoad(id))
				.map(({ id }) => id),
		).toEqual(['weight']);
		expect(has(wet, loadWords.countsAsBattery)).toBe(true);
		const [first, second] = wet.rows as [PlanRow, PlanRow];
		const both = (of: Plan): readonly boolean[] => [
			has(of, loadWords.countsAsBattery),
			renderToString(h(Figures, { plan: of })).includes(escaped(loadWords.countsAsBattery)),
		];
		const fed = { ...wet, rows: wet.rows.map((row) => ({ ...row, circuit: 'A' })) };
		expect(both({ ...wet, rows: [first, { ...second, circuit: 'A' }] })).toEqual([true, true]);
		expect(both({ ...wet, rows: [...wet.rows, ...mains.rows] })).toEqual([true, true]);
		expect(both(fed)).toEqual([false, false]);
		expect([has(mains, loadWords.countsAsBattery), has(emptyPlan('None'), loadWords.noLoad)]).toEqual([false, true]);
	});

	it('has a weight in pounds first at 120 V, and in kilograms alone elsewhere', () => {
		const at = (volts: number): string =>
			loadText({ ...wet, supply: { ...wet.supply, volts }, kilograms: { 'tallow-6': 45 } });
		expect(at(120)).toContain('<strong>99.2 lb (45.0 kg)</strong>');
		expect(at(230)).toContain('<strong>45.0 kg</strong>');
	});

	// symptom: 208 and 240 V of a hall in the US got the words of Europe, and nothing said so
	it('says at any voltage that the US may have, but 120, that their rule is used', () => {
		const at = (volts: number): boolean => has({ ...mains, supply: { ...mains.supply, volts } }, ruleWords.usToo);
		expect([100, 119, 120, 121, 208, 219, 220, 230, 239, 240, 277].map(at)).toEqual([
			true,
			true,
			false,
			true,
			true,
			true,
			false,
			false,
			false,
			true,
			true,
		]);
	});

	// symptom: 220, as hands in the US call 240, got the sums of Europe with no word
	it('asks at any typed voltage that no outlet there is called by, whether it is the US', () => {
		const at = (volts: number): boolean => has({ ...mains, supply: { ...mains.supply, volts } }, ruleWords.notUs);
		expect([120, 208, 219, 220, 225, 230, 239, 240].map(at)).toEqual([
			false,
			false,
			false,
			true,
			true,
			false,
			true,
			false,
		]);
		expect(ruleWords.otherVoltsHint).toMatch(/208 or 240, not 220/);
	});

	it('at every voltage but 120 a curve can be given, and at any a kept one can be cleared', () => {
		const offers = (supply: Partial<Plan['supply']>): boolean =>
			renderToString(
				h(Rules, { store: { plan: { ...mains, supply: { ...mains.supply, ...supply } } } as PlanStore }),
			).includes(escaped(ruleWords.curve));
		expect([230, 240, 208, 120].map((volts) => offers({ volts }))).toEqual([true, true, true, false]);
		expect(offers({ volts: 120, curve: 'C' })).toBe(true);
	});

	// symptom: 20 typed as the weakest link showed 20 A to be had, of an outlet that takes 16 or 12
	it('by US rules says what one plug takes beside a link given as an outlet is rated', () => {
		const says = (volts: number, link: number | null): boolean =>
			has({ ...mains, supply: { ...mains.supply, volts, link } }, ruleWords.onePlug);
		expect([12, 13, 15, 16, 20, 30].map((link) => says(120, link))).toEqual([false, false, true, false, true, true]);
		expect([says(208, 20), says(240, 30), says(230, 20), says(220, 15)]).toEqual([true, true, false, false]);
		const html = renderToString(h(Figures, { plan: { ...mains, supply: { ...mains.supply, volts: 120, link: 20 } } }));
		expect(html).toContain(escaped(ruleWords.onePlug));
		expect(ruleWords.plugLess).toContain(ruleWords.onePlug);
	});

	it('says at every voltage, before any plug goes in, to read the labels of lights and chargers: over load and charge', () => {
		for (const volts of [100, 120, 230, 240]) {
			const at = (of: Plan): number =>
				loadText({ ...of, supply: { ...of.supply, volts } }).split(escaped(ruleWords.otherSupply)).length - 1;
			expect([at(mains), at({ ...wet, rows: [...wet.rows, ...mains.rows] })]).toEqual([1, 2]);
			expect(renderToString(h(Figures, { plan: { ...mains, supply: { ...mains.supply, volts } } }))).toContain(
				escaped(ruleWords.otherSupply),
			);
		}
	});

	// symptom: the charge plan of a rig that runs on batteries said nothing of the mains its chargers are on
	it('has the caution of mains wherever something charges', () => {
		expect(has({ ...wet, rows: wet.rows.slice(1) }, cautions.mains.title)).toBe(true);
		expect(has(emptyPlan('None'), cautions.mains.title)).toBe(false);
	});

	it('says what one plug takes, in each country, wherever nobody gave the weakest link', () => {
		const of = (supply: Partial<Plan['supply']>): Plan => ({ ...mains, supply: { ...mains.supply, ...supply } });
		const says = (supply: Partial<Plan['supply']>): boolean => has(of(supply), ruleWords.plugLess);
		for (const volts of [120, 230]) for (const breaker of [null, 10, 32]) expect(says({ breaker, volts })).toBe(true);
		expect(says({ breaker: 32, link: 13 })).toBe(false);
		const beside = (supply: Partial<Plan['supply']>): boolean => {
			const [left] = figuresOf(of(supply)).filter(({ id }) => id === 'breaker-left');
			return left !== undefined && plugSays(of(supply), left) === ruleWords.plugLess;
		};
		expect([10, 13, 16, 20, 32].map((breaker) => beside({ breaker }))).toEqual([false, false, true, true, true]);
		expect([10, 12, 15, 20].map((breaker) => beside({ breaker, volts: 120 }))).toEqual([false, false, true, true]);
		expect(beside({ breaker: 32, link: 13 })).toBe(false);
		const many = withRows(
			mains,
			Array.from({ length: 30 }, () => ({ profile: 'picket-8' })),
			nameOf,
		);
		const over = { ...many, supply: { ...many.supply, breaker: 16, powerFactor: 0.05 } };
		expect(
			figuresOf(over)
				.flatMap((each) => plugSays(over, each))
				.join(''),
		).toBe('');
		expect(beside({})).toBe(false);
	});
});

describe('a length of data cable', () => {
	it('says on the line plan and beside what to bring that depth is not in it', () => {
		const plan = withRows(emptyPlan('Deep'), [{ profile: 'picket-8' }, { profile: 'picket-8' }], nameOf);
		for (const html of [renderToString(h(LineSheet, { plan, digest: '' })), renderToString(h(Figures, { plan }))])
			expect(html).toContain(escaped(figureWords.depth));
	});
});
