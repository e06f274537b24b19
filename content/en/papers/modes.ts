import type { QuestionSays } from './says.ts';

/** Questions about modes and their slots, and about address switches, by kind. */
export const modeQuestions = {
	'slot-does': {
		name: 'What a channel does',
		ask: '{fixture} is in mode “{mode}” with start address {start}. What does channel {slot} of the desk do to it?',
		chart: [
			{ when: { counted: true }, says: 'The channels of that mode, in order:' },
			{ says: 'The channels of that mode, counted in the fixture:' },
		],
		working: [
			[
				{ when: { start: 1 }, says: 'It starts at 1, so channel {slot} of the desk is channel {n} of the fixture.' },
				{
					says: 'It starts at {start}, so channel {slot} of the desk is channel {slot} − {less} = {n} of the fixture.',
				},
			],
			[
				{ when: { counted: true }, says: 'A pair of coarse and fine takes two channels, so count it twice.' },
				{ says: '' },
			],
			[
				{ when: { part: 'coarse' }, says: 'Channel {n} is “{name}”, coarse.' },
				{ when: { part: 'fine' }, says: 'Channel {n} is “{name}”, fine.' },
				{ says: 'Channel {n} is “{name}”.' },
			],
		],
		why: 'The start address is where a fixture’s first channel stands, and what each channel does hangs on the mode.',
	},
	'match-slots': {
		name: 'Channels of the desk to what they do',
		ask: '{fixture} is in mode “{mode}” with start address {start}. What does each of these channels of the desk do?',
		chart: 'The channels of that mode, counted in the fixture:',
		working: [
			'The fixture’s channel 1 is channel {start} of the desk.',
			[
				{ when: { start: 1 }, says: 'So both count alike.' },
				{ says: 'Take {less} from a channel of the desk, and its number in the fixture is left.' },
			],
		],
		why: 'The start address is where a fixture’s first channel stands, and the others follow one by one.',
	},
	footprint: {
		name: 'How many channels',
		ask: [
			// a mode is often named by its slots, which would be telling
			{ when: { count: 1, more: 0 }, says: 'How many channels does this mode of {fixture} take?' },
			{ when: { more: 0 }, says: 'How many channels do {count} × {fixture} in mode “{mode}” take together?' },
			{
				says: 'How many channels do {count} × {fixture} in mode “{mode}” and {more} × {moreFixture} in mode “{moreMode}” take together? Each of the latter takes {moreEach} {moreEach?channel|channels}.',
			},
		],
		chart: [
			{ when: { count: 1, more: 0 }, says: 'The channels of {fixture} in this mode, in order:' },
			{ says: 'The channels of {fixture} in mode “{mode}”, in order:' },
		],
		working: [
			[
				{ when: { pairs: 0 }, says: 'The chart lists {entries} {entries?channel|channels}.' },
				{
					says: 'The chart lists {entries}, and {pairs} of them {pairs?is a pair|are pairs} of coarse and fine, so one of the fixture takes {entries} + {pairs} = {each}.',
				},
			],
			[{ when: { count: 1 }, says: '' }, { says: '{count} × {each} = {product}.' }],
			[
				{ when: { more: 0 }, says: '' },
				{ says: '{more} × {moreEach} = {moreProduct}, and {product} + {moreProduct} = {right}.' },
			],
		],
		why: 'A 16-bit channel is two channels on the line, coarse and fine, and the footprint counts both.',
	},
	'dip-to-address': {
		name: 'The address of switches',
		ask: [
			{
				when: { wiring: 'sum' },
				says: 'On {fixture} {up?switch|switches} {up as every} {up?is|are} up and the others down. It adds up what they are worth: 1 for switch 1, then twice as much each time, 256 for switch 9. Which start address is that?',
			},
			{
				says: 'On {fixture} {up?switch|switches} {up as every} {up?is|are} up and the others down. It adds up what they are worth (1 for switch 1, then twice as much each time, 256 for switch 9) and adds one. Which start address is that?',
			},
		],
		working: [
			[
				{ when: { single: true }, says: 'Switch {up as every} is worth {sum}.' },
				{ says: 'Switches {up as every} are worth {weights as sum} = {sum}.' },
			],
			[{ when: { wiring: 'sum' }, says: 'So the address is {address}.' }, { says: '{sum} + 1 = {address}.' }],
		],
		why: 'Each switch is worth twice the one before, so every sum is made in one way only.',
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
