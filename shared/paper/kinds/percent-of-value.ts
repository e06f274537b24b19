import { percentOf, TOP_LEVEL } from '../../dmx/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { lamp, roundValue } from '../levels.ts';
import type { Kind } from '../types.ts';

/** What percent is this value? Both ways of rounding are right. Easy: fifths and halves; middle: tenths; hard: any. */
export const percentOfValue: Kind = {
	id: 'percent-of-value',
	topic: KIND_TOPICS['percent-of-value'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make(ground, chance, level) {
		const value = roundValue(chance, level);
		const percent = percentOf(value);
		const dropped = percentOf(value, 'truncate');
		const hundredths = Math.floor((value * 10000) / TOP_LEVEL) / 100;
		return numberOf(
			{
				facts: { value, percent, dropped, same: dropped === percent, hundredths },
				bench: lamp(ground, value),
			},
			{ unit: 'percent' },
			[percent, dropped],
			[
				['value-for-percent', value],
				['out-of-256', Math.floor((value * 100) / 256)],
				['digits-swapped', swapped(percent)],
				['off-by-one-high', percent + 1],
				['off-by-one-low', dropped - 1],
			],
		);
	},
};

/** 83 is 38; a single digit has none to swap and is itself. */
const swapped = (n: number): number => (n < 10 || n > 99 ? n : (n % 10) * 10 + Math.floor(n / 10));
