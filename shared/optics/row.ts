import { InputError, requireNumber, shown } from '../error/index.ts';
import { above0, type Beam, candelaAt, illuminance, poolDiameter, radians, reachOf } from './throw.ts';

/** Points along half a bay at which light is reckoned, both ends included; the other half mirrors it. */
const POINTS = 41;
/** Spacings tried between none and twice the pool, then halvings between the last two. */
const TRIALS = 80;
const HALVINGS = 12;
/** Fixtures further off than this many throws add less than a thousandth of what stands below one (cos³ of their angle). */
const FAR = 10;

/**
 * Lux on a wall at a point beside the beam's middle, square throw: `I(θ) cos³θ / d²`, which is `I cos θ / r²` with
 * `r = d / cos θ` (CIE e-ILV 912, recalculated).
 * @param metres from lens to wall, square to it, more than 0
 * @param aside metres along the wall from where the beam's middle lands, either way
 * @throws InputError `optics.range`
 */
export function luxAside(beam: Beam, metres: number, aside: number): number {
	above0(metres, 'metres', 'throw');
	const angle = (Math.atan(Math.abs(aside) / metres) * 180) / Math.PI;
	return illuminance(candelaAt(beam, angle), Math.hypot(metres, aside), angle);
}

/**
 * Lux at a point of a wall lit by a row of fixtures alike, all square on: the sum of what each gives there.
 * @param metres from each lens to the wall, more than 0
 * @param places metres along the wall where each beam's middle lands
 * @param at metres along the wall
 * @throws InputError `optics.range`
 */
export function rowLux(beam: Beam, metres: number, places: readonly number[], at: number): number {
	return places.reduce((sum, place) => sum + luxAside(beam, metres, at - place), 0);
}

/**
 * How far the pools of two neighbours run into each other, in metres along the line between them: `diameter − spacing`, and 0
 * where they do not touch.
 * @param spacing metres between them, 0 or more
 * @param diameter metres of each pool, 0 or more (`poolDiameter`)
 * @throws InputError `optics.range`
 */
export function poolOverlap(spacing: number, diameter: number): number {
	const limits = { code: 'optics.range', lo: 0, hi: Number.MAX_VALUE } as const;
	requireNumber(spacing, { ...limits, path: 'spacing', of: 'spacing' });
	requireNumber(diameter, { ...limits, path: 'diameter', of: 'diameter' });
	return Math.max(0, diameter - spacing);
}

/**
 * The spacing in metres at which the half-peak edges of neighbours meet: the pool of the beam angle. Each gives half its
 * intensity there, so the two together come to `cos³(beam / 2)` of the peak's light (recalculated).
 * @param metres from lens to wall, more than 0
 * @param beam beam angle in degrees, more than 0 and less than 180
 * @throws InputError `optics.range`
 */
export function edgeSpacing(metres: number, beam: number): number {
	return poolDiameter(metres, beam);
}

/**
 * Uniformity of a set of illuminances: the least over the mean, 0 to 1 (EN 12665 and EN 12464-1, read in makers' and
 * planners' guides that quote them). Dark all over it is 0.
 * @param lux at least one, each 0 or more
 * @throws InputError `optics.range`
 */
export function uniformity(lux: readonly number[]): number {
	if (lux.length === 0 || lux.some((each) => !(each >= 0 && each < Number.POSITIVE_INFINITY))) {
		throw new InputError('optics.range', 'lux', { expected: 'illuminances' });
	}
	const mean = lux.reduce((sum, each) => sum + each, 0) / lux.length;
	return mean === 0 ? 0 : Math.min(...lux) / mean;
}

/** Light along one bay of a long even row, from the middle of one beam to the middle of the next, in lux. */
export type Bay = {
	readonly least: number;
	readonly mean: number;
	readonly most: number;
	/** Least over mean, 0 to 1. */
	readonly uniformity: number;
};

/**
 * One bay of a row that goes on both ways, all fixtures alike, square on, at the height of the beams' middles. Near the ends of a
 * real row it is darker, since the neighbour is missing.
 * @param metres from lens to wall, more than 0
 * @param spacing metres between neighbours, at least a hundredth of the throw
 * @throws InputError `optics.range`
 */
export function bayOf(beam: Beam, metres: number, spacing: number): Bay {
	above0(metres, 'metres', 'throw');
	const least = metres / 100;
	if (!(spacing >= least && spacing < Number.POSITIVE_INFINITY)) {
		throw new InputError('optics.range', 'spacing', { expected: 'spacing', metres, lo: least, found: shown(spacing) });
	}
	const reach = Math.ceil((metres * Math.min(FAR, Math.tan(radians(reachOf(beam))))) / spacing) + 1;
	const places = Array.from({ length: 2 * reach + 1 }, (_, i) => (i - reach) * spacing);
	const lux = Array.from({ length: POINTS }, (_, i) => rowLux(beam, metres, places, (spacing * i) / 2 / (POINTS - 1)));
	// the trapezium rule: the ends of the half count half
	const mean = (lux.reduce((sum, each) => sum + each, 0) - ((lux[0] ?? 0) + (lux.at(-1) ?? 0)) / 2) / (POINTS - 1);
	const lowest = Math.min(...lux);
	return { least: lowest, mean, most: Math.max(...lux), uniformity: mean === 0 ? 0 : lowest / mean };
}

/**
 * The widest spacing in metres, up to twice the pool of the beam angle, at which a long row is at least this even: tried from wide
 * to narrow, then halved in on to a ten-thousandth of the pool. Null where none is.
 * @param metres from lens to wall, more than 0
 * @param wanted uniformity, 0 to 1: 0.7 is our opinion of what looks even (no source)
 * @throws InputError `optics.range`
 */
export function widestSpacing(beam: Beam, metres: number, wanted: number): number | null {
	requireNumber(wanted, { lo: 0, hi: 1, code: 'optics.range', path: 'wanted', of: 'uniformity' });
	const step = (2 * poolDiameter(metres, beam.beam)) / TRIALS;
	const isEven = (spacing: number): boolean => bayOf(beam, metres, spacing).uniformity >= wanted;
	for (let n = TRIALS; n * step >= metres / 100; n--) {
		if (!isEven(n * step)) continue;
		if (n === TRIALS) return n * step;
		let [even, uneven] = [n * step, (n + 1) * step];
		for (let i = 0; i < HALVINGS; i++) {
			const middle = (even + uneven) / 2;
			if (isEven(middle)) even = middle;
			else uneven = middle;
		}
		return even;
	}
	return null;
}
