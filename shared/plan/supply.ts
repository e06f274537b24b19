import { DEFAULT_VOLTS } from './make.ts';

/** Volts of an outlet that a crew meets most: 230 in Europe and much of the world, 120 in North America (common practice, no source). */
export const USUAL_VOLTS = Object.freeze([DEFAULT_VOLTS, 120] as const);

/** Volts at which the rules and words of the US are taken to hold: only there, and in its neighbours, are outlets so. */
export const US_VOLTS = 120;

/** Whether volts may be an outlet's of North America that the rules of the US are not reckoned for here: 208 and 240 there, say, which other countries have too. */
export const mayBeUs = (volts: number): boolean => !USUAL_VOLTS.some((each) => each === volts);

/** Breakers, amperes, from which outlets feed what one plug may not take: 13 A in the UK (BS 1363, from memory), 16 A by the socket elsewhere. */
const PAST_ONE_PLUG: readonly number[] = [16, 32];

/** Whether a breaker lets through more than one plug on it may carry. In the US the rule of four fifths has a figure of its own. */
export const isPastOnePlug = ({ volts, breaker }: { volts: number; breaker: number | null }): boolean =>
	volts !== US_VOLTS && breaker !== null && PAST_ONE_PLUG.includes(breaker);

/**
 * Ratings that breakers of outlets have there, amperes, to choose from: any other can be typed. Common practice, no source: 15 and 20
 * in the US, and those that IEC 60898 prefers (from memory) elsewhere.
 */
export const usualBreakers = (volts: number): readonly number[] =>
	volts === US_VOLTS ? [15, 20, 30] : [6, 10, 16, 20, 32];

/**
 * The thinnest of the gauges in use (AWG, even ones) whose copper is no less than an area: what stands for a cable in mm² where cables
 * are gauged. A wire of gauge n is 0.127 mm × 92^((36 − n) / 39) thick (ASTM B258, from memory).
 * @param area mm², 1 to 16
 */
export function awgFor(area: number): number {
	const areaOf = (gauge: number): number => (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2;
	for (let gauge = 18; gauge > 4; gauge -= 2) if (areaOf(gauge) >= area) return gauge;
	return 4;
}
