import { calcWords as words } from '#words/lessons/index.ts';
import { locale } from '#words/locale/index.ts';
import {
	EIA485,
	howManyFit,
	isOverloaded,
	LAST_SLOT,
	mostReceivers,
	totalUnitLoads,
} from '../../../../shared/dmx/index.ts';
import { aimLux, bayOf, edgeSpacing, poolDiameter, poolOnWall, poolOverlap } from '../../../../shared/optics/index.ts';
import { amps, batteryHours, CAUTIOUS_SHARE, chainWatts, chargeHours } from '../../../../shared/power/index.ts';
import type { Kit, Pick, Reckoner, Slider } from './kit.ts';

/** A number with so many decimals, and none that say nothing. */
const round = (n: number, decimals = 1): string =>
	n === Number.POSITIVE_INFINITY ? words.endless : locale.number(Number(n.toFixed(decimals)));

const slider = (id: keyof typeof words.sliders, least: number, most: number, step: number, start: number): Slider => ({
	id,
	...words.sliders[id],
	least,
	most,
	step,
	start,
});

const pick = (id: keyof typeof words.picks, options: Pick['options']): Pick => ({
	id,
	label: words.picks[id],
	options,
});

const named = (all: readonly { readonly id: string; readonly name: string }[]): Pick['options'] =>
	all.map(({ id, name }) => ({ value: id, words: name }));

const chosen = <T extends { readonly id: string }>(all: readonly T[], id: string | undefined): T =>
	(all.find((each) => each.id === id) ?? all[0]) as T;

/** Hours a battery lasts at a look on a share of what is left in it, and the least it takes to charge it again. */
function hours(kits: readonly Kit[]): Reckoner {
	const kit = chosen(
		kits.filter(({ wattHours }) => wattHours > 0),
		undefined,
	);
	return {
		formulas: words.hours.formulas,
		picks: [pick('look', named(kit.looks))],
		sliders: [
			slider('charge', 10, 100, 5, 100),
			slider('brightness', 5, 100, 5, 100),
			slider('share', 40, 100, 5, 100 * CAUTIOUS_SHARE),
		],
		reckon({ charge = 100, brightness = 100, share = 100 * CAUTIOUS_SHARE }, { look }) {
			const { watts } = chosen(kit.looks, look);
			const draw = kit.idleWatts + (watts * brightness) / 100;
			const lasts = batteryHours((kit.wattHours * charge) / 100, draw, share / 100);
			const back = chargeHours(kit.wattHours, kit.chargeWatts);
			return [
				{
					what: words.hours.draw,
					sum: `${round(kit.idleWatts)} W + ${round(watts)} W × ${brightness} ÷ 100`,
					comes: `${round(draw)} W`,
				},
				{
					what: words.hours.lasts,
					sum: `${round(kit.wattHours)} Wh × ${charge} ÷ 100 × ${share} ÷ 100 ÷ ${round(draw)} W`,
					comes: words.hours.hours(round(lasts)),
				},
				{
					what: words.hours.charge,
					sum: `${round(kit.wattHours)} Wh ÷ ${round(kit.chargeWatts)} W`,
					comes: words.hours.atLeast(words.hours.hours(round(back))),
				},
			];
		},
	};
}

/** The throw, from where the sums hold for the fixture that is chosen. */
const throwSlider = (kits: readonly Kit[]): Slider => ({
	...slider('throw', 0.5, 12, 0.5, 3),
	leastFor: ({ fixture }) => chosen(kits, fixture).nearest,
});

/** Pool and light at a throw, square on or turned: the throw is how far the lens stands from the wall. */
function pool(kits: readonly Kit[]): Reckoner {
	return {
		formulas: words.pool.formulas,
		picks: [pick('fixture', named(kits))],
		sliders: [throwSlider(kits), slider('tilt', 0, 70, 5, 0)],
		reckon({ throw: metres = 3, tilt = 0 }, { fixture }) {
			const { beam, peak } = chosen(kits, fixture);
			const { long } = poolOnWall(metres, beam, tilt);
			// across the way it is turned, where its middle lands: as wide as that far off square on
			const wide = poolDiameter(metres / Math.cos((tilt * Math.PI) / 180), beam);
			const half = round(beam / 2);
			return [
				{
					what: words.pool.width,
					sum: `2 × ${round(metres)} m ÷ cos ${tilt}° × tan ${half}°`,
					comes: `${round(wide, 2)} m`,
				},
				{
					what: words.pool.length,
					sum: `${round(metres)} m × (tan(${tilt}° + ${half}°) − tan(${tilt}° − ${half}°))`,
					comes: metresOrEndless(long),
				},
				{
					what: words.pool.light,
					sum: `${round(peak, 0)} cd × cos³ ${tilt}° ÷ (${round(metres)} m)²`,
					comes: `${round(aimLux(peak, metres, tilt), 0)} lx`,
				},
			];
		},
	};
}

/** Metres to the hundredth; a pool whose far edge runs along the wall has no end, and no metres. */
const metresOrEndless = (n: number): string => (Number.isFinite(n) ? `${round(n, 2)} m` : words.endless);

/** Least light over most along a row: from here on we call a wall even. Our opinion, no source; the lesson says so. */
const EVEN = 0.7;

/** How far apart they may stand for an even wall. */
function spacing(kits: readonly Kit[]): Reckoner {
	return {
		formulas: words.spacing.formulas,
		picks: [pick('fixture', named(kits))],
		sliders: [throwSlider(kits), slider('spacing', 0.25, 8, 0.25, 1.25)],
		reckon({ throw: metres = 3, spacing: apart = 1.25 }, { fixture }) {
			const kit = chosen(kits, fixture);
			const wide = poolDiameter(metres, kit.beam);
			const { least, most } = bayOf(kit, metres, apart);
			const even = most === 0 ? 0 : least / most;
			return [
				{
					what: words.spacing.meet,
					sum: `2 × ${round(metres)} m × tan(${round(kit.beam)}° ÷ 2)`,
					comes: `${round(edgeSpacing(metres, kit.beam), 2)} m`,
				},
				{
					what: words.spacing.overlap,
					sum: `${round(wide, 2)} m − ${round(apart, 2)} m`,
					comes: `${round(poolOverlap(apart, wide), 2)} m`,
				},
				{
					what: words.spacing.even,
					sum: `${round(least, 0)} lx ÷ ${round(most, 0)} lx`,
					comes: words.spacing.verdict(round(even, 2), even >= EVEN),
					over: even < EVEN,
				},
			];
		},
	};
}

/** Slots taken and left in one universe. */
function slots(kits: readonly Kit[]): Reckoner {
	const modes = kits.flatMap((kit) =>
		kit.modes.map((mode) => ({ ...mode, id: `${kit.id} ${mode.id}`, name: `${kit.name}, ${mode.name}` })),
	);
	return {
		formulas: words.slots.formulas,
		picks: [pick('mode', named(modes))],
		sliders: [slider('first', 1, LAST_SLOT, 1, 1), slider('count', 1, 60, 1, 8)],
		reckon({ first = 1, count = 8 }, { mode }) {
			const { footprint } = chosen(modes, mode);
			const fit = howManyFit(footprint, first);
			// past 512 too, so that it can be said
			const end = first + footprint * count - 1;
			const over = count > fit;
			return [
				{
					what: words.slots.last,
					sum: `${first} + ${count} × ${footprint} − 1`,
					comes: over ? words.slots.past(end) : words.slots.slot(end),
					over,
				},
				{
					what: words.slots.left,
					sum: `${LAST_SLOT} − ${end}`,
					comes: words.slots.slots(Math.max(0, LAST_SLOT - end)),
				},
				{
					what: words.slots.fit,
					sum: `(${LAST_SLOT} − ${first} + 1) ÷ ${footprint}`,
					comes: words.slots.fixtures(fit),
				},
			];
		},
	};
}

/** Receivers on one line against what it bears. */
function loads(): Reckoner {
	const most = EIA485.mostUnitLoads;
	return {
		formulas: words.loads.formulas,
		picks: [pick('load', words.loads.sizes)],
		sliders: [slider('receivers', 1, 100, 1, 12)],
		reckon({ receivers = 12 }, { load }) {
			const each = Number(load ?? 1);
			const all = Array.from({ length: receivers }, () => each);
			const over = isOverloaded(all);
			const sum = round(totalUnitLoads(all), 3);
			return [
				{
					what: words.loads.sum,
					sum: `${receivers} × ${round(each, 3)}`,
					comes: over ? words.loads.over(sum, most) : words.loads.fine(sum, most),
					over,
				},
				{
					what: words.loads.most,
					sum: `${most} ÷ ${round(each, 3)}`,
					comes: words.loads.receivers(mostReceivers(each)),
				},
			];
		},
	};
}

/** What a chain of mains fixtures takes from its first plug. */
function chain(kits: readonly Kit[]): Reckoner {
	return {
		formulas: words.chain.formulas,
		picks: [pick('fixture', named(kits.filter(({ wattHours }) => wattHours === 0)))],
		sliders: [slider('fixtures', 1, 24, 1, 6), slider('volts', 100, 240, 10, 230), slider('factor', 50, 100, 5, 90)],
		reckon({ fixtures = 6, volts = 230, factor = 90 }, { fixture }) {
			const { mainsWatts } = chosen(kits, fixture ?? kits.find(({ wattHours }) => wattHours === 0)?.id);
			const watts = chainWatts(Array.from({ length: fixtures }, () => mainsWatts));
			return [
				{ what: words.chain.watts, sum: `${fixtures} × ${round(mainsWatts)} W`, comes: `${round(watts)} W` },
				{
					what: words.chain.amps,
					sum: `${round(watts)} W ÷ (${volts} V × ${round(factor / 100, 2)})`,
					comes: `${round(amps(watts, volts, factor / 100), 2)} A`,
				},
			];
		},
	};
}

/** How many fit on one circuit, by their steady current alone: what they ask for at switch-on is not in it. */
function circuit(kits: readonly Kit[]): Reckoner {
	return {
		formulas: words.circuit.formulas,
		picks: [pick('fixture', named(kits.filter(({ wattHours }) => wattHours === 0)))],
		sliders: [
			slider('rating', 5, 32, 1, 16),
			slider('spare', 0, 50, 5, 20),
			slider('volts', 100, 240, 10, 230),
			slider('factor', 50, 100, 5, 90),
		],
		reckon({ rating = 16, spare = 20, volts = 230, factor = 90 }, { fixture }) {
			const { mainsWatts } = chosen(kits, fixture ?? kits.find(({ wattHours }) => wattHours === 0)?.id);
			const each = amps(mainsWatts, volts, factor / 100);
			const yours = (rating * (100 - spare)) / 100;
			return [
				{
					what: words.circuit.each,
					sum: `${round(mainsWatts)} W ÷ (${volts} V × ${round(factor / 100, 2)})`,
					comes: `${round(each, 2)} A`,
				},
				{ what: words.circuit.yours, sum: `${rating} A × (100 − ${spare}) ÷ 100`, comes: `${round(yours, 2)} A` },
				{
					what: words.circuit.most,
					sum: `${round(yours, 2)} A ÷ ${round(each, 2)} A`,
					comes: words.circuit.fixtures(Math.floor(yours / each)),
				},
			];
		},
	};
}

/** Pounds in a kilogram: 1 lb is 0.45359237 kg by definition (from memory). */
const POUNDS = 1 / 0.45359237;

/** What hangs, added up. What it hangs from may take less: that is nobody's sum here. */
function weights(): Reckoner {
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
				{ what: words.weights.pounds, sum: `${round(total)} kg ÷ 0.4536`, comes: `${round(total * POUNDS, 0)} lb` },
			];
		},
	};
}

export const RECKON_IDS = ['hours', 'pool', 'spacing', 'slots', 'loads', 'chain', 'circuit', 'weights'] as const;
export type ReckonId = (typeof RECKON_IDS)[number];

/** The reckoners, by id. */
export const reckoners: Readonly<Record<ReckonId, (kits: readonly Kit[]) => Reckoner>> = {
	hours,
	pool,
	spacing,
	slots,
	loads,
	chain,
	circuit,
	weights,
};
