import { convertRgbToLrgb, convertXyz65ToRgb } from 'culori/fn';
import type { Profile, Xyz } from '../../shared/profile/index.ts';
import { hexOf, hueOf, intoGamut, type Linear } from './colour.ts';
import { programmeSwings } from './programme.ts';

/** WCAG 2.2, 2.3.1 (read): no more than three flashes in any one second. */
export const MOST_FLASHES = 3;

/**
 * The rate at which a strobe may be drawn: its own, but at most three flashes a second.
 * @param hz flashes a second the fixture gives
 * @param realRate true only where the person has turned real-rate flashing on after a warning
 */
export function screenFlashes(hz: number, realRate = false): number {
	return realRate ? hz : Math.min(hz, MOST_FLASHES);
}

/**
 * How fast a programme's clock may run on a screen, 0..1: multiply the time handed to `programmeLevels` by it. Below 1 where
 * its flashes, swells or steps would pass three rises and falls a second.
 * @throws InputError `programme.index`
 */
export function screenPace(profile: Profile, index: number, speed: number, realRate = false): number {
	const swings = programmeSwings(profile, index, speed);
	return realRate || swings <= MOST_FLASHES ? 1 : MOST_FLASHES / swings;
}

/** Turns of one measure (luminance, or whether it is a saturated red) within the last second. */
interface Turns {
	/** Which way the last counted change went; 0 before the first. */
	readonly way: -1 | 0 | 1;
	/** Farthest value reached that way since. */
	readonly reached: number;
	/** Milliseconds of each counted change. */
	readonly at: readonly number[];
}

/** What a picture showed in the last second, so that the next change can be judged. Immutable. */
export interface FlashWatch {
	/** The colour to draw, `#rrggbb`. */
	readonly shown: string;
	readonly luminance: Turns;
	readonly red: Turns;
}

/** WCAG 2.2 (read): opposing changes of 10 % of maximum relative luminance. Some of that is kept back for rounding to 8 bit. */
const LUMINANCE_STEP = 0.09;
/** WCAG 2.2 (read): R / (R + G + B) of 0.8 and more is a saturated red. */
const SATURATED_RED = 0.8;
/** Two opposing changes make a flash. */
const MOST_TURNS = 2 * MOST_FLASHES;

/** A watch that has seen nothing but this colour. */
export function watchFlashes(colour: string): FlashWatch {
	const { luminance, red } = measure(colour);
	return {
		shown: colour,
		luminance: { way: 0, reached: luminance, at: [] },
		red: { way: 0, reached: red, at: [] },
	};
}

/**
 * Lets a colour onto the screen unless it would be one change too many for three flashes in a second; then the last one
 * stays. Call it for every picture drawn, also while nothing changes, so that a colour held back comes in later.
 * Stricter than WCAG 2.2, 2.3.1: it counts bright images and any turn to or from a saturated red, and allows for no small area.
 * @param atMs milliseconds, never falling from call to call
 * @param colour `#rrggbb` that the light has now
 */
export function limitFlashes(watch: FlashWatch, atMs: number, colour: string): FlashWatch {
	if (colour === watch.shown) return watch;
	const now = measure(colour);
	const luminance = turn(watch.luminance, now.luminance, atMs, LUMINANCE_STEP);
	const red = turn(watch.red, now.red, atMs, 0.5);
	if (luminance.at.length > MOST_TURNS || red.at.length > MOST_TURNS) return watch;
	return { shown: colour, luminance, red };
}

function measure(colour: string): { readonly luminance: number; readonly red: number } {
	const { r, g, b } = linearOfHex(colour);
	const sum = r + g + b;
	return {
		luminance: 0.2126 * r + 0.7152 * g + 0.0722 * b,
		red: sum > 0 && r / sum >= SATURATED_RED ? 1 : 0,
	};
}

function turn(turns: Turns, value: number, atMs: number, step: number): Turns {
	const at = turns.at.filter((time) => time > atMs - 1000);
	const moved = value - turns.reached;
	const way = moved > 0 ? 1 : -1;
	if (way === turns.way) return { way, reached: value, at };
	if (Math.abs(moved) < step) return { ...turns, at };
	return { way, reached: value, at: [...at, atMs] };
}

/**
 * How far the eye has opened in the dark hall. A wall lit by one emitter of many has a small share of the fixture's full
 * flux and is still no dark wall: the strongest screen channel shows `1 − e^(−4 · its value)`, which rises steadily, never
 * clips, and puts full output at 0.98.
 */
const EXPOSURE = 4;

/** Tristimulus values (D65 white at 0.9505, 1, 1.0890) in linear sRGB. */
export function linearOf([x, y, z]: Xyz): Linear {
	return convertRgbToLrgb(convertXyz65ToRgb({ x, y, z }));
}

/** `#rrggbb` of the pool a light makes on a wall in a dark hall: exposed as `EXPOSURE` says, then brought into gamut. */
export function poolColour(xyz: Xyz): string {
	const { r, g, b } = linearOf(xyz);
	const peak = Math.max(r, g, b);
	if (!(peak > 0)) return '#000000';
	const gain = (1 - Math.exp(-EXPOSURE * peak)) / peak;
	return hexOf(intoGamut({ r: r * gain, g: g * gain, b: b * gain }));
}

/** Strongest channel at which a hue is judged: in the middle, where the screen has most colours. */
const JUDGED_AT = 0.5;

/** OKLCH hue, degrees 0..360, that a light has once it is on the screen; the same at every brightness. 0 for greys. */
export function shownHue(xyz: Xyz): number {
	const { r, g, b } = linearOf(xyz);
	const gain = JUDGED_AT / Math.max(r, g, b);
	return hueOf(intoGamut({ r: r * gain, g: g * gain, b: b * gain }));
}

/** Linear sRGB 0..1 of `#rrggbb`. */
export function linearOfHex(hex: string): Linear {
	const value = Number.parseInt(hex.slice(1), 16);
	return convertRgbToLrgb({
		r: ((value >> 16) & 0xff) / 255,
		g: ((value >> 8) & 0xff) / 255,
		b: (value & 0xff) / 255,
	});
}
