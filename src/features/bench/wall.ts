import { poolDiameter } from '../../../shared/optics/index.ts';
import { profileFor, type RigSheet } from '../../../shared/sheet/index.ts';
import {
	type FlashWatch,
	limitFlashes,
	MOST_FLASHES,
	screenFlashes,
	strobeGate,
	watchFlashes,
} from '../../../sim/light/index.ts';
import type { Sight } from '../../../sim/rig/index.ts';

/** Metres from the floor's edge to the bottom of the picture, and from the frieze to its top. */
const FLOOR = 0.95;
/** How high up the wall lamps are aimed, as a share of its height: from the floor, and from overhead. */
const AIM = { floor: 0.44, overhead: 0.52 } as const;
/** Width of a bar from its first cell to its last, metres. */
const BAR = 1;
/** Steepest ray that still counts as meeting the wall, degrees. */
const STEEPEST = 80;

/** One pool of light on the wall, in metres from its lower left corner: an ellipse to half the peak, and to a tenth. */
export interface WallPool {
	readonly key: string;
	readonly fixture: string;
	/** Cell, from 0. */
	readonly cell: number;
	/** Where the lens is. */
	readonly lens: readonly [x: number, y: number];
	readonly x: number;
	/** Centre and half height to a tenth of the peak, and half width. */
	readonly y: number;
	readonly rx: number;
	readonly ry: number;
	/** How far out of the ellipse (0..1) half the peak lies. */
	readonly half: number;
	/** Height at which the middle of the beam meets the wall: where it is brightest. */
	readonly peak: number;
}

export interface WallLight {
	readonly fixture: string;
	/** Its number in the row, from 1. */
	readonly number: number;
	readonly x: number;
	readonly y: number;
	readonly overhead: boolean;
	readonly shape: 'wash' | 'bar';
	readonly pools: readonly WallPool[];
}

export interface WallPicture {
	/** Metres. */
	readonly width: number;
	readonly height: number;
	readonly floor: number;
	readonly lamps: readonly WallLight[];
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const radians = (angle: number): number => (angle * Math.PI) / 180;

/**
 * Half width and the lowest and highest point, metres, of the pool that a round beam makes on a wall it meets at a slant.
 * @param away metres from lens to wall
 * @param up degrees the lamp is tipped up
 * @param angle degrees from side to side of the beam
 */
export function slantedPool(away: number, up: number, angle: number): { half: number; low: number; high: number } {
	const ray = (at: number) => away * Math.tan(radians(Math.max(-STEEPEST, Math.min(STEEPEST, at))));
	const slant = away / Math.cos(radians(Math.min(STEEPEST, Math.abs(up))));
	return { half: poolDiameter(slant, angle) / 2, low: ray(up - angle / 2), high: ray(up + angle / 2) };
}

/** How far past the ellipse to a tenth a pool is drawn: there it has all but gone. */
export const POOL_EDGE = 1.35;

/**
 * How bright a pool is against its peak, 0 to 1: half at `half`, a tenth at 1, smooth between and beyond, as beam and field angles
 * are defined (to half and to a tenth of the peak).
 * @param out distance from the peak, 0 to `POOL_EDGE`, where 1 is the ellipse to a tenth
 * @param half where half the peak lies, over 0 and under 1
 */
export const falloff = (out: number, half: number): number =>
	0.5 ** ((out / half) ** (Math.log(Math.log2(10)) / -Math.log(half)));

/** Where everything on the wall stands; how it shines is another matter. */
export function wallOf(sheet: RigSheet): WallPicture {
	const { width, height } = sheet.hall;
	const lamps = sheet.fixtures.map(({ id, profile: profileId, place }, at): WallLight => {
		const profile = profileFor(sheet, profileId);
		const { beam, field } = profile.optics;
		const y = place.overhead ? place.y : place.y + 0.3;
		const target = height * (place.overhead ? AIM.overhead : AIM.floor);
		const up = degrees(Math.atan((target - y) / place.throw));
		const outer = slantedPool(place.throw, up, field);
		const inner = slantedPool(place.throw, up, beam);
		const step = profile.cells > 1 ? BAR / (profile.cells - 1) : 0;
		return {
			fixture: id,
			number: at + 1,
			x: place.x,
			y,
			overhead: place.overhead,
			shape: profile.shape,
			pools: Array.from({ length: profile.cells }, (_, cell) => {
				const x = place.x + (cell - (profile.cells - 1) / 2) * step;
				return {
					key: `${id}.${cell}`,
					fixture: id,
					cell,
					lens: [x, y],
					x,
					y: y + (outer.low + outer.high) / 2,
					rx: outer.half,
					ry: (outer.high - outer.low) / 2,
					half: inner.half / outer.half,
					peak: target,
				};
			}),
		};
	});
	return { width, height, floor: FLOOR, lamps };
}

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
export interface WallWatch {
	readonly pools: ReadonlyMap<string, FlashWatch>;
	readonly turns: readonly number[];
}

export const BLANK: WallWatch = Object.freeze({ pools: new Map(), turns: [] });

/**
 * The next picture of the wall: each pool as it is wanted, unless that would be one flash too many in a second for the pool by
 * itself or for all of them together (lamps out of step flash the wall faster than any one of them does). What is held back
 * comes in as soon as it may, so call it for every picture while anything wanted is not shown.
 * @param pageMs milliseconds, never falling
 * @param wanted pool to `#rrggbb`
 */
export function paint(before: WallWatch, pageMs: number, wanted: ReadonlyMap<string, string>): WallWatch {
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
