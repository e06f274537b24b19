import { rowWords } from '../../content/bench/index.ts';
import type { Sight } from '../../sim/rig/index.ts';
import { describeLight } from '../words/index.ts';

/** Characters that a card in the row has room for. */
const ROOM = 64;

/** A light in words short enough for a card: where its cells make a long tale, all of them as one, and that they differ. */
export function briefLight(light: Sight['light']): string {
	const text = describeLight(light);
	return text.length <= ROOM ? text : rowWords.differ(describeLight({ ...light, cells: [light.whole] }));
}
