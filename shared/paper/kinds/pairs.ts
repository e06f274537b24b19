import { type CoarseFine, joinWord, splitWord, TOP_LEVEL } from '../../dmx/index.ts';
import type { Slot } from '../../profile/index.ts';
import type { RigSheet } from '../../sheet/index.ts';
import { benchWith } from '../bench.ts';
import type { ModeAt } from '../chart.ts';
import { numberOf, oneOf, say, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import type { Chance, QuestionGround, QuestionKind, Say } from '../types.ts';

const pair = ({ coarse, fine }: CoarseFine): Say => say('pair', { coarse, fine });
const isLevel = (n: number): boolean => n >= 0 && n <= TOP_LEVEL;

/** A 16-bit value as coarse and fine. Easy: both below ten; middle: below a hundred; hard: any. */
export const coarseFine: QuestionKind = {
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
		const wrongs: WrongAnswer<Say>[] = [
			['coarse-and-fine-swapped', pair({ coarse: fine, fine: coarse })],
			...(isLevel(by255.coarse) && joinWord(by255.coarse, by255.fine) !== word
				? [['out-of-256', pair(by255)] as const]
				: []),
			['fine-ignored', pair({ coarse, fine: 0 })],
			...(isLevel(coarse + 1) ? [['off-by-one-high', pair({ coarse: coarse + 1, fine })] as const] : []),
			...(isLevel(coarse - 1) ? [['off-by-one-low', pair({ coarse: coarse - 1, fine })] as const] : []),
			...(ground.version === 1 ? [] : bothWrong(word)),
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
			ground,
		);
	},
};

/** Both halves wrong, or the other one: so that the right pair is not the one that all the others are a slip from. */
function bothWrong(word: number): WrongAnswer<Say>[] {
	const { coarse, fine } = splitWord(word);
	const by255 = { coarse: Math.floor(word / TOP_LEVEL), fine: word % TOP_LEVEL };
	const all: WrongAnswer<CoarseFine>[] = [
		['out-of-256', { coarse, fine: by255.fine }],
		['out-of-256', { coarse: coarse + 1, fine: by255.fine }],
		['out-of-256', { coarse: coarse - 1, fine: by255.fine }],
		['out-of-256', { coarse: by255.coarse, fine }],
		['coarse-and-fine-swapped', { coarse: fine, fine: by255.fine }],
		['fine-ignored', { coarse: coarse - 1, fine: 0 }],
	];
	return all.flatMap(([mistake, at]) =>
		isLevel(at.coarse) && isLevel(at.fine) && joinWord(at.coarse, at.fine) !== word ? [[mistake, pair(at)]] : [],
	);
}

/** Coarse and fine as one 16-bit value. Easy: both below ten; middle: below a hundred; hard: any. */
export const valueOfPair: QuestionKind = {
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

/** A slot of two halves, and where it is. */
export interface PairAt extends ModeAt {
	readonly slot: Slot;
}

/** Every slot of two halves. */
const pairsOf = ({ profiles }: QuestionGround): PairAt[] =>
	profiles.flatMap((profile) =>
		profile.modes.flatMap((mode) =>
			mode.slots.flatMap((slot) => (slot.fine === undefined ? [] : [{ profile, mode, slot }])),
		),
	);

/** Highest coarse and fine of each level. */
const HALVES: Readonly<Record<PaperLevel, number>> = { easy: 9, middle: 99, hard: 255 };

/** A 16-bit value whose halves differ and are never 0, so that no mistake about them comes out right. */
function wordFor(chance: Chance, level: PaperLevel): number {
	const coarse = chance.int(1, HALVES[level]);
	const fine = chance.int(1, HALVES[level] - 1);
	return joinWord(coarse, fine < coarse ? fine : fine + 1);
}

/** A bench with the fixture at that value. */
function pairBench({ profile, mode, slot }: PairAt, word: number): RigSheet | null {
	const { coarse, fine } = splitWord(word);
	return benchWith({ profile, mode, address: 1, levels: { [slot.at]: coarse, [slot.fine ?? slot.at]: fine } });
}
