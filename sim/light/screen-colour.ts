import { convertRgbToLrgb, convertXyz65ToRgb } from 'culori/fn';
import { hexOf, hueOf, intoGamut, type Linear } from './gamut.ts';
import type { Xyz } from './mix.ts';

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
