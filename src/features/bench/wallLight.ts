import {
	type FlashWatch,
	limitFlashes,
	MOST_FLASHES,
	screenFlashes,
	strobeGate,
	watchFlashes,
} from '../../../sim/light/index.ts';
import type { Sight } from '../../../sim/rig/index.ts';

/** Whether a lamp's light must be looked at again for every picture, since it changes by itself. */
export const isRestless = ({ light }: Sight): boolean => light.moving || light.flashes > 0 || light.flicker;

/** Whether the screen shows fewer changes than the lamp makes. */
export const isCapped = ({ light }: Sight): boolean => light.flashes > MOST_FLASHES || light.flicker;

/** Two opposing turns make a flash. */
const MOST_TURNS = 2 * MOST_FLASHES;

/** Time on the screen is taken a little slow, since a frame may come late: three flashes in 1.06 s and not in 1. */
const SLOW = 0.94;

/**
 * All lamps that jump (flash, or flicker on damaged data) do so on one beat, this many ms apart, so that lamps out of step do not
 * flash the wall faster than any one of them does.
 */
export const BEAT_MS = 1000 / (MOST_TURNS * SLOW);

/** A second, and the margin. */
const WINDOW_MS = 1000 / SLOW;

/**
 * The moments of the last second at which lamps that jump were drawn anew, with this one; null where it would be one too many: a
 * page that was held up draws late, and the next beat would come too soon after.
 */
export function withJump(jumps: readonly number[], atMs: number): number[] | null {
	const recent = jumps.filter((at) => at > atMs - WINDOW_MS);
	return recent.length < MOST_TURNS ? [...recent, atMs] : null;
}

/** Whether a lamp's light jumps, rather than moves smoothly. */
export const isJumpy = ({ light }: Sight): boolean => light.flashes > 0 || light.flicker;

/** The moment of the page's time at which lamps that jump are looked at: the middle of the beat. */
export const beatAt = (pageMs: number): number => (Math.floor(pageMs / BEAT_MS) + 0.5) * BEAT_MS;

/**
 * The colour to draw for a cell at a moment: that of the light, or black in the dark part of a flash.
 * @param atMs the page's time: a rig's clock run fast makes its programmes fast, not its flashes
 * @param realRate only where the person has asked for it after a warning
 */
export function colourAt(sight: Sight, cell: number, atMs: number, realRate: boolean): string {
	const { light } = sight;
	const rate = realRate ? light.flashes : Math.min(screenFlashes(light.flashes), SLOW * MOST_FLASHES);
	return strobeGate(rate, atMs) === 1 ? (light.cells[cell]?.colour ?? '#000000') : '#000000';
}

/** What the wall showed in the last second: each pool by itself, and the moments at which any of them turned. */
export interface Painting {
	readonly pools: ReadonlyMap<string, FlashWatch>;
	readonly turns: readonly number[];
}

export const BLANK: Painting = Object.freeze({ pools: new Map(), turns: [] });

/**
 * The next picture of the wall: each pool as it is wanted, unless that would be one flash too many in a second for the pool by
 * itself or for all of them together (lamps out of step flash the wall faster than any one of them does). What is held back
 * comes in as soon as it may, so call it for every picture while anything wanted is not shown.
 * @param pageMs milliseconds, never falling
 * @param wanted pool to `#rrggbb`
 */
export function paint(before: Painting, pageMs: number, wanted: ReadonlyMap<string, string>): Painting {
	const atMs = pageMs * SLOW;
	const turns = before.turns.filter((at) => at > atMs - 1000);
	const pools = new Map<string, FlashWatch>();
	for (const [key, colour] of wanted) {
		const watch = before.pools.get(key) ?? watchFlashes('#000000');
		const next = limitFlashes(watch, atMs, colour);
		if (next !== watch && turnedAt(next, atMs) && turns.at(-1) !== atMs) {
			if (turns.length >= MOST_TURNS) {
				pools.set(key, watch);
				continue;
			}
			turns.push(atMs);
		}
		pools.set(key, next);
	}
	return { pools, turns };
}

const turnedAt = (watch: FlashWatch, atMs: number): boolean =>
	watch.luminance.at.at(-1) === atMs || watch.red.at.at(-1) === atMs;
