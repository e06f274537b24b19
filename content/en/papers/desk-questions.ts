import type { QuestionSays } from './says.ts';

/** Questions about what a channel does as the desk shows it, by kind. */
export const deskQuestions = {
	'band-of-percent': {
		name: 'What a percent does',
		ask: 'The desk has channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, at {percent} %. What does it do?',
		chart: 'The chart of that channel, in values from 0 to 255:',
		working: [
			'{percent} % of 255 is about {value}.',
			[
				{
					when: { byStarts: true },
					says: 'A band runs to one below where the next one starts, so {value} is in the one from {from} to {to}.',
				},
				{ says: '{value} is in the band from {from} to {to}.' },
			],
			'That band is “{name}”.',
		],
		why: 'A chart is in values from 0 to 255, and a desk often shows percent, so turn one into the other first.',
	},
	'percent-in-band': {
		name: 'A percent for a band',
		ask: 'The desk takes percent. Which whole percent puts channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, in “{name}”, whichever way the desk rounds?',
		chart: 'The chart of that channel, in values from 0 to 255:',
		working: [
			'“{name}” runs from {from} to {to}.',
			'A value × 100 / 255 is its percent.',
			[
				{ when: { single: true }, says: 'Only {least} % is in it for sure.' },
				{ says: 'Any whole percent from {least} to {most} is in it for sure.' },
			],
		],
		why: 'Aim for the middle of a band: at its edge, rounding can put you in the next one.',
	},
	'park-value': {
		name: 'Where to park a channel',
		ask: 'Nobody uses channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, tonight. At which value do you park it so that it leaves the light alone?',
		chart: 'The chart of that channel:',
		working: [
			'Look for the band that leaves the light to the other channels: {names as quotedList}.',
			'That is {stretches as stretches}, so {middle} will do.',
		],
		why: 'Zero is a value like any other: the chart says what it does, and where doing nothing is.',
	},
	'fader-passes': {
		name: 'What a fader passes through',
		ask: [
			{
				when: { inPercent: true },
				says: 'Channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, is pushed up slowly from {fromPercent} % to {toPercent} %. What does it pass through on its way?',
			},
			{
				says: 'Channel {n} (“{slot}”) of {fixture}, in mode “{mode}”, is pushed up slowly from value {from} to value {to}. What does it pass through on its way?',
			},
		],
		chart: 'The chart of that channel, in values from 0 to 255:',
		working: [
			[
				{ when: { inPercent: true }, says: '{fromPercent} % is about {from}, and {toPercent} % about {to}.' },
				{ says: '' },
			],
			'It starts in “{start}” and stops in “{end}”.',
			'In between it passes: {met as inTurn}.',
		],
		why: 'A fader goes through every band on its way, and the audience sees each of them. Where that matters, bring the dimmer down first, or set the new value in one step.',
	},
	'gap-values': {
		name: 'Values with no function',
		ask: 'This is a maker’s chart of a channel called “{slot}”. For which of these values does it give no function?',
		chart: 'The chart of that channel:',
		working: [
			[
				{
					when: { hasGap: true, hasBand: true },
					says: 'One line says no function, and some values are on no line at all.',
				},
				{ when: { hasGap: true }, says: 'Some values are on no line at all.' },
				{ says: 'One line says no function.' },
			],
			'No function is given for {stretches as stretches}.',
		],
		why: 'A line that says no function is a place to park. What a light does where the chart says nothing is anyone’s guess, so keep out of gaps.',
	},
	'patch-against-panel': {
		name: 'Patch sheet and panel',
		ask: [
			{
				when: { panel: 'dip', wiring: 'sum' },
				says: 'Which of these aren’t set as the patch sheet says? The switches of {fixture} add up: 1 for switch 1, then twice as much each time.',
			},
			{
				when: { panel: 'dip' },
				says: 'Which of these aren’t set as the patch sheet says? The switches of {fixture} add up (1 for switch 1, then twice as much each time), and it adds one.',
			},
			{ says: 'You walk along a row of {fixture} with the patch sheet. Which of these aren’t set as it says?' },
		],
		chart: 'What the panel calls each mode, then each fixture, the sheet first:',
		working: ['Read address and mode of each, and compare both.', '{settings as settingsFound}'],
		why: 'Right address in the wrong mode is still wrong: the channels do other things, and the next light may overlap.',
	},
} as const satisfies Record<string, QuestionSays>;
