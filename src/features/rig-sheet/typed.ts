import { readNumber } from '../../ui/index.ts';

/** A number that was typed, with a point or a comma, within bounds; null where it is none, or could be either of two. */
export function typedNumber(text: string, least: number, most: number, isWhole = false): number | null {
	const number = readNumber(text, least, most, isWhole);
	return typeof number === 'string' ? null : number;
}
