import { convertLrgbToOklab, convertLrgbToRgb, convertOklabToLrgb } from 'culori/fn';
import { type Profile, type Xyz, xyzOf } from '../../shared/profile/index.ts';

const parts = new WeakMap<Profile, readonly Xyz[]>();

/**
 * What each emitter adds at full, all cells together: Y is its share of the fixture's luminous flux, so that all of them together
 * come to Y = 1.
 */
function partsOf(profile: Profile): readonly Xyz[] {
	let all = parts.get(profile);
	if (all === undefined) {
		const flux = profile.emitters.reduce((sum, it) => sum + it.lumens, 0);
		all = profile.emitters.map(({ xy, lumens }) => xyzOf(xy, flux > 0 ? lumens / flux : 0));
		parts.set(profile, all);
	}
	return all;
}

/**
 * Adds emitters up (Grassmann: lights add, each tristimulus value for itself).
 * @param outputs 0..1 by emitter
 * @param lit which emitters count; left out, all
 */
export function mix(profile: Profile, outputs: ArrayLike<number>, lit?: (emitter: number) => boolean): Xyz {
	let X = 0;
	let Y = 0;
	let Z = 0;
	for (const [e, [x, y, z]] of partsOf(profile).entries()) {
		if (lit && !lit(e)) continue;
		const output = outputs[e] ?? 0;
		X += x * output;
		Y += y * output;
		Z += z * output;
	}
	return [X, Y, Z];
}

/**
 * CIE 1976 lightness 0..1 (L* / 100) of a relative luminance 0..1: how bright the light seems against full.
 * Half the flux seems 0.76 as bright.
 */
export function lightness(Y: number): number {
	return Y > 216 / 24389 ? (116 * Math.cbrt(Y) - 16) / 100 : (Y * 24389) / 2700;
}

/** A colour in linear sRGB. Channels below 0 or above 1 lie outside the screen's gamut. */
export interface Linear {
	readonly r: number;
	readonly g: number;
	readonly b: number;
}

/** A colour in OKLab: lightness 0..1, and two axes that are 0 for greys. */
interface Lab {
	readonly l: number;
	readonly a: number;
	readonly b: number;
}

/**
 * How far, in OKLab, a colour may stray from the straight way towards grey on its way into the screen's gamut. CSS Color 4
 * takes 0.02, one just noticeable step; but spectral emitters lie so far out that such a way ends in mud (465 nm in
 * #004290). At 0.08 pure emitters stay pure colours, and every mix of them lies within 20 degrees of the hue of its
 * dominant wavelength (as tested).
 */
const STRAY = 0.08;

/** How near the edge is looked for, in OKLab chroma: CSS Color 4 (read). */
const NEAR = 0.0001;

const clamp = (value: number): number => Math.min(Math.max(value, 0), 1);

const isShown = ({ r, g, b }: Linear): boolean => Math.min(r, g, b) >= 0 && Math.max(r, g, b) <= 1;

const clipped = ({ r, g, b }: Linear): Linear => ({ r: clamp(r), g: clamp(g), b: clamp(b) });

/**
 * The colour of the screen's gamut that stands for one: of the same hue and lightness in OKLCH and of as much chroma as there
 * is room for, clipped where that strays little enough (CSS Color 4, 13.2: gamut mapping by binary search, read).
 * @returns linear sRGB, each channel 0..1
 */
export function intoGamut(colour: Linear): Linear {
	const { l, a, b } = convertLrgbToOklab(colour);
	if (l >= 1) return { r: 1, g: 1, b: 1 };
	if (l <= 0) return { r: 0, g: 0, b: 0 };
	if (isShown(colour)) return colour;
	const chroma = Math.hypot(a, b);
	let inside = 0;
	let outside = chroma;
	let found = clipped(colour);
	while (outside - inside > NEAR) {
		const tried = (inside + outside) / 2;
		const lab = { l, a: (a * tried) / chroma, b: (b * tried) / chroma };
		const linear = convertOklabToLrgb(lab);
		found = clipped(linear);
		if (isShown(linear) || apart(lab, convertLrgbToOklab(found)) <= STRAY) inside = tried;
		else outside = tried;
	}
	return found;
}

const apart = (one: Lab, other: Lab): number => Math.hypot(one.l - other.l, one.a - other.a, one.b - other.b);

/** OKLCH hue, degrees 0..360; 0 for greys. */
export function hueOf(colour: Linear): number {
	if (colour.r === colour.g && colour.g === colour.b) return 0;
	const { a, b } = convertLrgbToOklab(colour);
	const degrees = (Math.atan2(b, a) * 180) / Math.PI;
	return degrees < 0 ? degrees + 360 : degrees;
}

/** `#rrggbb` of a colour whose channels lie within 0..1. */
export function hexOf(colour: Linear): string {
	const { r, g, b } = convertLrgbToRgb(colour);
	return `#${[r, g, b]
		.map((channel) =>
			Math.round(clamp(channel) * 255)
				.toString(16)
				.padStart(2, '0'),
		)
		.join('')}`;
}
