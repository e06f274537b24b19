import type { QuestionSays } from './says.ts';

/** The kinds that are arithmetic on profiles and sheets, by id. */
export const questions = {
	'value-function': {
		name: 'What a value does',
		ask: 'Slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, stands at value {value}. What does it do?',
		chart: 'The chart of that slot:',
		working: ['{value} lies in the band from {from} to {to}.', 'That band is “{name}”.'],
		why: 'A slot with bands does one thing from the first value of a band to its last, both included.',
	},
	'percent-of-value': {
		name: 'A value in percent',
		ask: 'The desk holds a slot at value {value}. What percent is that?',
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
	'match-slots': {
		name: 'Slots of the desk to what they do',
		ask: '{fixture} is in mode “{mode}” with start address {start}. What does each of these slots of the desk do?',
		chart: 'The slots of that mode, counted in the fixture:',
		working: [
			'The fixture’s slot 1 is slot {start} of the desk.',
			[
				{ when: { start: 1 }, says: 'So both count alike.' },
				{ says: 'Take {less} from a slot of the desk, and its number in the fixture is left.' },
			],
		],
		why: 'The start address is where a fixture’s first slot stands, and the others follow one by one.',
	},
	'last-slot': {
		name: 'The last slot taken',
		ask: [
			{
				when: { count: 1 },
				says: '{fixture} in mode “{mode}” takes {each} {each?slot|slots}. Its start address is {start}. What is the last slot it takes?',
			},
			{
				says: '{count} × {fixture} in mode “{mode}” take {each} {each?slot|slots} each. They stand back to back, and the first starts at {start}. What is the last slot that the last one takes?',
			},
		],
		working: [
			[{ when: { count: 1 }, says: '' }, { says: '{count} × {each} = {footprint} slots in all.' }],
			'{start} + {footprint} = {after} is the first slot behind.',
			'One less is the last one taken: {last}.',
		],
		why: 'The start address is the first of the slots, so the last is the start and the footprint, less one.',
	},
	'nth-address': {
		name: 'The address of one in a row',
		ask: '{fixture} in mode “{mode}” takes {footprint} {footprint?slot|slots}. A row of them stands back to back, and the first starts at {first}. What is the start address of number {n}?',
		working: [
			'{before} {before?fixture stands|fixtures stand} before it, and {before?takes|take} {before} × {footprint} = {slots} slots.',
			'{first} + {slots} = {right}.',
		],
		why: 'Only the fixtures before it push a fixture along, so number {n} is pushed {before} times.',
	},
	'address-to-dip': {
		name: 'Switches for an address',
		ask: [
			{
				when: { wiring: 'sum' },
				says: '{fixture} adds up what its switches are worth: 1 for switch 1, then twice as much each time, 256 for switch 9. Set them to start address {address}.',
			},
			{
				says: '{fixture} adds up what its switches are worth (1 for switch 1, then twice as much each time, 256 for switch 9) and adds one. Set them to start address {address}.',
			},
		],
		working: [
			[
				{ when: { wiring: 'sum' }, says: '' },
				{ says: 'It adds one by itself, so the switches have to come to {address} − 1 = {sum}.' },
			],
			[
				{ when: { single: true }, says: '{sum} is worth one switch by itself.' },
				{ says: 'Taking the largest that fits each time, {sum} = {weights as sum}.' },
			],
			'That is {up?switch|switches} {up as every} up.',
		],
		why: 'Each switch is worth twice the one before, so every sum is made in one way only.',
	},
} as const satisfies Record<string, QuestionSays>;
