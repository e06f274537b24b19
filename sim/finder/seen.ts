import type { Sight } from '../rig/index.ts';

/** Whether any light comes out, ultraviolet alone included. A light that jumps is lit, dark as it may be for a moment. */
export const isLit = ({ light }: Sight): boolean =>
	light.flicker || light.whole.brightness > 0 || light.whole.ultraviolet > 0;

/** Whether an eye sees it lit: ultraviolet alone does not count in a lit hall. */
export const looksLit = ({ light }: Sight): boolean => light.flicker || light.whole.brightness > 0.03;

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

/** Whether two sights have one colour, brightness aside. */
export function sameColour(a: Sight, b: Sight): boolean {
	const strip = (words: string): string => words.replace(/^(dim|faint|deep|pale) /, '');
	return strip(a.light.whole.words) === strip(b.light.whole.words);
}

/** How a brightness stands against what is meant: within a fifth is the same to an eye (common practice, no source). */
export function brightnessAgainst(seen: Sight, meant: Sight): 'dark' | 'dimmer' | 'as-meant' | 'brighter' {
	const a = seen.light.whole.brightness;
	const b = meant.light.whole.brightness;
	if (a <= 0.03) return b <= 0.03 ? 'as-meant' : 'dark';
	if (a < 0.8 * b) return 'dimmer';
	return a > 1.25 * b ? 'brighter' : 'as-meant';
}
