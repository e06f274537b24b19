import type { KeyedPanel } from '../../../shared/profile/index.ts';
import { holdFor } from '../../fixture/index.ts';

/**
 * How a person holds a key, stated once. Somebody watches the display and lets go when it reads what they wait for; the key
 * comes up a reaction later, and meanwhile the value runs on. So a hold does not end on a value: it ends near one, and
 * taps do the rest. Words that fly past cannot be read, so holds are asked for on numbers alone, and along a menu or
 * a list there are taps.
 */
export const HAND = Object.freeze({
	/** From what the display shows to the key coming up, ms: anything between these. A scatter of 250 ms; ours, no source. */
	soonestMs: 100,
	latestMs: 350,
	/** The longest hold that is asked for, its reaction and all, ms. Ours, no source. */
	longestMs: 4000,
	/** Repeats before which nobody is asked to let go: what is nearer is tapped. Ours, no source. */
	fewestRepeats: 4,
} as const);

/** Repeats that a hold may have come to when the key is up. */
export interface Landing {
	readonly least: number;
	readonly most: number;
}

/**
 * Where a hold may end that is to be let go when the display shows its nth repeat.
 * @param cue that repeat, from 1; 0 is a tap, which is over before anything repeats
 */
export function landingOf({ repeat }: KeyedPanel, cue: number): Landing {
	if (cue === 0) return { least: 0, most: 0 };
	const later = (ms: number): number => Math.floor(ms / repeat.every);
	return { least: cue + later(HAND.soonestMs), most: cue + later(HAND.latestMs) };
}

/** Milliseconds from the key going down to its coming up, for a hold let go at a cue that ended after so many repeats. */
export function heldMs(panel: KeyedPanel, cue: number, repeats: number): number {
	if (cue === 0) return 0;
	return holdFor(panel, cue) + Math.max(HAND.soonestMs, (repeats - cue) * panel.repeat.every);
}

/** Repeats at which a person may be asked to let go; empty where the panel is too slow for any. */
export function cuesOf(panel: KeyedPanel): readonly number[] {
	const cues: number[] = [];
	for (let cue = HAND.fewestRepeats; holdFor(panel, cue) + HAND.latestMs <= HAND.longestMs; cue++) cues.push(cue);
	return cues;
}
