import { chromaticityOf, type Xyz, xyzOf } from '../profile/index.ts';

/** An emitter to mix from: CIE 1931 x, y and its flux at full, in any unit that all of them share. */
export interface Source {
	readonly xy: readonly [number, number];
	readonly flux: number;
}

/** The chromaticity and flux of some emitters at levels 0 to 255; null for none lit. */
export function mixOf(sources: readonly Source[], levels: readonly number[]): Source | null {
	const sum = sources
		.map(({ xy, flux }, i) => xyzOf(xy, (flux * (levels[i] ?? 0)) / 255))
		.reduce<Xyz>((all, one) => [all[0] + one[0], all[1] + one[1], all[2] + one[2]], [0, 0, 0]);
	const xy = chromaticityOf(sum);
	return xy && { xy, flux: sum[1] };
}

/** Levels of emitters, and whether they give the colour that was asked. */
export interface Fit {
	readonly levels: readonly number[];
	readonly isWithin: boolean;
}

/**
 * Levels 0 to 255 that come nearest to a chromaticity, the fullest of them at 255. Every three emitters are tried, and of those that
 * reach the colour the brightest three are taken; where none do, the one emitter whose chromaticity is nearest.
 */
export function fitColour(sources: readonly Source[], xy: readonly [number, number]): Fit {
	let best: { readonly levels: readonly number[]; readonly flux: number } | null = null;
	for (let a = 0; a < sources.length; a++)
		for (let b = a + 1; b < sources.length; b++)
			for (let c = b + 1; c < sources.length; c++) {
				const levels = throughThree(sources, [a, b, c], xy);
				const flux = levels ? (mixOf(sources, levels)?.flux ?? 0) : 0;
				if (levels && flux > (best?.flux ?? 0)) best = { levels, flux };
			}
	if (best) return { levels: best.levels, isWithin: true };
	const apart = (source: Source) => Math.hypot(source.xy[0] - xy[0], source.xy[1] - xy[1]);
	const nearest = sources.reduce(
		(least, source, i) => (apart(source) < apart(sources[least] as Source) ? i : least),
		0,
	);
	const distance = sources[nearest] ? apart(sources[nearest]) : 1;
	return { levels: sources.map((_, i) => (i === nearest ? 255 : 0)), isWithin: distance < SAME };
}

/** Chromaticities this near are one: a file gives them to four places or fewer. */
const SAME = 1e-3;
/** What is less than this share is none: it comes of rounding. */
const LEAST = -1e-6;

/** Levels of three emitters for a chromaticity, the fullest at 255; null where it is not between them. */
function throughThree(
	sources: readonly Source[],
	three: readonly [number, number, number],
	xy: readonly [number, number],
): number[] | null {
	const [p, q, r] = three.map((i) => xyzOf((sources[i] as Source).xy, (sources[i] as Source).flux)) as [Xyz, Xyz, Xyz];
	const target = xyzOf(xy, 1);
	const whole = determinant(p, q, r);
	if (Math.abs(whole) < 1e-9) return null;
	const shares = [
		determinant(target, q, r) / whole,
		determinant(p, target, r) / whole,
		determinant(p, q, target) / whole,
	];
	if (!shares.every((share) => share >= LEAST)) return null;
	const most = Math.max(...shares);
	if (!(most > 0)) return null;
	const levels = sources.map(() => 0);
	for (const [n, i] of three.entries()) levels[i] = Math.round((Math.max(0, shares[n] as number) / most) * 255);
	return levels;
}

const determinant = ([a, b, c]: Xyz, [d, e, f]: Xyz, [g, h, i]: Xyz): number =>
	a * (e * i - f * h) - d * (b * i - c * h) + g * (b * f - c * e);
