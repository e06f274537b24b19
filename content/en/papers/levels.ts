import type { QuestionSays } from './says.ts';

/** Questions about levels, percent, hexadecimal and pairs, by kind. */
export const levelQuestions = {
	'percent-of-value': {
		name: 'A value in percent',
		ask: 'The desk holds a channel at value {value}. What percent is that?',
		working: [
			'Full is 255, so {value} is {value} × 100 / 255 = {hundredths} %.',
			[
				{ when: { same: true }, says: 'As a whole percent that is {percent} %.' },
				{
					says: 'To the nearest whole that is {percent} %, and a desk that drops the rest shows {dropped} %. Both are right.',
				},
			],
		],
		why: 'A percent is a share of 255, since 0 counts as a value too and 255 is the highest.',
	},
	'value-of-percent': {
		name: 'A percent as a value',
		ask: 'A channel is to be at {percent} %. Which value is that?',
		working: [
			'Full is 255, so {percent} % of it is {percent} × 255 / 100 = {exact}.',
			[
				{ when: { percent: 0 }, says: 'That is 0.' },
				{
					says: 'To the nearest whole that is {value}. Desks round one way or the other, so any value from {low} to {high} is right.',
				},
			],
		],
		why: 'A percent is a share of 255, since 0 counts as a value too and 255 is the highest.',
	},
	'hex-of-value': {
		name: 'A value in hexadecimal',
		ask: 'Write the value {value} in hexadecimal, as two digits.',
		working: [
			[
				{ when: { high: 0 }, says: '{value} is below 16, so there are no sixteens in it, and {low} is left.' },
				{ when: { low: 0 }, says: '{high} × 16 = {value}, and nothing is left.' },
				{ says: '{high} × 16 = {sixteens} is the most sixteens in {value}, and {value} − {sixteens} = {low} is left.' },
			],
			'As digits from 0 to F those are {highDigit} and {lowDigit}, so it’s x{hex}.',
		],
		why: 'Hexadecimal counts in sixteens: the first digit says how many sixteens, the second what’s left.',
	},
	'value-of-hex': {
		name: 'Hexadecimal as a value',
		ask: 'A level reads x{hex} in hexadecimal. Which value is that, from 0 to 255?',
		working: [
			'The first digit is {high}, so {high} × 16 = {sixteens}.',
			'The second is {low}, and {sixteens} + {low} = {value}.',
		],
		why: 'Hexadecimal counts in sixteens: the first digit says how many sixteens, the second what’s left.',
	},
	'coarse-fine': {
		name: 'Coarse and fine',
		ask: '“{slot}” of {fixture}, in mode “{mode}”, is a 16-bit pair. It’s to be at {word} of 65535. What are coarse and fine at?',
		working: [
			'{word} / 256 is {coarse} and something left over, so coarse is {coarse}.',
			'{coarse} × 256 = {whole}, and {word} − {whole} = {fine}, so fine is {fine}.',
		],
		why: 'One step of coarse is worth 256 steps of fine, since fine has 256 values from 0 to 255.',
	},
	'value-of-pair': {
		name: 'A pair as one value',
		ask: '“{slot}” of {fixture}, in mode “{mode}”, is a 16-bit pair. Coarse is at {coarse} and fine at {fine}. Which value from 0 to 65535 is that?',
		working: ['{coarse} × 256 = {whole}.', '{whole} + {fine} = {word}.'],
		why: 'One step of coarse is worth 256 steps of fine, since fine has 256 values from 0 to 255.',
	},
} as const satisfies Record<string, QuestionSays>;
