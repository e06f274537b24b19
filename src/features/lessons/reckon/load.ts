import { calcWords as words } from '#words/lessons/index.ts';
import { amps, chainWatts, mostOnChain } from '../../../../shared/power/index.ts';
import type { Kit, Reckoner } from './kit.ts';
import { chosen, named, pick, round, slider } from './parts.ts';

/** Those that run on mains alone, and which of them is looked at. */
const onMains = (kits: readonly Kit[]): Kit[] => kits.filter(({ wattHours }) => wattHours === 0);
const oneOf = (kits: readonly Kit[], fixture: string | undefined): Kit => chosen(kits, fixture ?? onMains(kits)[0]?.id);

/** A fixture's amperes, as a sum. */
const ampsSum = (watts: number, volts: number, factor: number): string =>
	`${round(watts)} W ÷ (${volts} V × ${round(factor / 100, 2)})`;

/** What a chain of mains fixtures takes from its first plug. */
export function chain(kits: readonly Kit[]): Reckoner {
	return {
		formulas: words.chain.formulas,
		picks: [pick('fixture', named(onMains(kits)))],
		sliders: [slider('fixtures', 1, 24, 1, 6), slider('volts', 100, 240, 10, 230), slider('factor', 50, 100, 5, 90)],
		reckon({ fixtures = 6, volts = 230, factor = 90 }, { fixture }) {
			const { mainsWatts } = oneOf(kits, fixture);
			const watts = chainWatts(Array.from({ length: fixtures }, () => mainsWatts));
			return [
				{ what: words.chain.watts, sum: `${fixtures} × ${round(mainsWatts)} W`, comes: `${round(watts)} W` },
				{
					what: words.chain.amps,
					sum: ampsSum(watts, volts, factor),
					comes: `${round(amps(watts, volts, factor / 100), 2)} A`,
				},
			];
		},
	};
}

/** How many fit on one circuit, by their steady current alone: what they ask for at switch-on is not in it. */
export function circuit(kits: readonly Kit[]): Reckoner {
	return {
		formulas: words.circuit.formulas,
		picks: [pick('fixture', named(onMains(kits)))],
		sliders: [
			slider('rating', 5, 32, 1, 16),
			slider('spare', 0, 50, 5, 20),
			slider('volts', 100, 240, 10, 230),
			slider('factor', 50, 100, 5, 90),
		],
		reckon({ rating = 16, spare = 20, volts = 230, factor = 90 }, { fixture }) {
			const { mainsWatts } = oneOf(kits, fixture);
			const each = amps(mainsWatts, volts, factor / 100);
			const yours = (rating * (100 - spare)) / 100;
			return [
				{
					what: words.circuit.each,
					sum: ampsSum(mainsWatts, volts, factor),
					comes: `${round(each, 2)} A`,
				},
				{ what: words.circuit.yours, sum: `${rating} A × (100 − ${spare}) ÷ 100`, comes: `${round(yours, 2)} A` },
				{
					what: words.circuit.most,
					sum: `${round(yours, 2)} A ÷ ${round(each, 2)} A`,
					comes: words.circuit.fixtures(mostOnChain(mainsWatts, yours, volts, factor / 100)),
				},
			];
		},
	};
}

/** Kilograms in a pound, by definition (from memory). */
const POUND = 0.45359237;

/** What hangs, added up. What it hangs from may take less: that is nobody's sum here. */
export function weights(): Reckoner {
	return {
		formulas: words.weights.formulas,
		picks: [],
		sliders: [
			slider('count', 1, 24, 1, 6),
			slider('each', 1, 40, 0.5, 8),
			slider('hardware', 0.5, 5, 0.1, 1.2),
			slider('leads', 0, 60, 1, 10),
		],
		reckon({ count = 6, each = 8, hardware = 1.2, leads = 10 }) {
			const total = count * (each + hardware) + leads;
			return [
				{
					what: words.weights.total,
					sum: `${count} × (${round(each)} kg + ${round(hardware)} kg) + ${leads} kg`,
					comes: `${round(total)} kg`,
				},
				{
					what: words.weights.pounds,
					sum: `${round(total)} kg ÷ ${round(POUND, 4)}`,
					comes: `${round(total / POUND, 0)} lb`,
				},
			];
		},
	};
}
