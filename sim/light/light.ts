import { chromaticityOf, type Profile } from '../../shared/profile/index.ts';
import { lightness, mix } from './colour.ts';
import { poolColour } from './screen.ts';
import type { CellLight } from './types.ts';
import { lightWords } from './words.ts';

/** Below this share of full flux nobody calls it light. `common practice, no source`: an 8-bit blue at 1 of 255 is above it. */
const DARK = 1e-4;

/**
 * The light of one cell, as a person sees it on the wall.
 *
 * Brightness is CIE 1976 lightness (L* / 100) of its luminous flux against the cell with every emitter at full: half the flux
 * is 0.76. The colour is that of the pool in a dark hall (see `poolColour`). Ultraviolet emitters add what little an eye
 * sees of them, a faint violet; `ultraviolet` says how strong they really are.
 * @param outputs of this cell, 0..1 by emitter
 * @param covered something stands over the lens: nothing gets out, though the emitters light
 */
export function cellLight(profile: Profile, outputs: ArrayLike<number>, covered = false): CellLight {
	const levels = profile.emitters.map((_, e) => (covered ? 0 : (outputs[e] ?? 0)));
	const seen = seenBy(profile);
	const key = levels.join();
	let light = seen.get(key);
	if (!light) {
		light = workOut(profile, levels);
		if (seen.size >= MOST_SEEN) seen.clear();
		seen.set(key, light);
	}
	return light;
}

/** Lights worked out before, by profile: a rig shows few different ones, and colour takes a while. */
const known = new WeakMap<Profile, Map<string, CellLight>>();
const MOST_SEEN = 2000;

function seenBy(profile: Profile): Map<string, CellLight> {
	let seen = known.get(profile);
	if (!seen) {
		seen = new Map();
		known.set(profile, seen);
	}
	return seen;
}

function workOut(profile: Profile, levels: readonly number[]): CellLight {
	let strongest = 0;
	let ultraviolet = 0;
	for (const [e, emitter] of profile.emitters.entries()) {
		if (emitter.ultraviolet) ultraviolet = Math.max(ultraviolet, levels[e] ?? 0);
		else strongest = Math.max(strongest, levels[e] ?? 0);
	}
	const xyz = mix(profile, levels);
	// a red with a violet glow in it is still called red: the glow is said beside it
	const plain = mix(profile, levels, (e) => !profile.emitters[e]?.ultraviolet);
	const named = plain[1] < DARK ? null : chromaticityOf(plain);
	const xy = ultraviolet > 0 ? chromaticityOf(xyz) : named;
	return {
		levels,
		brightness: xy ? lightness(xyz[1]) : 0,
		strength: strongest,
		colour: xy ? poolColour(xyz) : '#000000',
		words: lightWords(named, strongest, ultraviolet),
		xy,
		ultraviolet,
	};
}

/**
 * The light of all cells together, as where their pools have run into one: levels are the mean over the cells, brightness
 * is against the whole fixture at full.
 * @param outputs 0..1 by cell, then emitter
 * @param covered see `cellLight`
 */
export function wholeLight(profile: Profile, outputs: ArrayLike<number>, covered = false): CellLight {
	const emitters = profile.emitters.length;
	const mean = profile.emitters.map((_, e) => {
		let sum = 0;
		for (let cell = 0; cell < profile.cells; cell++) sum += outputs[cell * emitters + e] ?? 0;
		return sum / profile.cells;
	});
	return cellLight(profile, mean, covered);
}
