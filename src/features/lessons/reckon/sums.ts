import { calcWords as words } from '#words/lessons/index.ts';
import {
	EIA485,
	howManyFit,
	isOverloaded,
	LAST_SLOT,
	mostReceivers,
	totalUnitLoads,
} from '../../../../shared/dmx/index.ts';
import { aimLux, bayOf, edgeSpacing, poolDiameter, poolOnWall, poolOverlap } from '../../../../shared/optics/index.ts';
import { batteryHours, CAUTIOUS_SHARE, chargeHours } from '../../../../shared/power/index.ts';
import type { Kit, Reckoner, Slider } from './kit.ts';
import { chain, circuit, weights } from './load.ts';
import { chosen, named, pick, round, slider } from './parts.ts';

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
