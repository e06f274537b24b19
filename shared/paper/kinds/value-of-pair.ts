import { joinWord, splitWord, TOP_LEVEL } from '../../dmx/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { pairBench, pairsOf, wordFor } from '../pairs.ts';
import type { Kind } from '../types.ts';

/** Coarse and fine as one 16-bit value. Easy: both below ten; middle: below a hundred; hard: any. */
export const valueOfPair: Kind = {
	id: 'value-of-pair',
	topic: KIND_TOPICS['value-of-pair'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => pairsOf(ground).length > 0,
	make(ground, chance, level) {
		const at = chance.pick(pairsOf(ground));
		const word = wordFor(chance, level);
		const { coarse, fine } = splitWord(word);
		return numberOf(
			{
				facts: {
					fixture: at.profile.name,
					mode: at.mode.name,
					slot: at.slot.name,
					word,
					coarse,
					fine,
					whole: coarse * 256,
				},
				bench: pairBench(at, word),
			},
			{ unit: 'word' },
			[word],
			[
				['coarse-and-fine-swapped', joinWord(fine, coarse)],
				['fine-ignored', coarse * 256],
				['out-of-256', coarse * TOP_LEVEL + fine],
				['off-by-one-low', word - 1],
				['off-by-one-high', word + 1],
			],
		);
	},
};
