import { whyWords } from '#words/bench/index.ts';
import type { Reason } from '../../../sim/rig/index.ts';

const cuts: Readonly<Record<string, string>> = whyWords.cuts;

/** What a link does, in a word or two beside its mark: 'goes on', 'stops here', 'data stops here'. */
export function effectText({ id, effect }: Pick<Reason, 'id' | 'effect'>): string {
	if (effect !== 'cuts') return whyWords.effects[effect];
	return cuts[id] ?? cuts[id.slice(0, id.indexOf('.'))] ?? whyWords.effects.stops;
}
