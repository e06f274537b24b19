import { type CoarseFine, joinWord, splitWord, TOP_LEVEL } from '../../dmx/index.ts';
import { oneOf, say, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { pairBench, pairsOf, wordFor } from '../pairs.ts';
import type { Kind, Say } from '../types.ts';

const pair = ({ coarse, fine }: CoarseFine): Say => say('pair', { coarse, fine });
const isLevel = (n: number): boolean => n >= 0 && n <= TOP_LEVEL;

/** A 16-bit value as coarse and fine. Easy: both below ten; middle: below a hundred; hard: any. */
export const coarseFine: Kind = {
	id: 'coarse-fine',
	topic: KIND_TOPICS['coarse-fine'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => pairsOf(ground).length > 0,
	make(ground, chance, level) {
		const at = chance.pick(pairsOf(ground));
		const word = wordFor(chance, level);
		const { coarse, fine } = splitWord(word);
		const by255 = { coarse: Math.floor(word / TOP_LEVEL), fine: word % TOP_LEVEL };
		const wrongs: Wrong<Say>[] = [
			['coarse-and-fine-swapped', pair({ coarse: fine, fine: coarse })],
			...(isLevel(by255.coarse) && joinWord(by255.coarse, by255.fine) !== word
				? [['out-of-256', pair(by255)] as const]
				: []),
			['fine-ignored', pair({ coarse, fine: 0 })],
			...(isLevel(coarse + 1) ? [['off-by-one-high', pair({ coarse: coarse + 1, fine })] as const] : []),
			...(isLevel(coarse - 1) ? [['off-by-one-low', pair({ coarse: coarse - 1, fine })] as const] : []),
		];
		return oneOf(
			chance,
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
			pair({ coarse, fine }),
			wrongs,
		);
	},
};
