import { hexOf, levelOfPercent, levelsShownAs, percentOf, TOP_LEVEL } from '../../dmx/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { asTens, hexValue, lamp, nibbles, roundPercent, roundValue } from '../levels.ts';
import type { QuestionKind } from '../types.ts';

/** What percent is this value? Both ways of rounding are right. Easy: fifths and halves; middle: tenths; hard: any. */
export const percentOfValue: QuestionKind = {
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

/** Which value is this percent? Every value that a desk shows as it is right. Easy: fifths and halves; middle: by fives; hard: any. */
export const valueOfPercent: QuestionKind = {
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

/** A value in hexadecimal, typed. Easy: one digit counts; middle: no letters; hard: with a letter. */
export const hexOfValue: QuestionKind = {
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

/** A hexadecimal level as a value. Easy: one digit counts; middle: no letters; hard: with a letter. */
export const valueOfHex: QuestionKind = {
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
