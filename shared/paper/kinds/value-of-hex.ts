import { hexOf } from '../../dmx/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { asTens, hexValue, lamp, nibbles } from '../levels.ts';
import type { Kind } from '../types.ts';

/** A hexadecimal level as a value. Easy: one digit counts; middle: no letters; hard: with a letter. */
export const valueOfHex: Kind = {
	id: 'value-of-hex',
	topic: KIND_TOPICS['value-of-hex'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make(ground, chance, level) {
		const value = hexValue(chance, level);
		const { high, low } = nibbles(value);
		return numberOf(
			{ facts: { value, hex: hexOf(value), high, low, sixteens: high * 16 }, bench: lamp(ground, value) },
			{ unit: 'value' },
			[value],
			[
				['hex-read-as-decimal', asTens(value)],
				['digits-swapped', low * 16 + high],
				['off-by-one-low', value - 1],
				['off-by-one-high', value + 1],
			],
		);
	},
};
