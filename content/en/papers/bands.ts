import type { QuestionSays } from './says.ts';

/** Questions about bands of values, by kind. */
export const bandQuestions = {
	'value-function': {
		name: 'What a value does',
		ask: 'Channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, is at {value}. What does it do?',
		chart: 'The chart of that channel:',
		working: [
			[
				{
					when: { byStarts: true },
					says: 'A band runs to one below where the next one starts, so {value} lies in the one from {from} to {to}.',
				},
				{ says: '{value} lies in the band from {from} to {to}.' },
			],
			'That band is “{name}”.',
		],
		why: 'A channel with bands does one thing from the first value of a band to its last, both included.',
	},
	'function-values': {
		name: 'Values that do it',
		ask: [
			{
				when: { form: 'one' },
				says: 'Which values of channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, give “{name}”: all of them, and no others?',
			},
			{ says: 'Which of these values of channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, give “{name}”?' },
		],
		chart: 'The chart of that channel:',
		working: [
			[
				{
					when: { form: 'one', last: true },
					says: '“{name}” starts at {from}, and nothing comes after it, so it runs to the top, 255.',
				},
				{
					when: { form: 'one' },
					says: '“{name}” starts at {from}. The next band starts at {next}, so it ends one below, at {to}.',
				},
				{
					when: { byStarts: true },
					says: 'A band runs to one below where the next one starts, so “{name}” runs over {stretches as stretches}.',
				},
				{ says: '“{name}” runs over {stretches as stretches}.' },
			],
			[
				{ when: { form: 'one' }, says: '' },
				{ says: 'A value within that gives it, the first and the last value too.' },
			],
		],
		why: 'A band holds every value from its first to its last, and the next one starts right after it.',
	},
	'band-edge': {
		name: 'The edge of a band',
		ask: [
			{
				when: { edge: 'lowest' },
				says: 'What is the lowest value of channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, that gives “{name}”?',
			},
			{
				says: 'What is the highest value of channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, that gives “{name}”?',
			},
		],
		chart: [
			{ when: { hex: true }, says: 'The chart of that channel, in hexadecimal:' },
			{ says: 'The chart of that channel:' },
		],
		working: [
			[
				{ when: { read: true }, says: 'The chart has it: {right}.' },
				{ when: { given: null, edge: 'lowest' }, says: '“{name}” is the first band, and the first value is 0.' },
				{ when: { given: null }, says: '“{name}” is the last band, and the highest value is 255.' },
				{
					when: { edge: 'lowest', hex: true },
					says: '“{beside}”, the band before, ends at x{given as hex}, which is {given}.',
				},
				{ when: { edge: 'lowest' }, says: '“{beside}”, the band before, ends at {given}.' },
				{ when: { hex: true }, says: '“{beside}”, the band after it, starts at x{given as hex}, which is {given}.' },
				{ says: '“{beside}”, the band after it, starts at {given}.' },
			],
			[
				{ when: { read: true }, says: '' },
				{ when: { given: null }, says: '' },
				{ when: { edge: 'lowest' }, says: 'One more is the first value of “{name}”: {right}.' },
				{ says: 'One less is the last value of “{name}”: {right}.' },
			],
		],
		why: 'Bands lie edge to edge, so each starts one above where the one before ends.',
	},
	'band-middle': {
		name: 'The middle of a band',
		ask: 'What is the middle value of the band “{name}” of channel {n} (“{slot}”) of {fixture}, in mode “{mode}”? Of two middles, either is right.',
		chart: 'The chart of that channel:',
		working: [
			[
				{ when: { before: null }, says: '“{name}” runs from {from} to {to}.' },
				{ says: 'The band before ends at {before}, so “{name}” runs from {from} to {to}.' },
			],
			'{from} + {to} = {sum}, and half of that is {half}.',
			[{ when: { two: true }, says: 'Two values are in the middle: {lower} and {upper}.' }, { says: '' }],
		],
		why: 'The middle is the safest value to type: it stays in the band whichever way a desk rounds.',
	},
	'bands-in-order': {
		name: 'Bands in order',
		ask: [
			{
				when: { written: 'value' },
				says: 'Channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, goes slowly up from 0. In what order does it come to these? Each stands with its last value.',
			},
			{
				when: { written: 'percent' },
				says: 'Channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, goes slowly up from 0. In what order does it come to these? Each stands with its last value, some of them in percent.',
			},
			{
				says: 'Channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, goes slowly up from 0. In what order does it come to these? Each stands with its last value, and an x says it’s hexadecimal.',
			},
		],
		working: [
			[
				{ when: { written: 'value' }, says: 'They end at {tops as every}.' },
				{ says: 'As values from 0 to 255 they end at {tops as every}.' },
			],
			'So the order is: {names as inTurn}.',
		],
		why: [
			{
				when: { written: 'value' },
				says: 'Bands lie edge to edge from 0 to 255, so their last values rise as they follow each other.',
			},
			{ says: 'Two numbers can be compared once both are values: a percent and a hexadecimal number are none yet.' },
		],
	},
} as const satisfies Record<string, QuestionSays>;
