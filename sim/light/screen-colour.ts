import { converter, formatHex, modeLrgb, modeOklab, modeOklch, modeRgb, modeXyz65, toGamut, useMode } from 'culori/fn';
import type { Xyz } from './mix.ts';

useMode(modeXyz65);
useMode(modeRgb);
useMode(modeLrgb);
useMode(modeOklab);
useMode(modeOklch);

const toLinear = converter('lrgb');
const toOklch = converter('oklch');

/**
 * How far the eye has opened in the dark hall. A wall lit by one emitter of many has a small share of the fixture's full
 * flux and is still no dark wall: the strongest screen channel shows `1 − e^(−4 · its value)`, which rises steadily, never
 * clips, and puts full output at 0.98.
 */
const EXPOSURE = 4;

/**
 * How far, in OKLab, a colour may stray from the straight way towards grey on its way into the screen's gamut. CSS Color 4
 * takes 0.02, one just noticeable step; but spectral emitters lie so far out that such a way ends in mud (465 nm in
 * #004290). At 0.08 pure emitters stay pure colours, and every mix of them lies within 20 degrees of the hue of its
 * dominant wavelength (as tested).
 */
const STRAY = 0.08;

const intoGamut = toGamut('rgb', 'oklch', undefined, STRAY);

/** A colour in linear sRGB, not clipped: channels below 0 or above 1 lie outside the screen's gamut. */
export interface Linear {
	readonly r: number;
	readonly g: number;
	readonly b: number;
}

/** Tristimulus values (D65 white at 0.9505, 1, 1.0890) in linear sRGB. */
export function linearOf([x, y, z]: Xyz): Linear {
	const { r, g, b } = toLinear({ mode: 'xyz65', x, y, z });
	return { r, g, b };
}

/** `#rrggbb` of the pool a light makes on a wall in a dark hall: exposed as `EXPOSURE` says, then brought into gamut. */
export function poolColour(xyz: Xyz): string {
	const { r, g, b } = linearOf(xyz);
	const peak = Math.max(r, g, b);
	if (!(peak > 0)) return '#000000';
	const gain = (1 - Math.exp(-EXPOSURE * peak)) / peak;
	return formatHex(intoGamut({ mode: 'lrgb', r: r * gain, g: g * gain, b: b * gain }));
}

/** Strongest channel at which a hue is judged: in the middle, where the screen has most colours. */
const JUDGED_AT = 0.5;

/** OKLCH hue, degrees 0..360, that a light has once it is on the screen; the same at every brightness. 0 for greys. */
export function shownHue(xyz: Xyz): number {
	const { r, g, b } = linearOf(xyz);
	const gain = JUDGED_AT / Math.max(r, g, b);
	return toOklch(intoGamut({ mode: 'lrgb', r: r * gain, g: g * gain, b: b * gain })).h ?? 0;
}

/** Linear sRGB 0..1 of `#rrggbb`. */
export function linearOfHex(hex: string): Linear {
	const value = Number.parseInt(hex.slice(1), 16);
	const { r, g, b } = toLinear({
		mode: 'rgb',
		r: ((value >> 16) & 0xff) / 255,
		g: ((value >> 8) & 0xff) / 255,
		b: (value & 0xff) / 255,
	});
	return { r, g, b };
}
