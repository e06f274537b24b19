import { hexOf } from '../../dmx/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { hexValue, lamp, nibbles } from '../levels.ts';
import type { Kind } from '../types.ts';

/** A value in hexadecimal, typed. Easy: one digit counts; middle: no letters; hard: with a letter. */
export const hexOfValue: Kind = {
	id: 'hex-of-value',
	topic: KIND_TOPICS['hex-of-value'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make(ground, chance, level) {
		const value = hexValue(chance, level);
		const { high, low } = nibbles(value);
		return numberOf(
			{
				facts: {
					value,
					hex: hexOf(value),
					high,
					low,
					sixteens: high * 16,
					highDigit: digit(high),
					lowDigit: digit(low),
				},
				bench: lamp(ground, value),
			},
			{ unit: 'value', base: 16 },
			[value],
			[
				['decimal-read-as-hex', Number.parseInt(String(value), 16)],
				['digits-swapped', low * 16 + high],
				['off-by-one-low', value - 1],
				['off-by-one-high', value + 1],
			],
		);
	},
};

const digit = (nibble: number): string => hexOf(nibble).slice(1);
