import type { QuestionSays } from './says.ts';

/** Questions about addresses, by kind. */
export const addressQuestions = {
	'desk-slot': {
		name: 'A channel on the desk',
		ask: [
			{
				when: { part: 'coarse' },
				says: '{fixture}[ (“{crew}”)] is in mode “{mode}” with start address {start}[ in universe {otherUniverse}]. Which channel of the desk is its “{name}”, coarse?',
			},
			{
				when: { part: 'fine' },
				says: '{fixture}[ (“{crew}”)] is in mode “{mode}” with start address {start}[ in universe {otherUniverse}]. Which channel of the desk is its “{name}”, fine?',
			},
			{
				says: '{fixture}[ (“{crew}”)] is in mode “{mode}” with start address {start}[ in universe {otherUniverse}]. Which channel of the desk is its “{name}”?',
			},
		],
		chart: [
			{ when: { counted: true }, says: 'The channels of that mode, in order:' },
			{ says: 'The channels of that mode, counted in the fixture:' },
		],
		working: [
			[
				{
					when: { counted: true },
					says: 'In the fixture it’s channel {n}, a pair of coarse and fine counting as two.',
				},
				{ says: 'In the fixture it’s channel {n}.' },
			],
			'{before} {before?channel stands|channels stand} before it, so on the desk it is {start} + {before} = {right}.',
		],
		why: 'The start address itself is the fixture’s first channel, so only the channels before are added.',
	},
	'last-slot': {
		name: 'The last channel taken',
		ask: [
			{
				when: { count: 1 },
				says: '{fixture} in mode “{mode}” takes {each} {each?channel|channels}. Its start address is {start}. What is the last channel it takes?',
			},
			{
				says: '{count} × {fixture} in mode “{mode}” take {each} {each?channel|channels} each. They stand back to back, and the first starts at {start}. What is the last channel that the last one takes?',
			},
		],
		working: [
			[{ when: { count: 1 }, says: '' }, { says: '{count} × {each} = {footprint} channels in all.' }],
			'{start} + {footprint} = {after} is the first channel after it.',
			'Minus one gives the last one taken: {last}.',
		],
		why: 'The start address is the first of the channels, so the last is the start and the footprint, minus one.',
	},
	'next-free': {
		name: 'The next free address',
		ask: 'These stand on universe {universe}. What is the lowest start address at which {fixture} in mode “{mode}” fits, with {footprint} {footprint?channel|channels}, and shares none with them?',
		chart: 'On the line already:',
		working: [
			[
				{ when: { beforeName: null }, says: 'The first {footprint} {footprint?channel is|channels are} free.' },
				{ says: '“{beforeName}” starts at {beforeStart} and ends at {beforeLast}.' },
			],
			[
				{
					when: { gap: true },
					says: 'Any gap before that is too narrow for {footprint} {footprint?channel|channels}.',
				},
				{ says: '' },
			],
			'From {right} to {end} every channel is free, so it goes to {right}.',
		],
		why: 'A fixture needs its whole footprint free, and the first channel after a fixture is the last one it takes and one more.',
	},
	'nth-address': {
		name: 'The address of one in a row',
		ask: '{fixture} in mode “{mode}” takes {footprint} {footprint?channel|channels}. A row of them stands back to back, and the first starts at {first}. What is the start address of number {n}?',
		working: [
			'{before} {before?fixture stands|fixtures stand} before it, and {before?takes|take} {before} × {footprint} = {slots} channels.',
			'{first} + {slots} = {right}.',
		],
		why: 'Only the fixtures before it push a fixture along, so number {n} is pushed {before} times.',
	},
	overlaps: {
		name: 'Which share channels',
		ask: [
			{
				when: { others: true },
				says: 'Which of these fixtures share a channel with another? Mind the universes.',
			},
			{ says: 'All of these stand on one universe. Which of them share a channel with another?' },
		],
		working: [
			'Each takes the channels from its start address to the start and the footprint, minus one.',
			'{pairs as sharings}',
		],
		why: 'Two fixtures that share a channel both answer it, and where the first ends one below the next, nothing is shared.',
		labels: {
			'placed-from': [
				{
					when: { others: true },
					says: '{name}: universe {universe}, from {start}, {footprint} {footprint?channel|channels}',
				},
				{ says: '{name}: from {start}, {footprint} {footprint?channel|channels}' },
			],
		},
	},
	'runs-past': {
		name: 'Past the end or not',
		ask: '{fixture} in mode “{mode}” takes {footprint} channels, and its start address is {start} in universe 1. Does all of it fit before the end?',
		working: [
			'Its last channel would be {start} + {footprint} − 1 = {last}.',
			[
				{ when: { fits: true }, says: 'A universe ends at 512, so all of it fits.' },
				{ says: 'A universe ends at 512, so {last} − 512 = {past} {past?channel lies|channels lie} past it.' },
			],
		],
		why: 'What lies past 512 is never sent, and it doesn’t go on in the next universe.',
		labels: {
			'runs-fits': 'All of it fits: its last channel is {last}.',
			'runs-past': '{past} {past?channel lies|channels lie} past the end and {past?gets|get} nothing.',
			'runs-on': '{past} {past?channel goes|channels go} on in universe {next}, from channel 1.',
		},
	},
	'how-many-fit': {
		name: 'How many fit',
		ask: [
			{
				when: { start: 1 },
				says: '{fixture} in mode “{mode}” takes {footprint} {footprint?channel|channels}. How many fit into one universe, back to back from channel 1?',
			},
			{
				when: { others: 0 },
				says: '{fixture} in mode “{mode}” takes {footprint} {footprint?channel|channels}. How many fit into one universe, back to back from channel {start}?',
			},
			{
				says: '{others} × {othersFixture} in mode “{othersMode}”, with {othersEach} {othersEach?channel|channels} each, stand back to back from channel 1. How many {fixture} in mode “{mode}”, with {footprint} {footprint?channel|channels}, fit after them in the same universe?',
			},
		],
		working: [
			[
				{ when: { others: 0 }, says: '' },
				{ says: '{others} × {othersEach} channels are taken, so channel {start} is the first free one.' },
			],
			'From {start} to 512 there {room?is|are} {room} {room?channel|channels}.',
			[
				{ when: { left: 0 }, says: '{right} × {footprint} = {used}, which leaves nothing over.' },
				{ says: '{right} × {footprint} = {used}, and the {left} left over {left?is|are} too few for one more.' },
			],
		],
		why: 'A fixture is never split over two universes, so what’s left over stays empty.',
	},
} as const satisfies Record<string, QuestionSays>;
