import type { Sight } from '../rig/index.ts';

/** Whether any light comes out, ultraviolet alone included. A light that jumps is lit, dark as it may be for a moment. */
export const isLit = ({ light }: Sight): boolean =>
	light.flicker || light.whole.brightness > 0 || light.whole.ultraviolet > 0;

/** Whether an eye sees it lit: ultraviolet alone does not count in a lit hall, and one that moves is lit however dark at a moment. */
export const looksLit = ({ light }: Sight): boolean => light.flicker || light.moving || light.whole.brightness > 0.03;

/** Smallest change of a level that an eye beside the lamp sees (common practice, no source). */
const SEEN = 0.04;

/** Whether two sights of one fixture are the same light to an eye. */
export function sameLight(a: Sight, b: Sight): boolean {
	if (a.light.flicker !== b.light.flicker || a.light.moving !== b.light.moving) return false;
	if (a.light.flashes > 0 !== b.light.flashes > 0) return false;
	// what moves or jumps cannot be held to one colour
	if (a.light.moving || a.light.flicker) return true;
	return sameLevels(a, b);
}

/** Whether two sights are the same light at their moments, whatever it does before and after. */
export function sameLevels(a: Sight, b: Sight): boolean {
	return a.light.cells.every((cell, i) => {
		const other = b.light.cells[i];
		return other !== undefined && cell.levels.every((level, e) => Math.abs(level - (other.levels[e] ?? 0)) <= SEEN);
	});
}

/** Smallest step between two colours that an eye sees which has only one of them before it, in CIE 1976 u', v' (ours, no source). */
const ANOTHER_COLOUR = 0.025;

/** CIE 1976 u', v' of a chromaticity (CIE 015: u' = 4x / (−2x + 12y + 3), v' = 9y / (−2x + 12y + 3); from memory). */
function evenly([x, y]: readonly [number, number]): readonly [number, number] {
	const below = -2 * x + 12 * y + 3;
	return [(4 * x) / below, (9 * y) / below];
}

/** Whether two sights have one colour, brightness aside. One that moves has none that could be held to it. */
export function sameColour(a: Sight, b: Sight): boolean {
	if (a.light.moving || b.light.moving) return a.light.moving === b.light.moving;
	const [one, two] = [a.light.whole, b.light.whole];
	if (one.ultraviolet > 0 !== two.ultraviolet > 0) return false;
	if (!one.xy || !two.xy) return one.xy === two.xy;
	const [[u1, v1], [u2, v2]] = [evenly(one.xy), evenly(two.xy)];
	return Math.hypot(u1 - u2, v1 - v2) <= ANOTHER_COLOUR;
}

/** How a brightness stands against what is meant: within a fifth is the same to an eye (common practice, no source). */
export function brightnessAgainst(seen: Sight, meant: Sight): 'dark' | 'dimmer' | 'as-meant' | 'brighter' {
	const a = seen.light.whole.brightness;
	const b = meant.light.whole.brightness;
	// how bright a moving light is depends on when one looks
	if (seen.light.moving || meant.light.moving) {
		if (looksLit(seen) === looksLit(meant)) return 'as-meant';
		return looksLit(seen) ? 'brighter' : 'dark';
	}
	if (a <= 0.03) return b <= 0.03 ? 'as-meant' : 'dark';
	if (a < 0.8 * b) return 'dimmer';
	return a > 1.25 * b ? 'brighter' : 'as-meant';
}
