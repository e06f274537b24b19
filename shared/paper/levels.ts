import { levelOfPercent, TOP_LEVEL } from '../dmx/index.ts';
import type { Mode, Profile, Slot } from '../profile/index.ts';
import type { RigSheet } from '../sheet/index.ts';
import { benchWith } from './bench.ts';
import type { PaperLevel } from './ids.ts';
import type { Chance, QuestionGround } from './types.ts';

/** Whole percents in their steps: fifths and the half, tenths, and every one between out and full. */
const EASY_PERCENTS = [0, 20, 40, 50, 60, 80, 100];
const MIDDLE_PERCENTS = [5, 10, 15, 25, 30, 35, 45, 55, 65, 70, 75, 85, 90, 95];

/** A whole percent (0 to 100): a round one, one by fives, or any. */
export function roundPercent(chance: Chance, level: PaperLevel): number {
	if (level === 'hard') return chance.int(1, 99);
	return chance.pick(level === 'easy' ? EASY_PERCENTS : MIDDLE_PERCENTS);
}

/** A value (0 to 255): of a round percent, of one by fives, or any. */
export function roundValue(chance: Chance, level: PaperLevel): number {
	return level === 'hard' ? chance.int(1, TOP_LEVEL - 1) : levelOfPercent(roundPercent(chance, level));
}

/** A bench whose first fixture has its first slot that dims at a level; null where no slot dims. */
export function lamp({ profiles }: QuestionGround, level: number): RigSheet | null {
	for (const profile of profiles) {
		for (const mode of profile.modes) {
			const slot = dimmer(profile, mode);
			if (slot) return benchWith({ profile, mode, address: 1, levels: halves(slot, level), alone: slot.at });
		}
	}
	return null;
}

const dimmer = ({ emitters }: Profile, { slots }: Mode): Slot | undefined =>
	slots.find(({ drives }) => drives.kind === 'intensity') ??
	slots.find(
		({ drives }) =>
			drives.kind === 'emitter' && emitters.some(({ id, ultraviolet }) => id === drives.emitter && !ultraviolet),
	);

/** An 8-bit level on a slot, both halves of a pair at it: level × 257 of 65535 is the same share. */
const halves = ({ at, fine }: Slot, level: number): Record<number, number> => ({
	[at]: level,
	...(fine === undefined ? {} : { [fine]: level }),
});

/** The two hexadecimal digits of a value, each 0 to 15. */
export const nibbles = (value: number): { high: number; low: number } => ({ high: value >> 4, low: value & 15 });

/** What a value's hexadecimal digits come to when they are taken for tens and ones: x33 is 33, xA5 is 105. */
export const asTens = (value: number): number => nibbles(value).high * 10 + nibbles(value).low;

/** A value (1 to 255) to be read or written in hexadecimal: easy has one digit that counts, middle no letters, hard a letter. */
export function hexValue(chance: Chance, level: PaperLevel): number {
	if (level === 'easy') return chance.chance(0.5) ? chance.int(10, 15) : chance.int(1, 15) * 16;
	if (level === 'middle') return chance.int(1, 9) * 16 + chance.int(1, 9);
	const letter = chance.int(10, 15);
	const other = chance.int(1, 15);
	return chance.chance(0.5) ? letter * 16 + other : other * 16 + letter;
}
