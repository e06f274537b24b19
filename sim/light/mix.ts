import type { Profile } from '../../shared/profile/index.ts';

/** Tristimulus values X, Y, Z of CIE 1931, with Y = 1 for every emitter of the fixture at full. */
export type Xyz = readonly [x: number, y: number, z: number];

const parts = new WeakMap<Profile, readonly Xyz[]>();

/**
 * What each emitter adds at full, all cells together: Y is its share of the fixture's luminous flux, X and Z follow from
 * its chromaticity (`X = x / y · Y`, `Z = (1 − x − y) / y · Y`: CIE 15). An emitter at y = 0 has no luminous flux.
 */
function partsOf(profile: Profile): readonly Xyz[] {
	let all = parts.get(profile);
	if (all === undefined) {
		const flux = profile.emitters.reduce((sum, it) => sum + it.lumens, 0);
		all = profile.emitters.map(({ xy: [x, y], lumens }): Xyz => {
			if (y <= 0 || flux <= 0) return [0, 0, 0];
			const share = lumens / flux;
			return [(x / y) * share, share, ((1 - x - y) / y) * share];
		});
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

/** Chromaticity x, y of tristimulus values; null where there is no light. */
export function chromaticity([X, Y, Z]: Xyz): readonly [number, number] | null {
	const sum = X + Y + Z;
	return sum > 0 ? [X / sum, Y / sum] : null;
}

/**
 * CIE 1976 lightness 0..1 (L* / 100) of a relative luminance 0..1: how bright the light seems against full.
 * Half the flux seems 0.76 as bright.
 */
export function lightness(Y: number): number {
	return Y > 216 / 24389 ? (116 * Math.cbrt(Y) - 16) / 100 : (Y * 24389) / 2700;
}
