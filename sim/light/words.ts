import { hueOf } from './colour.ts';
import { linearOf } from './screen.ts';

/** Where one name ends and the next begins. Each border belongs to the name above it. */
export const BORDERS = Object.freeze({
	/** Output of the strongest emitter, 0..1: below, the light is faint, or dim. */
	faint: 0.02,
	dim: 0.2,
	/** A white: this near the Planckian locus (Duv, either side), from amber's end (kelvin) to pale blue's. */
	nearLocus: 0.012,
	warmest: 2500,
	/** Kelvin: warm white, then white, then cool white. */
	white: 4000,
	cool: 7000,
	coolest: 15000,
	/** OKLCH hue of a white that is warmer than this: McCamy's formula tells nothing of one that is not. */
	neutral: 5000,
	warmHues: Object.freeze({ from: 15, to: 120 }),
	/** Purity (see `Chroma`): below, a pale colour. */
	pale: 0.85,
});

/** One name: from which OKLCH hue on, degrees; above which purity it is deep, and below which pale, where it has its own. */
interface Family {
	readonly from: number;
	readonly name: string;
	readonly deep?: number;
	readonly pale?: number;
}

/**
 * Families by OKLCH hue, degrees, of the light itself: each from its number up to the next one's. Before the first comes the last.
 * Hue as a screen shows it would not do: beyond its edge red and red with amber come out alike. Only what is as pure as a lone
 * emitter is deep. Borders are ours; what the common pairs of emitters are called is held by a test.
 */
export const FAMILIES: readonly Family[] = Object.freeze([
	{ from: 10, name: 'red', deep: 1.03 },
	{ from: 32, name: 'orange' },
	{ from: 47, name: 'amber' },
	{ from: 82, name: 'yellow' },
	{ from: 116, name: 'yellow-green' },
	{ from: 142, name: 'green', deep: 1.4 },
	{ from: 166, name: 'turquoise' },
	{ from: 186, name: 'cyan' },
	{ from: 222, name: 'sky blue' },
	{ from: 244, name: 'blue', deep: 1.02 },
	{ from: 284, name: 'violet' },
	{ from: 312, name: 'purple' },
	{ from: 322, name: 'magenta' },
	{ from: 344, name: 'pink', pale: 0.72 },
]);

/** What the visible light is like, apart from how strong it is. */
export interface Chroma {
	/** OKLCH hue, degrees. */
	readonly hue: number;
	/** `1 − weakest / strongest` channel of linear sRGB: 0 is the screen's white, 1 its edge, more lies beyond it. */
	readonly purity: number;
	/** Kelvin, and distance from the Planckian locus in CIE 1960 u, v. */
	readonly kelvin: number;
	readonly duv: number;
}

/** Scale at which a hue is judged; OKLab bends a little with it. */
const JUDGED_AT = 0.5;

/** Measures a chromaticity for naming. */
export function chromaOf(xy: readonly [number, number]): Chroma {
	const [x, y] = xy;
	const height = Math.max(y, 1e-6);
	const xyz = [x / height, 1, (1 - x - y) / height] as const;
	const { r, g, b } = linearOf(xyz);
	return {
		hue: hueOf({ r: r * JUDGED_AT, g: g * JUDGED_AT, b: b * JUDGED_AT }),
		purity: 1 - Math.min(r, g, b) / Math.max(r, g, b),
		kelvin: colourTemperature(xy),
		duv: distanceFromLocus(xy),
	};
}

/** The plain English name of a chromaticity, with no word of how strong it is: 'warm white', 'pale green', 'deep blue'. */
export function colourName(xy: readonly [number, number]): string {
	const { hue, purity, kelvin, duv } = chromaOf(xy);
	const isWhite = Math.abs(duv) < BORDERS.nearLocus && kelvin >= BORDERS.warmest && kelvin < BORDERS.coolest;
	const isWarm = hue >= BORDERS.warmHues.from && hue < BORDERS.warmHues.to;
	// far blue mixes come out of the formula as some warm white
	if (isWhite && (isWarm || kelvin >= BORDERS.neutral)) {
		if (kelvin < BORDERS.white) return 'warm white';
		return kelvin < BORDERS.cool ? 'white' : 'cool white';
	}
	const family = FAMILIES.findLast((it) => hue >= it.from) ?? FAMILIES.at(-1);
	const name = family?.name ?? '';
	if (purity < (family?.pale ?? BORDERS.pale)) return name === 'red' ? 'pink' : `pale ${name}`;
	return purity >= (family?.deep ?? Number.POSITIVE_INFINITY) ? `deep ${name}` : name;
}

/**
 * What a person would call a light: 'dark', 'dim deep blue', 'warm white', 'red with ultraviolet'.
 * Ultraviolet is always said, since it harms whether or not it is seen.
 * @param xy chromaticity of the light but for its ultraviolet emitters; null when there is none
 * @param level output of the strongest visible emitter, 0..1
 * @param ultraviolet output of the strongest ultraviolet emitter, 0..1
 */
export function lightWords(xy: readonly [number, number] | null, level: number, ultraviolet: number): string {
	if (ultraviolet > 0 && (level <= 0 || xy === null)) {
		return `${strength(ultraviolet)}violet glow (ultraviolet)`;
	}
	if (xy === null) return 'dark';
	return `${strength(level)}${colourName(xy)}${ultraviolet > 0 ? ' with ultraviolet' : ''}`;
}

function strength(level: number): string {
	if (level < BORDERS.faint) return 'faint ';
	return level < BORDERS.dim ? 'dim ' : '';
}

/**
 * Correlated colour temperature in kelvin of a chromaticity near the Planckian locus: McCamy's cubic (1992; formula read in
 * several public restatements). Within some 2 % from 2300 K to 12,500 K, no use elsewhere.
 */
export function colourTemperature([x, y]: readonly [number, number]): number {
	const n = (x - 0.332) / (0.1858 - y);
	return 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33;
}

/** Ohno's polynomial for the distance of the locus from (0.292, 0.24) in CIE 1960 u, v (Leukos 10, 2014; coefficients read in public restatements). */
const LOCUS = Object.freeze([-0.471106, 1.925865, -2.4243787, 1.5317403, -0.5179722, 0.0893944, -0.00616793]);

/**
 * Distance from the Planckian locus in CIE 1960 u, v (Duv): above 0 greenish, below 0 pinkish.
 * Meant for 2600 K to 20,000 K and distances under 0.03; farther off it only grows.
 */
export function distanceFromLocus([x, y]: readonly [number, number]): number {
	const scale = -2 * x + 12 * y + 3;
	const u = (4 * x) / scale - 0.292;
	const v = (6 * y) / scale - 0.24;
	const far = Math.hypot(u, v);
	if (far === 0) return Number.NEGATIVE_INFINITY;
	const angle = Math.acos(u / far);
	return far - LOCUS.reduceRight((sum, k) => sum * angle + k, 0);
}
