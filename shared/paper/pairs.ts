import { joinWord, splitWord } from '../dmx/index.ts';
import type { Slot } from '../profile/index.ts';
import type { RigSheet } from '../sheet/index.ts';
import { benchWith } from './bench.ts';
import type { ModeAt } from './chart.ts';
import type { Level } from './ids.ts';
import type { Chance, Ground } from './types.ts';

/** A slot of two halves, and where it is. */
export interface PairAt extends ModeAt {
	readonly slot: Slot;
}

/** Every slot of two halves. */
export const pairsOf = ({ profiles }: Ground): PairAt[] =>
	profiles.flatMap((profile) =>
		profile.modes.flatMap((mode) =>
			mode.slots.flatMap((slot) => (slot.fine === undefined ? [] : [{ profile, mode, slot }])),
		),
	);

/** Highest coarse and fine of each level. */
const HALVES: Readonly<Record<Level, number>> = { easy: 9, middle: 99, hard: 255 };

/** A 16-bit value whose halves differ and are never 0, so that no mistake about them comes out right. */
export function wordFor(chance: Chance, level: Level): number {
	const coarse = chance.int(1, HALVES[level]);
	const fine = chance.int(1, HALVES[level] - 1);
	return joinWord(coarse, fine < coarse ? fine : fine + 1);
}

/** A bench with the fixture at that value. */
export function pairBench({ profile, mode, slot }: PairAt, word: number): RigSheet | null {
	const { coarse, fine } = splitWord(word);
	return benchWith({ profile, mode, address: 1, levels: { [slot.at]: coarse, [slot.fine ?? slot.at]: fine } });
}
