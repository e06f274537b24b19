import { levelOfPercent, levelsShownAs, TOP_LEVEL } from '../../dmx/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { lamp, roundPercent } from '../levels.ts';
import type { Kind } from '../types.ts';

/** Which value is this percent? Every value that a desk shows as it is right. Easy: fifths and halves; middle: by fives; hard: any. */
export const valueOfPercent: Kind = {
	id: 'value-of-percent',
	topic: KIND_TOPICS['value-of-percent'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make(ground, chance, level) {
		const percent = roundPercent(chance, level);
		const value = levelOfPercent(percent);
		const rights = [
			value,
			levelOfPercent(percent, 'truncate'),
			...levelsShownAs(percent),
			...levelsShownAs(percent, 'truncate'),
		];
		return numberOf(
			{
				facts: {
					percent,
					value,
					exact: Math.round(percent * TOP_LEVEL) / 100,
					low: Math.min(...rights),
					high: Math.max(...rights),
				},
				bench: lamp(ground, value),
			},
			{ unit: 'value' },
			rights,
			[
				['percent-for-value', percent],
				['out-of-256', Math.round((percent * 256) / 100)],
				['digits-swapped', percent > 9 && percent < 100 ? (percent % 10) * 10 + Math.floor(percent / 10) : -1],
				['value-for-percent', Math.round((percent * 100) / TOP_LEVEL)],
				['off-by-one-low', Math.min(...rights) - 1],
				['off-by-one-high', Math.max(...rights) + 1],
			],
		);
	},
};
