import { highestStart, howManyFit } from '../dmx/index.ts';
import { footprintOf } from '../profile/index.ts';
import type { ModeAt } from './chart.ts';
import type { Level } from './ids.ts';
import type { Chance, Ground } from './types.ts';

/** A start address at which a footprint fits: round for easy (1, 101, 201 ...), else any from 2 on. */
export function startFor(chance: Chance, level: Level, footprint: number): number {
	const most = highestStart(footprint);
	if (level === 'easy') return chance.pick([1, 101, 201, 301, 401].filter((start) => start <= most));
	return most < 2 ? 1 : chance.int(2, most);
}

/** Modes of which at least three fixtures fit one universe: what a row is made of. */
export const modesThatRow = ({ profiles }: Ground): ModeAt[] =>
	profiles
		.flatMap((profile) => profile.modes.map((mode) => ({ profile, mode })))
		.filter(({ mode }) => howManyFit(footprintOf(mode)) >= 3);
