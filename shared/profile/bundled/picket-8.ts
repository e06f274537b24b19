import type { Profile, Slot } from '../schema.ts';
import { bands, choice, colour, emitter, intensity, number, speedSlot } from './parts.ts';

const CELLS = [1, 2, 3, 4, 5, 6, 7, 8];
const COLOURS = [
	['blue', 'Blue'],
	['green', 'Green'],
	['red', 'Red'],
	['warm-white', 'Warm white'],
] as const;

/** The four colours for a stretch of cells, from slot `at`. */
function stretch(at: number, cells: number[], name: string): Slot[] {
	return COLOURS.map(([id, title], i) => colour(at + i, id, `${title}, ${name}`, cells));
}

const shutter = (at: number): Slot =>
	bands(at, 'shutter', 'Shutter', [
		[7, 'closed', 'Closed', { do: 'dark' }],
		[63, 'open', 'Open', { do: 'open' }],
		[211, 'strobe', 'Strobe, slow to fast', { do: 'strobe', slow: 0.5, fast: 18 }],
		[255, 'open-again', 'Open', { do: 'open' }],
	]);

/** Picket 8: mains bar of eight cells, text display, mains link-through. Invented. */
export const picket8: Profile = {
	version: 1,
	id: 'picket-8',
	name: 'Picket 8',
	about: 'Mains bar with eight cells, a text display and a mains link',
	shape: 'bar',
	panel: {
		kind: 'text',
		columns: 16,
		keys: ['back', 'down', 'up', 'set'],
		repeat: { after: 400, every: 100, quickAfter: 10, bigStep: 10 },
		unlockHold: 3000,
		lockAfter: 20000,
		scrolling: 'still',
		menu: [
			number('address', 'Start address', 'Start address', 'address', 1, 512, false),
			choice('mode', 'Slots used', 'Mode', 'mode', [
				['whole', 'Whole 4'],
				['whole-plus', 'Whole plus 9'],
				['halves', 'Halves 11'],
				['cells', 'Cells 35'],
			]),
			{
				kind: 'menu',
				id: 'source',
				label: 'Light source',
				title: 'What decides the light',
				items: [
					choice('work', 'Obeys', 'Obeys', 'work', [
						['line', 'Desk'],
						['follow', 'A leader'],
						['held', 'Held colour'],
						['programme', 'Programme'],
					]),
					choice('lead', 'Leads others', 'Leads others', 'lead', [
						['off', 'No'],
						['on', 'Yes'],
					]),
					choice('loss', 'Data gone', 'When data goes', 'loss', [
						['hold', 'Keep last look'],
						['dark', 'Go dark'],
						['programme', 'Run programme'],
					]),
				],
			},
			{
				kind: 'menu',
				id: 'alone',
				label: 'Stand alone',
				title: 'Stand alone',
				items: [
					choice('held', 'Held colour', 'Held colour', 'held', [
						['warm', 'Warm white'],
						['red', 'Red'],
						['gold', 'Gold'],
						['green', 'Green'],
						['ice', 'Ice'],
						['blue', 'Blue'],
						['plum', 'Plum'],
					]),
					choice('programme', 'Programme', 'Programme', 'programme', [
						['march', 'Colour change'],
						['tide', 'Colour fade'],
						['swell', 'Pulse'],
						['blink', 'Strobe'],
						['ear-step', 'Sound step'],
						['ear-swell', 'Sound swell'],
						['ear-flash', 'Sound flash'],
						['ear-run', 'Sound run'],
					]),
					number('speed', 'Speed', 'Speed of the programme', 'speed', 1, 100, false),
					number('level', 'Brightness', 'Brightness', 'level', 0, 100, false, '%'),
					number('strobe', 'Flashes / s', 'Flashes a second', 'strobe', 0, 20, false),
					number('hearing', 'Microphone', 'Microphone sensitivity', 'hearing', 0, 100, false, '%'),
				],
			},
			{
				kind: 'menu',
				id: 'house',
				label: 'Housekeeping',
				title: 'Housekeeping',
				items: [
					choice('curve', 'Dim curve', 'Dim curve', 'curve', [
						['straight', 'Straight'],
						['square', 'Square'],
						['soft', 'Soft'],
					]),
					number('limit', 'Output limit', 'Highest output', 'limit', 10, 100, false, '%'),
					choice('sleep', 'Display off', 'Display goes dark after', 'sleep', [
						[0, 'Never'],
						[20, '20 seconds'],
						[60, '60 seconds'],
					]),
					choice('lock', 'Panel lock', 'Lock the panel', 'lock', [
						['off', 'Off'],
						['on', 'On'],
					]),
					{ kind: 'info', id: 'signal', label: 'Signal', title: 'Signal at the input', shows: 'signal' },
					{ kind: 'info', id: 'footprint', label: 'Slots taken', title: 'Slots taken', shows: 'footprint' },
					{
						kind: 'action',
						id: 'defaults',
						label: 'Defaults',
						title: 'Back to defaults',
						action: 'defaults',
						ask: 'Set all back?',
					},
				],
			},
		],
	},
	power: { battery: null, link: true, idleWatts: 6 },
	optics: { beam: 30, field: 55 },
	cells: 8,
	emitters: [
		emitter('red', 'Red', 640, 28),
		emitter('green', 'Green', 1150, 28),
		emitter('blue', 'Blue', 210, 28),
		emitter('warm-white', 'Warm white', 1500, 30),
	],
	held: [
		{ id: 'warm', name: 'warm white', levels: { 'warm-white': 255 } },
		{ id: 'red', name: 'red', levels: { red: 255 } },
		{ id: 'gold', name: 'gold', levels: { red: 220, green: 100, 'warm-white': 120 } },
		{ id: 'green', name: 'green', levels: { green: 255 } },
		{ id: 'ice', name: 'ice blue', levels: { green: 140, blue: 255, 'warm-white': 100 } },
		{ id: 'blue', name: 'blue', levels: { blue: 255 } },
		{ id: 'plum', name: 'plum', levels: { red: 180, blue: 200 } },
	],
	programmes: [
		{
			id: 'march',
			name: 'Colour change',
			kind: 'change',
			colours: ['red', 'gold', 'green', 'ice', 'blue', 'plum'],
			slowest: 20,
			fastest: 0.4,
		},
		{
			id: 'tide',
			name: 'Colour fade',
			kind: 'fade',
			colours: ['red', 'plum', 'blue', 'ice', 'green', 'gold'],
			slowest: 90,
			fastest: 2,
		},
		{ id: 'swell', name: 'Pulse', kind: 'pulse', colours: ['warm'], slowest: 10, fastest: 0.5 },
		{ id: 'blink', name: 'Strobe', kind: 'strobe', colours: ['warm'], slowest: 1, fastest: 0.08 },
		{
			id: 'ear-step',
			name: 'Sound: next colour',
			kind: 'sound',
			answer: 'step',
			colours: ['gold', 'plum', 'blue', 'green'],
			slowest: 2,
			fastest: 0.2,
		},
		{
			id: 'ear-swell',
			name: 'Sound: swell',
			kind: 'sound',
			answer: 'swell',
			colours: ['ice'],
			slowest: 2,
			fastest: 0.2,
		},
		{
			id: 'ear-flash',
			name: 'Sound: flash',
			kind: 'sound',
			answer: 'flash',
			colours: ['warm'],
			slowest: 1,
			fastest: 0.1,
		},
		{
			id: 'ear-run',
			name: 'Sound: run',
			kind: 'sound',
			answer: 'run',
			colours: ['red', 'blue'],
			slowest: 2,
			fastest: 0.2,
		},
	],
	modes: [
		{ id: 'whole', name: 'Whole bar, 4 slots', slots: COLOURS.map(([id, title], i) => colour(i + 1, id, title)) },
		{
			id: 'whole-plus',
			name: 'Whole bar and functions, 9 slots',
			slots: [
				shutter(1),
				...COLOURS.map(([id, title], i) => colour(i + 2, id, title)),
				intensity(6, 7),
				bands(8, 'function', 'Function', [
					[9, 'colours', 'Colour slots decide', { do: 'nothing' }],
					[60, 'fade', 'Colour fade', { do: 'programme', programme: 'tide' }],
					[86, 'change', 'Colour change', { do: 'programme', programme: 'march' }],
					[149, 'pulse', 'Pulse', { do: 'programme', programme: 'swell' }],
					[177, 'run', 'Sound: run', { do: 'programme', programme: 'ear-run' }],
					[204, 'flash', 'Sound: flash', { do: 'programme', programme: 'ear-flash' }],
					[255, 'gold', 'Held gold', { do: 'held', held: 'gold' }],
				]),
				speedSlot(9),
			],
		},
		{
			id: 'halves',
			name: 'Two halves, 11 slots',
			slots: [
				...stretch(1, CELLS.slice(0, 4), 'left half'),
				...stretch(5, CELLS.slice(4), 'right half'),
				intensity(9, 10),
				shutter(11),
			],
		},
		{
			id: 'cells',
			name: 'Every cell, 35 slots',
			slots: [shutter(1), intensity(2, 3), ...CELLS.flatMap((cell) => stretch(4 * cell, [cell], `cell ${cell}`))],
		},
	],
	sensor: false,
	microphone: true,
	follows: 'own-address',
	unitLoads: 1,
	defaults: {
		work: 'line',
		lead: 'off',
		address: 1,
		mode: 'whole-plus',
		held: 'warm',
		programme: 'tide',
		speed: 40,
		level: 100,
		strobe: 0,
		loss: 'dark',
		curve: 'soft',
		limit: 100,
		sensor: 'open',
		code: 1,
		hearing: 50,
		lock: 'off',
		sleep: 20,
	},
};
