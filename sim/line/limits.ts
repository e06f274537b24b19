import { EIA485 } from '../../shared/dmx/index.ts';

/**
 * How much a line bears before frames suffer. All in one place; the table in `index.ts` is held to this by a test.
 */
export const LINE_LIMITS = Object.freeze({
	/** Unit loads one driver feeds: 32. EIA-485 (read). */
	unitLoads: EIA485.mostUnitLoads,
	/** Terminators one driver feeds: one at each end of a line. EIA-485 (read in makers' wiring notes, which quote it). */
	terminators: 2,
	/** Metres of data cable from talker to receiver. Practice (read): a repeater beyond 300 m. */
	dataMetres: 300,
	/** Metres at which nearly nothing arrives whole: EIA-485's own reach at far lower speeds (read), so hopeless at this one. */
	dataMetresHopeless: 1200,
	/**
	 * Metres a line may run on, past its last terminator, before its echo counts. Recalculated from a rule of thumb (read in two
	 * makers' manuals): an echo has died after three round trips, and that must be over by the middle of a bit. Half a bit is
	 * 2 µs (E1.11, read), a wave goes 0.66 × 299.8 m/µs: 2 × 197.9 / 6 = 65.95 m.
	 */
	openMetres: 66,
	/** Metres at which that echo is at its worst here. Ours, no source. */
	openMetresWorst: 400,
	/** Metres of cable that one unit load slows the wave like (its capacitance). Ours, order of magnitude only, no source. */
	metresPerLoad: 1,
	/** Metres of microphone cable on the way. Common practice, no source. */
	microphoneMetres: 30,
	/** Metres of it at which its echo is at its worst here. Ours, no source. */
	microphoneMetresWorst: 200,
	/** Unit loads at which too many is at its worst here: twice the limit. Ours, no source. */
	unitLoadsWorst: 64,
} as const);

/**
 * Shares of frames damaged, 0 to 1. Sizes are ours, no source: what is meant is their order (a terminator past an open wire
 * is worse than none, a collision spoils everything) and that each can be seen at 44 frames a second.
 */
export const LINE_RATES = Object.freeze({
	/** The least a marginal line loses: about one frame a second of 44. */
	least: 0.02,
	/** One data wire open. That it may half work is read (see tests/published). */
	oneWire: 0.5,
	/** The same with a terminator on the loose wire. That it is worse is read. */
	oneWireTerminated: 0.9,
	/** Common open with no way home through earth. */
	commonOpen: 0.3,
	/** More than one driver. */
	collision: 1,
	/** The worst echo of an open end. */
	openEnd: 0.5,
	/** The worst of a line too long. */
	tooLong: 0.95,
	/** The worst of too many loads. */
	tooManyLoads: 0.6,
	/** The worst of microphone cable. */
	microphone: 0.6,
	/** Each socket with more than one plug in it. */
	split: 0.15,
	/** A line closed on itself. */
	ring: 0.2,
	/** Each terminator past two. */
	extraTerminator: 0.25,
} as const);

/**
 * Share of frames lost for `amount` against a limit: 0 up to `limit`, then from `LINE_RATES.least` straight up to `most`,
 * which it reaches at `worst`. All amounts in one unit; 0 to 1 comes back.
 */
export function ramp(amount: number, limit: number, worst: number, most: number): number {
	if (amount <= limit) return 0;
	const share = Math.min(1, (amount - limit) / (worst - limit));
	return LINE_RATES.least + share * (most - LINE_RATES.least);
}
