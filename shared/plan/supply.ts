import { DEFAULT_VOLTS } from './make.ts';

/** Volts of an outlet that a crew meets most: 230 in Europe and much of the world, 120 in North America (common practice, no source). */
export const USUAL_VOLTS = Object.freeze([DEFAULT_VOLTS, 120] as const);

/** Volts that bring the words and gauges of the US: only there, and in its neighbours, are outlets so. Its rules hold at others too. */
export const US_VOLTS = 120;

/**
 * Volts that no outlet of North America is called by: from 220 up to 240, which is out of it (common practice, no source). Hands there
 * say 220 of one that is called 240: they are asked for the latter.
 */
const NEVER_US = { from: 220, to: 240 } as const;

/**
 * Whether the rules of the US are kept: below 220 V and from 240 up, wherever an outlet of North America may be so (120, 208, 240). Other
 * countries have some of these too: their sums are held to 80 % as well, and the curve of a breaker counts where it is given. Its words
 * and gauges go with {@link US_VOLTS} alone.
 */
export const byUsRules = (volts: number): boolean => volts < NEVER_US.from || volts >= NEVER_US.to;

/** Whether the rules of the US are kept and nobody has said that the supply is theirs. */
export const mayBeUs = (volts: number): boolean => byUsRules(volts) && volts !== US_VOLTS;

/** Amperes of the least that one plug takes: 13 in the UK (BS 1363), 12 by US rules for loads that last (15 A outlet; both from memory). */
const ONE_PLUG = { usual: 13, us: 12 } as const;

/** Whether a breaker lets through more than one plug on it may carry. */
export const isPastOnePlug = ({ volts, breaker }: { volts: number; breaker: number | null }): boolean =>
	breaker !== null && breaker > (byUsRules(volts) ? ONE_PLUG.us : ONE_PLUG.usual);

/** Ratings of outlets and breakers that one plug's 80 % is often taken for by US rules, amperes. */
const US_OUTLETS: readonly number[] = [15, 20, 30];

/** Whether what was given as the weakest link is what an outlet or its breaker is rated for by US rules: less may be drawn of that. */
export const isOutletRating = ({ volts, link = null }: { volts: number; link?: number | null }): boolean =>
	link !== null && byUsRules(volts) && US_OUTLETS.includes(link);

/**
 * Ratings that breakers of outlets have there, amperes, to choose from: any other can be typed. Common practice, no source: 15 and 20
 * in the US, both lists where it may be there, and those that IEC 60898 prefers (from memory) elsewhere.
 */
export const usualBreakers = (volts: number): readonly number[] =>
	volts === US_VOLTS ? US_OUTLETS : mayBeUs(volts) ? [6, 10, 15, 16, 20, 30, 32] : [6, 10, 16, 20, 32];

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
