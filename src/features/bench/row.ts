import { rowWords } from '#words/bench/index.ts';
import type { Rig, Sight } from '../../../sim/rig/index.ts';
import { askedText, describeLight } from '../../wording/index.ts';

/** Characters that a card in the row has room for. */
const ROOM = 64;

/** A light in words short enough for a card: where its cells make a long tale, all of them as one, and that they differ. */
export function briefLight(rig: Rig, fixture: string, light: Sight['light']): string {
	const seen = describeLight(light);
	const text = seen.length <= ROOM ? seen : rowWords.differ(describeLight({ ...light, cells: [light.whole] }));
	return [text, ...askedText(rig, fixture, light)].join(', ');
}
